package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.SawnPiece.Laid;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** Each part of grained stock on a layout shows once how its grain runs. */
class LayoutGrainTest {
  /** The least room on paper, along the grain and across it, in which an arrow is asked for. */
  private static final double LONG_MM = 12;

  private static final double BROAD_MM = 4;

  private record Sheet(SawnPiece piece, Drawing drawing) {}

  @TestFactory
  List<DynamicTest> onEveryPartWithRoomForIt() {
    return AllProjects.each(
        sample ->
            assertEquals(
                List.of(),
                sheets(sample).flatMap(LayoutGrainTest::faults).toList(),
                sample.name()));
  }

  /** Or the test above would look at nothing. */
  @Test
  void theProjectsHaveGrainedPartsBothLargeAndNarrow() {
    List<Bounds> rooms =
        AllProjects.all().stream()
            .flatMap(LayoutGrainTest::sheets)
            .flatMap(
                sheet ->
                    sheet.piece.parts().stream()
                        .filter(part -> asks(sheet, part))
                        .map(part -> outline(group(sheet, part))))
            .toList();
    assertTrue(rooms.size() > 50, rooms.size() + " grained parts");
    assertTrue(rooms.stream().anyMatch(room -> room.height() < 7), "" + rooms);
  }

  private static Stream<Sheet> sheets(AllProjects.Sample sample) {
    List<Sheet> sheets = new ArrayList<>();
    for (SheetPlan plan : sample.set().stock().layouts()) {
      List<Drawing> drawings = sample.set().drawings().layouts().get(plan.stock().name());
      for (SheetLayout layout : plan.sheets()) {
        SawnPiece piece = SawnPiece.of(layout, sample.set().piece());
        sheets.add(new Sheet(piece, drawings.get(plan.sheets().indexOf(layout))));
      }
    }
    return sheets.stream();
  }

  private static Stream<String> faults(Sheet sheet) {
    return sheet.piece.parts().stream()
        .filter(part -> asks(sheet, part))
        .flatMap(part -> faults(sheet, part));
  }

  private static boolean asks(Sheet sheet, Laid part) {
    Bounds room = outline(group(sheet, part));
    double along = part.turned() ? room.height() : room.width();
    double across = part.turned() ? room.width() : room.height();
    return part.grained() && along >= LONG_MM && across >= BROAD_MM;
  }

  private static Group group(Sheet sheet, Laid part) {
    String id = "part-" + part.id().replaceAll("[.#]", "-");
    return sheet.drawing.elements().stream()
        .flatMap(each -> each instanceof Group group ? Stream.of(group) : Stream.empty())
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Bounds outline(Group part) {
    return part.elements().stream()
        .flatMap(each -> each instanceof Area area ? Stream.of(area) : Stream.empty())
        .filter(area -> area.tone() == Tone.PALE)
        .map(area -> Bounds.around(area.rings().getFirst()))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<String> faults(Sheet sheet, Laid part) {
    Group group = group(sheet, part);
    List<Arrow> arrows =
        group.elements().stream()
            .flatMap(each -> each instanceof Arrow arrow ? Stream.of(arrow) : Stream.empty())
            .toList();
    return arrows.size() == 1
        ? faults(sheet, part, arrows.getFirst())
        : Stream.of(part.id() + " has " + arrows.size() + " arrows");
  }

  private static Stream<String> faults(Sheet sheet, Laid part, Arrow arrow) {
    Bounds room = outline(group(sheet, part));
    Bounds line = Bounds.of(arrow.from(), arrow.to());
    boolean alongGrain = part.turned() ? line.width() < 1e-6 : line.height() < 1e-6;
    boolean isWithin = arrow.twoHeads() && line.widened(0.5).isIn(room);
    return Stream.concat(
        alongGrain && isWithin
            ? Stream.empty()
            : Stream.of(part.id() + ": " + arrow + " in " + room),
        crossed(sheet.drawing, arrow).map(each -> part.id() + ": its arrow meets " + each));
  }

  /** Texts, the rings of numbers and other lines that an arrow with its heads would touch. */
  private static Stream<String> crossed(Drawing drawing, Arrow arrow) {
    Bounds own = Bounds.of(arrow.from(), arrow.to()).widened(0.5);
    Stream<Bounds> texts = Painter.texts(drawing).stream().map(Bounds::of);
    Stream<Bounds> lines =
        Clean.flat(drawing.elements()).stream()
            .filter(each -> !each.equals(arrow))
            .flatMap(each -> Lowering.simple(each).stream())
            .flatMap(each -> Paper.stretches(each).stream())
            .filter(each -> meets(own, each))
            .map(Paper.Stretch::bounds);
    return Stream.concat(texts.filter(own::overlaps), lines).map(Bounds::toString);
  }

  private static boolean meets(Bounds room, Paper.Stretch line) {
    return new PlacedText("", 0, room.left(), room.top(), room.right(), room.bottom())
        .meets(line.from(), line.to());
  }
}
