package storyrod.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Segment;
import storyrod.measure.Length;

/**
 * A part's shape in its own frame, written so that two parts are equal to the maker exactly if
 * their keys are equal: u along the length, v along the width, w along the thickness, from a
 * corner, the part turned so that its key comes first among the four ways in which its box can lie.
 */
final class PartShape {
  /** Keys compare places to 0.02 mm: rounded to ticks, mirror images may differ by one. */
  private static final long ROUGH = Length.TICKS_PER_MM / 50;

  /** Rounds where no multiple of five ticks lies, as those of 1/128 in and 0.05 mm do. */
  private static final long HALF = ROUGH / 2 + 2;

  private final Part part;
  private final List<Axis> axes;
  private final boolean isExact;
  private final Optional<Face> marked;

  PartShape(Part part) {
    this(part, Optional.empty());
  }

  /** With a mark on a face, if there is one. */
  PartShape(Part part, Optional<Face> marked) {
    this(part, List.of(part.length(), part.width(), part.thickness()), false, marked);
  }

  private PartShape(Part part, List<Axis> axes, boolean isExact, Optional<Face> marked) {
    this.part = part;
    this.axes = axes;
    this.isExact = isExact;
    this.marked = marked;
  }

  /** The key of the part as it is. */
  String key() {
    return leastOfAll(false);
  }

  /** The key of its mirror image. */
  String mirrorKey() {
    return leastOfAll(true);
  }

  /** A board as wide as thick may lie on either side. */
  private String leastOfAll(boolean mirrored) {
    String key = least(isOddFrame() != mirrored);
    boolean turns =
        part.finishedWidth().equals(part.finishedThickness())
            && part.stock().kind() == StockKind.SOLID;
    if (!turns) {
      return key;
    }
    PartShape onItsSide =
        new PartShape(part, List.of(axes.get(0), axes.get(2), axes.get(1)), isExact, marked);
    String other = onItsSide.least(onItsSide.isOddFrame() != mirrored);
    return key.compareTo(other) < 0 ? key : other;
  }

  /** Whether length, width, thickness make a left-handed frame in the order of x, y, z. */
  private boolean isOddFrame() {
    int step = axes.get(1).ordinal() - axes.get(0).ordinal();
    return step != 1 && step != -2;
  }

  private String least(boolean mirrored) {
    return head()
        + Collections.min(
            flips(mirrored).stream().map(flips -> String.join("; ", lines(flips))).toList());
  }

  /** What is cut, line by line, to the tick, in each of the four ways in which it can lie. */
  List<List<String>> ways(boolean mirrored) {
    PartShape exact = new PartShape(part, axes, true, marked);
    return flips(isOddFrame() != mirrored).stream().map(exact::lines).toList();
  }

  private static List<boolean[]> flips(boolean mirrored) {
    List<boolean[]> ways = new ArrayList<>();
    for (int turn = 0; turn < 4; turn++) {
      boolean flipU = turn == 1 || turn == 2;
      boolean flipV = turn == 1 || turn == 3;
      boolean flipW = (turn == 2 || turn == 3) != mirrored;
      ways.add(new boolean[] {flipU, flipV, flipW});
    }
    return ways;
  }

  private String head() {
    return "%s %d %d %d "
        .formatted(
            part.stock().name(),
            part.finishedLength().ticks(),
            part.finishedWidth().ticks(),
            part.finishedThickness().ticks());
  }

  private List<String> lines(boolean[] flips) {
    List<String> cuts = new ArrayList<>();
    marked.ifPresent(face -> cuts.add("mark " + face(face, flips)));
    for (Cut cut : part.cuts()) {
      switch (cut) {
        case Cut.Shaped shaped -> cuts.add(shaped(shaped, flips));
        case Cut.Roundover roundover -> cuts.add(roundover(roundover, flips));
        case Cut.Trench trench -> cuts.add("trench" + box(trench.removed(), flips));
        case Cut.Tenon tenon -> cuts.add(tenon(tenon, flips));
        case Comb comb -> comb.boxes().forEach(each -> cuts.add("trench" + box(each, flips)));
        case Cut.Holes holes -> holes.centres().forEach(c -> cuts.add(hole(holes, c, flips)));
        case PocketHoles pockets ->
            pockets.centres().forEach(c -> cuts.add(pocket(pockets, c, flips)));
        case Slanted.Slope slope -> cuts.add(slope(slope, flips));
        case Slanted.Housing housing -> cuts.add(housing(housing, flips));
        case Dovetails dovetails -> cuts.add(dovetails(dovetails, flips));
        case SplineSlot slot -> cuts.add(spline(slot, flips));
        case InPlace inPlace -> cuts.add(inPlace(inPlace, flips));
        case Slots slots ->
            slots
                .centres()
                .forEach(
                    c ->
                        cuts.add(
                            "slot" + slots.form() + slots.through() + box(slots.around(c), flips)));
      }
    }
    Collections.sort(cuts);
    return cuts;
  }

