package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Slots;

/**
 * The holes or slots of one face that lie on a few lines.
 *
 * @param across the axis on which the lines lie beside each other
 * @param along the axis of the lines
 */
public record RowLines(List<Point> centres, Axis across, Axis along) {
  /** From how many holes on, a line of them is worth a fence. */
  private static final int ROW = 2;

  public RowLines {
    centres = List.copyOf(centres);
  }

  /** All of some cuts in one part. */
  public static List<RowLines> of(List<Cut> cuts) {
    return Stream.concat(ofHoles(cuts).stream(), ofSlots(cuts).stream()).toList();
  }

  /** Those of holes, of each face on which there are few enough lines. */
  static List<RowLines> ofHoles(List<Cut> cuts) {
    Map<Face, List<Point>> byFace = new LinkedHashMap<>();
    for (Cut.Holes holes : Cut.only(Cut.Holes.class, cuts)) {
      byFace.computeIfAbsent(holes.from(), face -> new ArrayList<>()).addAll(holes.centres());
    }
    return byFace.entrySet().stream()
        .map(each -> onFewest(each.getKey(), each.getValue()))
        .filter(RowLines::areRows)
        .toList();
  }

  /** Those of slots, which lie on lines even where they are alone. */
  static List<RowLines> ofSlots(List<Cut> cuts) {
    Map<List<Enum<?>>, List<Slots>> alike =
        Cut.only(Slots.class, cuts).stream()
            .collect(
                Collectors.groupingBy(
                    each -> List.of(each.from(), each.along()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return alike.values().stream().map(RowLines::ofAlike).toList();
  }

  private static RowLines ofAlike(List<Slots> all) {
    Slots first = all.getFirst();
    List<Point> centres = all.stream().flatMap(each -> each.centres().stream()).toList();
    return new RowLines(centres, first.across(), first.along());
  }

  private static RowLines onFewest(Face face, List<Point> centres) {
    Axis across =
        Arrays.stream(Axis.values())
            .filter(axis -> axis != face.axis())
            .min(Comparator.comparing((Axis axis) -> on(axis, centres).size()))
            .orElseThrow();
    return new RowLines(centres, across, Axis.other(face.axis(), across));
  }

  private static List<Length> on(Axis axis, List<Point> centres) {
    return centres.stream().map(point -> point.on(axis)).distinct().toList();
  }

  private boolean areRows() {
    return lines().size() * ROW <= centres.size();
  }

  /** Where the lines lie. */
  public List<Length> lines() {
    return on(across, centres);
  }

  /** Where on some line something lies. */
  public List<Length> places() {
    return on(along, centres);
  }

  /** Whether all lines have the same places. */
  public boolean areAlike() {
    Set<Point> all = Set.copyOf(centres);
    return all.size() == lines().size() * places().size();
  }
}
