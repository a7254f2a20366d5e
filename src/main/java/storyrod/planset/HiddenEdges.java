package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * How far below the top edge of a high part screws and brads go through it to meet the middle of a
 * low one that it hides: a stretcher before the back.
 */
record HiddenEdges(Piece piece, PartPhrases phrases) {
  /**
   * A higher part is met without measuring, and one farther down has a line of its own drawn for
   * it: a hand's breadth (common practice).
   */
  private static final Length LOW = Length.inches(4);

  /** Parts that covers of one mark hide, as high as each other, their middles on one line. */
  private record Row(String mark, Length below, Length high) {}

  private record Hidden(String cover, String host) {}

  /** Those that brads of some joints go into. */
  List<Map<String, Object>> behindBrads(List<Joint> joints) {
    Map<Row, List<Hidden>> rows = new LinkedHashMap<>();
    for (Joint joint : joints) {
      if (joint.fasteners().stream().anyMatch(each -> piece.kind(each.item()) == ItemKind.BRAD)) {
        joint
            .driven()
            .filter(driven -> driven.face().axis() != Axis.Z)
            .map(Joint.Driven::part)
            .ifPresent(
                cover ->
                    add(rows, cover, joint.first().equals(cover) ? joint.second() : joint.first()));
      }
    }
    return told(rows);
  }

  /** Those that what is screwed to them from behind goes into, through what lies over them. */
  List<Map<String, Object>> behindCovers(List<Part> hosts) {
    Map<Row, List<Hidden>> rows = new LinkedHashMap<>();
    for (Part host : hosts) {
      covers(List.of(host)).forEach(cover -> add(rows, cover.name(), host.name()));
    }
    return told(rows);
  }

  /** What lies over the rear side of parts. */
  Stream<Part> covers(List<Part> hosts) {
    return piece.parts().stream()
        .filter(cover -> hosts.stream().anyMatch(host -> isOver(cover, host)));
  }

  private static boolean isOver(Part cover, Part host) {
    return cover.box().at(Face.FRONT).equals(host.box().at(Face.BACK))
        && cover.box().x().overlaps(host.box().x())
        && cover.box().z().overlaps(host.box().z());
  }

  private void add(Map<Row, List<Hidden>> rows, String cover, String host) {
    Range over = piece.part(cover).bounds().z();
    Range held = piece.part(host).bounds().z();
    if (!over.overlaps(held) || !over.length().isLongerThan(LOW)) {
      return;
    }
    Length below = over.to().minus(over.shared(held).middle());
    if (held.length().isLongerThan(LOW) || below.isLongerThan(LOW)) {
      return;
    }
    rows.computeIfAbsent(
            new Row(piece.part(cover).mark(), below, held.length()), row -> new ArrayList<>())
        .add(new Hidden(cover, host));
  }

  private List<Map<String, Object>> told(Map<Row, List<Hidden>> rows) {
    return rows.entrySet().stream()
        .<Map<String, Object>>map(
            each ->
                Map.of(
                    "cover", phrases.parts(each.getValue().stream().map(Hidden::cover).toList()),
                    "below", format(each.getKey().below()),
                    "high", format(each.getKey().high()),
                    "parts", phrases.parts(each.getValue().stream().map(Hidden::host).toList())))
        .toList();
  }

  private String format(Length length) {
    return piece.description().printed().formatWithUnit(length);
  }
}
