package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Openings.Block;
import storyrod.drawing.Openings.Opening;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The general drawings of all projects. */
class GeneralDrawingTest {
  private static final double THIN_MM = 0.2;

  @TestFactory
  List<DynamicTest> noTextLiesOnATextOrALineOrOutside() {
    return AllProjects.each(
        sample -> {
          for (GeneralSheet sheet : sample.set().drawings().general()) {
            assertEquals(List.of(), Clean.faults(sheet.drawing()), sheet.drawing().name());
          }
        });
  }

  /** First line at least 10 mm off, the next at least 8 mm further (ISO 129-1, from memory). */
  @TestFactory
  List<DynamicTest> dimensionsKeepTheirDistanceAndAreTrueToScale() {
    return AllProjects.each(
        sample -> {
          for (GeneralSheet sheet : sample.set().drawings().general()) {
            double factor = sheet.drawing().scale().orElseThrow().factor();
            List<Dimension> all = Clean.dimensions(sheet.drawing());
            for (Dimension one : all) {
              assertEquals(one.measure().toMm() * factor, DimensionLines.lengthMm(one), 1e-6);
            }
            DimensionLines.assertKeepDistance(all);
          }
        });
  }

  /** The three sizes of the whole stand on its views, and on those of each sub-assembly. */
  @TestFactory
  List<DynamicTest> overallSizesAreGiven() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          List<Dimension> whole = new ArrayList<>();
          for (GeneralSheet sheet : sample.set().drawings().general()) {
            if (sheet.units().isEmpty()) {
              whole.addAll(Clean.dimensions(sheet.drawing()));
            } else {
              Box box = Extent.around(Nesting.of(piece).parts(sheet.units().getFirst()));
              assertSizes(box, Clean.dimensions(sheet.drawing()), sheet.drawing().name());
            }
          }
          assertSizes(Extent.around(piece.parts()), whole, sample.name());
        });
  }

  private static void assertSizes(Box box, List<Dimension> given, String name) {
    for (Axis axis : Axis.values()) {
      assertTrue(
          given.stream().anyMatch(d -> d.measure().equals(box.size(axis))), name + " " + axis);
    }
  }

  /** Whatever slides and hinges move has a drawing, and every mark in it a balloon. */
  @TestFactory
  List<DynamicTest> everyDrawerAndDoorIsDrawnWithAllItsMarks() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          HungUnits units = HungUnits.of(piece);
          Set<String> drawn = new TreeSet<>();
          for (GeneralSheet sheet : sample.set().drawings().general()) {
            drawn.addAll(sheet.units());
            if (!sheet.units().isEmpty()) {
              Set<String> marks =
                  units.nesting().parts(sheet.units().getFirst()).stream()
                      .map(Part::mark)
                      .collect(Collectors.toCollection(TreeSet::new));
              assertEquals(marks, marks(sheet.drawing()), sheet.drawing().name());
            }
          }
          Set<String> hung =
              units.names().stream()
                  .filter(unit -> units.nesting().parts(unit).size() > 2)
                  .collect(Collectors.toSet());
          assertTrue(drawn.containsAll(hung), () -> hung + " but " + drawn);
        });
  }

  private static Set<String> marks(Drawing drawing) {
    Set<String> marks = new TreeSet<>();
    for (Element element : Clean.flat(drawing.elements())) {
      if (element instanceof Balloon balloon) {
        marks.add(balloon.mark());
      }
    }
    return marks;
  }

  /** The bench as its maker would measure it: bays, opening, stiles, feet, overhang, reveal. */
  @Test
  void theBenchGivesItsOpenings() {
    Set<String> given = new HashSet<>();
    StringBuilder notes = new StringBuilder();
    for (GeneralSheet sheet : AllProjects.named("window-bench").drawings().general()) {
      if (sheet.units().isEmpty()) {
        Clean.dimensions(sheet.drawing()).forEach(d -> given.add(d.text()));
        notes.append(Clean.notes(sheet.drawing()));
      }
    }
    // 54 over the top, 52 1/2 case; drawer opening 16 5/8 x 11 25/32 between stiles of 1 1/2
    for (String size :
        List.of("54", "52 1/2", "17 1/2", "18 1/2", "16 5/8", "11 25/32", "1 1/2", "14 7/16")) {
      assertTrue(given.contains(size), size + " is not in " + given);
    }
    assertTrue(notes.toString().contains("gap 1/16 all round"), notes.toString());
  }

  /** The sideboard's shelves stand behind its doors: their edges are no place for a rule. */
  @Test
  void nothingIsMeasuredToWhatDoorsHide() {
    Piece piece = AllProjects.named("sideboard").piece();
    Range shelf =
        Extent.around(
                piece.parts().stream().filter(p -> p.name().startsWith("left-shelf.")).toList())
            .z();
    for (GeneralSheet sheet : AllProjects.named("sideboard").drawings().general()) {
      if (sheet.drawing().name().equals("general-front")) {
        assertTrue(
            Clean.dimensions(sheet.drawing()).stream()
                .filter(d -> !d.alongX())
                .noneMatch(d -> d.measure().equals(shelf.length())));
      }
    }
  }

  /** The sideboard's side and its section share a drawing and stand on one line, feet and all. */
  @Test
  void narrowViewsStandSideBySideOnOneLine() {
    Drawing pair =
        AllProjects.named("sideboard").drawings().general().stream()
            .map(GeneralSheet::drawing)
            .filter(each -> each.name().equals("general-side-section"))
            .findFirst()
            .orElseThrow();
    double middle = pair.widthMm() / 2;
    double side = lowest(pair, 0, middle);
    assertEquals(side, lowest(pair, middle, pair.widthMm()), 1e-6);
    assertTrue(side > pair.heightMm() / 2, side + " of " + pair.heightMm());
  }

  /** A low piece's side and section stand together too, larger than its front: 1:8 beside 1:10. */
  @Test
  void aSideAloneIsNoPage() {
    for (String project : List.of("window-bench", "dining-table", "step-stool")) {
      assertTrue(names(project).contains("side-section"), names(project));
    }
    assertEquals("1:8", scale("window-bench", "general-side-section"));
    assertEquals("1:10", scale("window-bench", "general-front"));
  }

  private static String scale(String project, String name) {
    return drawing(project, name).scale().orElseThrow().toString();
  }

  private static Drawing drawing(String project, String name) {
    return AllProjects.named(project).drawings().general().stream()
        .map(GeneralSheet::drawing)
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /**
   * A wide, deep drawer is led by the view from above: the side stands beside it, as deep on the
   * paper and turned so that its upper edge lies next to it (third angle), the front below.
   */
  @Test
  void aDrawersSideStandsBesideTheViewFromAbove() {
    Drawing drawer = drawing("nightstand", "general-drawer-1");
    assertEquals("1:5", drawer.scale().orElseThrow().toString());
    Bounds top = outline(drawer, "top-");
    Bounds side = outline(drawer, "right-");
    Bounds front = outline(drawer, "front-");
    assertEquals(top.top(), side.top(), 1e-6);
    assertEquals(top.bottom(), side.bottom(), 1e-6);
    assertEquals(top.left(), front.left(), 1e-6);
    assertEquals(front.height(), side.width(), 1e-6);
    assertTrue(top.right() < side.left() && top.bottom() < front.top());
    // 151 high at 1:5, of which the box takes 110, 12.5 above the front's lower edge
    List<Dimension> all = Clean.dimensions(drawer);
    assertEquals(side.left() + (151 - 110 - 12.5) / 5, start(all, "110"), 1e-6);
    assertEquals(side.right() - 12.5 / 5, start(all, "12.5"), 1e-6);
  }

  private static double start(List<Dimension> all, String text) {
    return all.stream()
        .filter(each -> each.text().equals(text))
        .mapToDouble(each -> Math.min(each.from().x(), each.to().x()))
        .findFirst()
        .orElseThrow();
  }

  private static Bounds outline(Drawing drawing, String view) {
    Bounds bounds = Bounds.NONE;
    for (Element each : drawing.elements()) {
      if (each instanceof Drawing.Group group && group.id().startsWith(view)) {
        for (Element line : group.elements()) {
          for (Drawing.At at : ((Drawing.Line) line).points()) {
            bounds = bounds.with(at);
          }
        }
      }
    }
    return bounds;
  }

  private static double lowest(Drawing drawing, double left, double right) {
    return Clean.flat(drawing.elements()).stream()
        .filter(each -> each instanceof Drawing.Line line && line.role() == Drawing.Role.CUT)
        .flatMap(each -> ((Drawing.Line) each).points().stream())
        .filter(at -> at.x() > left && at.x() < right)
        .mapToDouble(Drawing.At::y)
        .max()
        .orElseThrow();
  }

  /** The sideboard from above is one board without a size of its own; the stool's has a handle. */
  @Test
  void aViewThatTellsNothingIsLeftOut() {
    assertFalse(names("sideboard").contains("top"), names("sideboard"));
    assertTrue(names("step-stool").contains("top"), names("step-stool"));
  }

  private static String names(String project) {
    return AllProjects.named(project).drawings().general().stream()
        .map(sheet -> sheet.drawing().name())
        .collect(Collectors.joining(" "));
  }

  @Test
  void anOpeningIsWhatBlocksEnclose() {
    // a frame of 20 mm members round 200 x 100, with a shelf that leaves gaps of 2 mm at its ends
    List<Block> blocks =
        List.of(
            block(0, 20, 0, 100),
            block(180, 200, 0, 100),
            block(20, 180, 0, 20),
            block(20, 180, 80, 100),
            block(22, 178, 45, 50));
    Openings openings = new Openings(blocks, block(0, 200, 0, 100), EnumSet.noneOf(Side.class));
    assertEquals(
        List.of(
            new Opening(range(20, 180), range(20, 45)), new Opening(range(20, 180), range(50, 80))),
        openings.all());
    assertEquals(range(0, 20), openings.before(openings.all().getFirst(), true).orElseThrow());
  }

  @Test
  void roomOverTheFloorIsAnOpeningOnlyIfTheFloorCloses() {
    List<Block> table = List.of(block(0, 10, 0, 70), block(90, 100, 0, 70), block(0, 100, 70, 75));
    Block plane = block(0, 100, 0, 75);
    assertEquals(List.of(), new Openings(table, plane, EnumSet.noneOf(Side.class)).all());
    assertEquals(
        List.of(new Opening(range(10, 90), range(0, 70))),
        new Openings(table, plane, EnumSet.of(Side.BELOW)).all());
  }

  private static Block block(long left, long right, long low, long high) {
    return new Block(range(left, right), range(low, high));
  }

  private static Range range(long from, long to) {
    return new Range(Length.mm(from), Length.mm(to));
  }

  /** What a section hatches is what the plane cuts: a thin slice of the wood, by its volume. */
  @TestFactory
  List<DynamicTest> cutFacesHaveTheAreaOfAThinSlice() {
    return AllProjects.each(
        sample -> {
          Section section = Section.of(sample.set().piece().parts()).orElseThrow();
          Vector3D out = Vector3D.of(1, 0, 0);
          Vector3D plane = out.multiply(section.at().toMm());
          double cut = 0;
          double slices = 0;
          for (Part part : sample.set().piece().parts()) {
            for (FlatFace face : section.cutFaces().getOrDefault(part.name(), List.of())) {
              cut += face.areaMm2();
            }
            Solid slab =
                part.placed()
                    .trimmed(plane, out)
                    .trimmed(plane.add(out.multiply(-THIN_MM)), out.negate());
            slices += volume(slab) / THIN_MM;
          }
          assertTrue(cut > 0);
          assertEquals(slices, cut, 0.005 * cut);
        });
  }

  /** By the divergence theorem, from the faces alone. */
  private static double volume(Solid solid) {
    return solid.faces().stream().mapToDouble(face -> face.offsetMm() * face.areaMm2()).sum() / 3;
  }

  /** "A front" is no name of a view. */
  @TestFactory
  List<DynamicTest> noNameOfAViewStandsBesideTheLetterOfASection() {
    return AllProjects.each(
        sample -> {
          for (GeneralSheet sheet : sample.set().drawings().general()) {
            List<PlacedText> texts = texts(sheet.drawing(), Drawing.TextStyle.NOTE);
            for (PlacedText letter : texts(sheet.drawing(), Drawing.TextStyle.MARK)) {
              texts.forEach(text -> assertFalse(isBeside(letter, text), text.text()));
            }
          }
        });
  }

  private static List<PlacedText> texts(Drawing drawing, Drawing.TextStyle style) {
    return drawing.elements().stream()
        .filter(Drawing.Text.class::isInstance)
        .map(Drawing.Text.class::cast)
        .filter(text -> text.style() == style)
        .map(PlacedText::of)
        .toList();
  }

  private static boolean isBeside(PlacedText letter, PlacedText text) {
    boolean inLine = letter.top() < text.bottom() && text.top() < letter.bottom();
    double gap = Math.max(text.left() - letter.right(), letter.left() - text.right());
    return inLine && gap < 3.5;
  }
}