  private String tenon(Cut.Tenon tenon, boolean[] flips) {
    String haunch = tenon.haunch().map(each -> " haunch" + box(each.box(), flips)).orElse("");
    return "tenon" + box(tenon.end(), flips) + box(tenon.tenon(), flips) + haunch;
  }

  private String box(Box box, boolean[] flips) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 3; i++) {
      text.append(' ').append(ends(i, box.on(axes.get(i)), flips));
    }
    return text.toString();
  }

  /** What a slope takes of each of its two faces, in the order of their names. */
  private String slope(Slanted.Slope slope, boolean[] flips) {
    String from = face(slope.from(), flips) + ":" + slope.run().ticks();
    String towards = face(slope.towards(), flips) + ":" + slope.drop().ticks();
    return from.compareTo(towards) < 0
        ? "slope " + from + " " + towards
        : "slope " + towards + " " + from;
  }

  private String housing(Slanted.Housing housing, boolean[] flips) {
    int across = axes.indexOf(housing.across());
    return "housing %s across%d %s %s %d"
        .formatted(
            face(housing.from(), flips),
            across,
            ends(across, housing.mouth(), flips),
            ends(across, housing.bottom(), flips),
            housing.depth().ticks());
  }

  private String dovetails(Dovetails dovetails, boolean[] flips) {
    int across = axes.indexOf(dovetails.across());
    List<String> tails =
        dovetails.tails().stream()
            .map(
                tail ->
                    " "
                        + ends(across, tail.narrow(), flips)
                        + " "
                        + ends(across, tail.wide(), flips))
            .sorted()
            .toList();
    return "dovetails %s %s%s%s"
        .formatted(
            face(dovetails.from(), flips),
            face(dovetails.wide(), flips),
            box(dovetails.end(), flips),
            String.join(",", tails));
  }

  private String spline(SplineSlot slot, boolean[] flips) {
    int along = axes.indexOf(slot.along());
    List<String> corners =
        slot.profile().segments().stream()
            .map(side -> places(side.from(), slot.along(), flips).replace(" ", " ~"))
            .sorted()
            .toList();
    return "spline %s %d:%s %s"
        .formatted(face(slot.from(), flips), along, ends(along, slot.run(), flips), corners);
  }

  private String ends(int axis, Range range, boolean[] flips) {
    long from = place(axis, range.from(), flips);
    long to = place(axis, range.to(), flips);
    return Math.min(from, to) + ":" + Math.max(from, to);
  }

  /** Where they lie is found when they are bored, so it makes no other part. */
  private String inPlace(InPlace cut, boolean[] flips) {
    return "in place %s x%d d%d"
        .formatted(face(cut.from(), flips), cut.bores().size(), cut.diameter().ticks());
  }

  /**
   * The segments in an order that does not depend on where the path starts or which way it runs.
   */
  private String shaped(Cut.Shaped shaped, boolean[] flips) {
    List<String> segments = new ArrayList<>();
    for (Segment segment : shaped.contour().segments()) {
      String middle =
          segment instanceof Segment.Arc arc
              ? places(arc.through(), shaped.from().axis(), flips).replace(" ", " ~")
              : "";
      List<String> ends =
          Stream.of(segment.from(), segment.to())
              .map(end -> places(end, shaped.from().axis(), flips))
              .sorted()
              .toList();
      segments.add(ends.get(0) + " (" + middle + ") " + ends.get(1));
    }
    Collections.sort(segments);
    int through = axes.indexOf(shaped.from().axis());
    return "shaped " + shaped.inside() + through + ": " + String.join(", ", segments);
  }

  private String places(Point point, Axis normal, boolean[] flips) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 3; i++) {
      if (axes.get(i) != normal) {
        text.append(' ').append(place(i, point.on(axes.get(i)), flips));
      }
    }
    return text.toString();
  }

  private String roundover(Cut.Roundover roundover, boolean[] flips) {
    List<String> edges =
        roundover.edges().stream()
            .map(
                edge ->
                    Stream.of(edge.one(), edge.other()).map(f -> face(f, flips)).sorted().toList())
            .map(faces -> String.join("", faces))
            .sorted()
            .toList();
    return "roundover " + roundover.radius().ticks() + " " + roundover.around() + edges;
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

  private String pocket(PocketHoles pockets, Point centre, boolean[] flips) {
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
    Length off = flips[axis] ? range.to().minus(at) : at.minus(range.from());
    return isExact ? off.ticks() : Math.floorDiv(off.ticks() + HALF, ROUGH) * ROUGH;
  }
}
