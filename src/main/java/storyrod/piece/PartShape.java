package storyrod.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/**
 * A part's shape in its own frame, written so that two parts are equal to the maker exactly if
 * their keys are equal: u along the length, v along the width, w along the thickness, from a
 * corner, the part turned so that its key comes first among the four ways in which its box can lie.
 */
final class PartShape {
  private final Part part;
  private final List<Axis> axes;

  PartShape(Part part) {
    this.part = part;
    this.axes = List.of(part.length(), part.width(), part.thickness());
  }

  /** The key of the part as it is. */
  String key() {
    return least(isOddFrame());
  }

  /** The key of its mirror image. */
  String mirrorKey() {
    return least(!isOddFrame());
  }

  /** Whether length, width, thickness make a left-handed frame in the order of x, y, z. */
  private boolean isOddFrame() {
    int step = axes.get(1).ordinal() - axes.get(0).ordinal();
    return step != 1 && step != -2;
  }

  private String least(boolean mirrored) {
    List<String> ways = new ArrayList<>();
    for (int turn = 0; turn < 4; turn++) {
      boolean flipU = turn == 1 || turn == 2;
      boolean flipV = turn == 1 || turn == 3;
      boolean flipW = (turn == 2 || turn == 3) != mirrored;
      ways.add(written(new boolean[] {flipU, flipV, flipW}));
    }
    return head() + Collections.min(ways);
  }

  private String head() {
    return "%s %d %d %d "
        .formatted(
            part.stock().name(),
            part.finishedLength().ticks(),
            part.finishedWidth().ticks(),
            part.finishedThickness().ticks());
  }

  private String written(boolean[] flips) {
    List<String> cuts = new ArrayList<>();
    for (Cut cut : part.cuts()) {
      switch (cut) {
        case Cut.Trench trench -> cuts.add("trench" + box(trench.removed(), flips));
        case Cut.Tenon tenon ->
            cuts.add("tenon" + box(tenon.end(), flips) + box(tenon.tenon(), flips));
        case Cut.Holes holes -> holes.centres().forEach(c -> cuts.add(hole(holes, c, flips)));
        case Cut.PocketHoles pockets ->
            pockets.centres().forEach(c -> cuts.add(pocket(pockets, c, flips)));
      }
    }
    Collections.sort(cuts);
    return String.join("; ", cuts);
  }

  private String box(Box box, boolean[] flips) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 3; i++) {
      long from = place(i, box.on(axes.get(i)).from(), flips);
      long to = place(i, box.on(axes.get(i)).to(), flips);
      text.append(' ').append(Math.min(from, to)).append(':').append(Math.max(from, to));
    }
    return text.toString();
  }

  private String hole(Cut.Holes holes, Point centre, boolean[] flips) {
    boolean sameFromBothFaces = holes.through() && holes.countersink().isZero();
    String face =
        sameFromBothFaces
            ? "through" + axes.indexOf(holes.from().axis())
            : face(holes.from(), flips);
    StringBuilder text = new StringBuilder("hole " + face);
    for (int i = 0; i < 3; i++) {
      if (axes.get(i) != holes.from().axis()) {
        text.append(' ').append(place(i, centre.on(axes.get(i)), flips));
      }
    }
    return text.append(" d")
        .append(holes.diameter().ticks())
        .append(" t")
        .append(holes.depth().ticks())
        .append(" c")
        .append(holes.countersink().ticks())
        .toString();
  }

  private String pocket(Cut.PocketHoles pockets, Point centre, boolean[] flips) {
    StringBuilder text =
        new StringBuilder(
            "pocket " + face(pockets.from(), flips) + " " + face(pockets.end(), flips));
    for (int i = 0; i < 3; i++) {
      text.append(' ').append(place(i, centre.on(axes.get(i)), flips));
    }
    return text.append(" d").append(pockets.diameter().ticks()).toString();
  }

  private String face(Face face, boolean[] flips) {
    int axis = axes.indexOf(face.axis());
    return axis + ((face.sign() > 0) != flips[axis] ? "+" : "-");
  }

  /** The distance in ticks from the corner that the flips make the first. */
  private long place(int axis, Length at, boolean[] flips) {
    var range = part.box().on(axes.get(axis));
    return (flips[axis] ? range.to().minus(at) : at.minus(range.from())).ticks();
  }
}
