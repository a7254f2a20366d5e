package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Solid;
import storyrod.piece.Part;

/**
 * Things that do not belong together yet, moved across the paper so that they stand in rows, none
 * before another: in as many rows as give the picture the shape nearest to its room's. Neighbours
 * of a row stand as they do in the piece: seen from behind, the left door is at the right.
 */
final class SideBySide {
  /** Between two things, as a share of the widest of them. */
  private static final double GAP = 0.12;

  private static final double WIDTH_TO_HEIGHT = 1.5;

  private final View view;
  private final List<Thing> things;
  private final double gap;

  private SideBySide(View view, List<Drawn> drawn) {
    this.view = view;
    this.things =
        drawn.stream()
            .map(each -> new Thing(each.parts(), Outline.of(each.solids(), view), home(each)))
            .toList();
    this.gap =
        GAP
            * things.stream()
                .mapToDouble(each -> each.outline.maxX() - each.outline.minX())
                .max()
                .orElse(0);
  }

  private Outline home(Drawn drawn) {
    return Outline.of(drawn.parts().stream().map(Part::placed).toList(), view);
  }

  /**
   * A thing to be moved.
   *
   * @param outline of its picture before it is moved
   * @param home the same where it belongs
   */
  private record Thing(List<Part> parts, Outline outline, Outline home) {
    boolean isLeftOf(Thing other) {
      return home.maxX() < other.home.minX();
    }

    double width() {
      return outline.maxX() - outline.minX();
    }

    double height() {
      return outline.maxY() - outline.minY();
    }
  }

  /** A thing's parts, and their solids where they are drawn before it is moved. */
  record Drawn(List<Part> parts, List<Solid> solids) {}

  /** How far each part is moved, in mm, in the plane of the paper. */
  static Map<String, Vector3D> offsets(View view, List<List<Part>> units) {
    return of(
        view,
        units.stream()
            .map(parts -> new Drawn(parts, parts.stream().map(Part::placed).toList()))
            .toList());
  }

  /** The same, a single thing in its place. */
  static Map<String, Vector3D> placed(View view, List<List<Part>> things) {
    Map<String, Vector3D> offsets = new LinkedHashMap<>();
    things.forEach(thing -> thing.forEach(part -> offsets.put(part.name(), Vector3D.ZERO)));
    if (things.size() > 1) {
      offsets.putAll(offsets(view, things));
    }
    return offsets;
  }

  /** The same of things whose parts are drawn moved. */
  static Map<String, Vector3D> of(View view, List<Drawn> drawn) {
    return new SideBySide(view, drawn).offsets();
  }

  private Map<String, Vector3D> offsets() {
    List<List<Thing>> rows =
        IntStream.rangeClosed(1, things.size())
            .mapToObj(this::rows)
            .min(Comparator.comparingDouble(this::unlikeTheRoom))
            .orElse(List.of());
    Map<String, Vector3D> offsets = new LinkedHashMap<>();
    double top = 0;
    for (List<Thing> row : rows) {
      double bottom = top + height(row);
      double left = -width(row) / 2;
      for (Thing each : asInThePiece(row)) {
        Vector3D by =
            view.right()
                .multiply(left - each.outline.minX())
                .subtract(view.up().multiply(bottom - each.outline.maxY()));
        each.parts.forEach(part -> offsets.put(part.name(), by));
        left += each.width() + gap;
      }
      top = bottom + gap;
    }
    return offsets;
  }

  /** The things of a row, neighbours changed as long as the second belongs left of the first. */
  private static List<Thing> asInThePiece(List<Thing> row) {
    List<Thing> ordered = new ArrayList<>();
    for (Thing each : row) {
      int at = ordered.size();
      while (at > 0 && each.isLeftOf(ordered.get(at - 1))) {
        at--;
      }
      ordered.add(at, each);
    }
    return ordered;
  }

  /** So many rows at most, filled in order up to a common width. */
  private List<List<Thing>> rows(int count) {
    double widest = things.stream().mapToDouble(Thing::width).max().orElse(0);
    double share = width(things) / count;
    List<List<Thing>> rows = new ArrayList<>();
    for (Thing each : things) {
      boolean full =
          rows.isEmpty() || width(rows.getLast()) + each.width() / 2 > Math.max(share, widest);
      if (full) {
        rows.add(new ArrayList<>());
      }
      rows.getLast().add(each);
    }
    return rows;
  }

  private double unlikeTheRoom(List<List<Thing>> rows) {
    double width = rows.stream().mapToDouble(this::width).max().orElse(1);
    double height = rows.stream().mapToDouble(row -> height(row) + gap).sum() - gap;
    return Math.abs(StrictMath.log(width / height / WIDTH_TO_HEIGHT));
  }

  private double width(List<Thing> row) {
    return row.stream().mapToDouble(each -> each.width() + gap).sum() - gap;
  }

  private static double height(List<Thing> row) {
    return row.stream().mapToDouble(Thing::height).max().orElse(0);
  }
}
