package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Text;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;
import storyrod.words.Words;

/** What the leaders of notes on general drawings point at, and which way they run. */
class NotedTargetsTest {
  private static final double NEAR_MM = 1;

  /** Nearer beside a line than this, and along it for longer, a leader is taken for the line. */
  private static final double BESIDE_MM = 0.5;

  private static final double ALONG_MM = 2;

  /** Dimensions lie all round this hole: every other way crosses the line of one. */
  private static final List<String> ENCLOSED = List.of("nightstand part-L Ø 5, through");

  /** Four screws hold the front of a drawer, none of them in its middle. */
  @TestFactory
  List<DynamicTest> aNoteOfScrewsPointsAtOneOfThem() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          List<PlacedItem> items = PlacedHardware.of(piece);
          List<String> astray = new ArrayList<>();
          for (String unit : HungUnits.of(piece).drawn()) {
            List<Part> parts = HungUnits.of(piece).nesting().parts(unit);
            for (CutNote note : new JointNotes(piece, Words.ENGLISH).of(parts, Face.TOP)) {
              note.tips().stream()
                  .filter(tip -> note.words().contains("screws"))
                  .filter(tip -> items.stream().noneMatch(item -> isOn(item, tip)))
                  .forEach(tip -> astray.add(unit + " " + note.words() + " " + tip));
            }
          }
          assertEquals(List.of(), astray);
        });
  }

  private static boolean isOn(PlacedItem item, Point tip) {
    Vector3D off = tip.toMm().subtract(item.at());
    return off.subtract(item.out().multiply(off.dot(item.out()))).norm() < NEAR_MM;
  }

  /** The upper front is cut out of a rail and comes back into it: nothing else lies beside it. */
  @Test
  void aFrontCutOutOfARailHasGapsOnAllSides() {
    PlanSet set = AllProjects.named("sideboard");
    String notes =
        Clean.notes(
            set.drawings().general().stream()
                .map(GeneralSheet::drawing)
                .filter(drawing -> drawing.name().equals("general-front"))
                .findFirst()
                .orElseThrow());
    assertTrue(notes.contains("gap 1/16 above and below, gap 1/8 left and right"), notes);
  }

  /** A leader that runs down the edges of three fronts is not seen, and points at the last. */
  @TestFactory
  List<DynamicTest> noLeaderRunsAlongALine() {
    return AllProjects.each(
        sample -> {
          List<String> hidden = new ArrayList<>();
          Stream.concat(
                  sample.set().drawings().general().stream().map(GeneralSheet::drawing),
                  sample.set().drawings().parts().values().stream())
              .forEach(drawing -> hidden.addAll(hidden(drawing)));
          assertEquals(
              ENCLOSED.stream().filter(each -> each.startsWith(sample.name() + " ")).toList(),
              hidden.stream().map(each -> sample.name() + " " + each).toList());
        });
  }

  private static List<String> hidden(Drawing drawing) {
    List<Paper.Stretch> lines =
        flat(drawing.elements())
            .filter(element -> !(element instanceof Note) && !(element instanceof Text))
            .flatMap(element -> Lowering.simple(element).stream())
            .flatMap(element -> Paper.stretches(element).stream())
            .toList();
    return notes(drawing)
        .filter(note -> lines.stream().anyMatch(line -> runsAlong(NotePlacer.leader(note), line)))
        .map(note -> drawing.name() + " " + start(note))
        .toList();
  }

  /** The first words of a note, up to the second comma. */
  private static String start(Note note) {
    return String.join(",", List.of((note.lines().getFirst() + ",,").split(",", -1)).subList(0, 2));
  }

  /** A leader over the arrow that shows the grain makes another arrow of it. */
  @TestFactory
  List<DynamicTest> noLeaderCrossesTheArrowOfTheGrain() {
    return AllProjects.each(
        sample ->
            assertEquals(
                List.of(),
                sample.set().drawings().parts().values().stream()
                    .flatMap(NotedTargetsTest::overGrain)
                    .toList()));
  }

  private static Stream<String> overGrain(Drawing drawing) {
    List<Paper.Stretch> arrows =
        flat(drawing.elements())
            .filter(each -> each instanceof Arrow arrow && arrow.twoHeads())
            .map(Arrow.class::cast)
            .map(arrow -> new Paper.Stretch(arrow.from(), arrow.to()))
            .toList();
    return notes(drawing)
        .filter(note -> arrows.stream().anyMatch(NotePlacer.leader(note)::crosses))
        .map(note -> drawing.name() + " " + note.lines());
  }

  private static boolean runsAlong(Paper.Stretch leader, Paper.Stretch line) {
    double length = leader.from().distance(leader.to());
    double x = (leader.to().x() - leader.from().x()) / length;
    double y = (leader.to().y() - leader.from().y()) / length;
    double[] along = new double[2];
    for (int end = 0; end < along.length; end++) {
      At at = end == 0 ? line.from() : line.to();
      double dx = at.x() - leader.from().x();
      double dy = at.y() - leader.from().y();
      if (Math.abs(x * dy - y * dx) > BESIDE_MM) {
        return false;
      }
      along[end] = x * dx + y * dy;
    }
    double shared =
        Math.min(length, Math.max(along[0], along[1])) - Math.max(0, Math.min(along[0], along[1]));
    return shared > ALONG_MM;
  }

  private static Stream<Note> notes(Drawing drawing) {
    return flat(drawing.elements()).filter(Note.class::isInstance).map(Note.class::cast);
  }

  private static Stream<Element> flat(List<Element> elements) {
    return elements.stream()
        .flatMap(each -> each instanceof Group group ? flat(group.elements()) : Stream.of(each));
  }
}
