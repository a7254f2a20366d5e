package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.piece.Cut;
import storyrod.piece.Piece;

/** What stands on the sheets of full-size templates, on either paper, and how they share them. */
class FullSizeLabelsTest {
  /** The text areas of US letter (8 1/2 x 11 in), A4 and A3 (ISO 216) less what stands over. */
  private static final List<Size> PAGES =
      List.of(new Size(181.9, 197.4), new Size(176, 215), new Size(263, 338));

  private static final double TRUE_MM = 0.1;

  private interface Check {
    void on(TemplateSheets sheets);
  }

  private static List<DynamicTest> each(Check check) {
    return AllProjects.each(
        sample -> PAGES.forEach(page -> drawn(sample.set().piece(), page).forEach(check::on)));
  }

  private static List<String> texts(TemplateTile tile) {
    return Painter.texts(tile.drawing()).stream().map(PlacedText::text).toList();
  }

  @TestFactory
  List<DynamicTest> everySheetIsCleanAndNamesItsTemplatesAndBars() {
    return each(
        sheets -> {
          for (TemplateTile tile : sheets.tiles()) {
            assertEquals(List.of(), Clean.faults(tile.drawing()), tile.drawing().name());
            List<String> said = texts(tile);
            assertTrue(said.containsAll(List.of(tile.letter(), "100 mm", "4 in")), said.toString());
            for (FullSize shape : wide(tile)) {
              assertTrue(
                  said.stream()
                      .anyMatch(
                          text ->
                              text.startsWith(shape.name() + " ") && text.endsWith(tile.letter())),
                  shape.name() + " is not named on " + tile.letter() + ": " + said);
            }
          }
        });
  }

  /** The templates of which more is seen than a sliver, which may have no room for a name. */
  private static List<FullSize> wide(TemplateTile tile) {
    At origin = tile.origin();
    Bounds sheet = new Bounds(5, 5, tile.drawing().widthMm() - 5, tile.drawing().heightMm() - 30);
    return tile.shapes().stream()
        .filter(
            shape -> {
              Bounds seen =
                  shape.mapped(at -> at.plus(-origin.x(), -origin.y())).bounds().within(sheet);
              return Math.min(seen.width(), seen.height()) > 2;
            })
        .toList();
  }

  /** A strip shows the two sides that it is laid to, an outline all four. */
  @TestFactory
  List<DynamicTest> endsEdgesAndHolesAreNamed() {
    return each(
        sheets -> {
          List<String> said = sheets.tiles().stream().flatMap(t -> texts(t).stream()).toList();
          for (FullSize shape : sheets.shapes()) {
            long named =
                shape.text().sides().stream().filter(each -> said.contains(each.name())).count();
            assertTrue(named >= (shape.isStrip() ? 2 : 4), shape.name() + ": " + said);
            assertEquals(shape.holes().isEmpty(), shape.text().notes().isEmpty());
            boolean noted = said.stream().anyMatch(text -> text.contains("Ø"));
            assertTrue(noted || shape.holes().isEmpty(), shape.name() + ": " + said);
          }
        });
  }

  @TestFactory
  List<DynamicTest> templatesOnTheSameSheetsLieApart() {
    return each(
        sheets -> {
          for (FullSize one : sheets.shapes()) {
            for (FullSize other : sheets.shapes()) {
              Bounds shared = one.bounds().widened(3).within(other.bounds().widened(3));
              boolean apart = shared.width() < 0 || shared.height() < 0;
              assertTrue(one == other || apart, one.name() + " on " + other.name());
            }
          }
        });
  }

  /** Before templates shared sheets the bookcase needed 21, the sideboard 7 and the bench 4. */
  @Test
  void smallTemplatesShareSheets() {
    assertEquals(11, sheets("bookcase"));
    assertEquals(3, sheets("sideboard"));
    assertEquals(2, sheets("window-bench"));
  }

  private static int sheets(String project) {
    return AllProjects.named(project).drawings().templates().stream()
        .mapToInt(each -> each.tiles().size())
        .sum();
  }

  /** By the figures of its description: 2 1/4 in square, 1 3/8 in at the foot. */
  @Test
  void theLegOfTheTableSaysWhichEndIsWhich() {
    FullSize leg = AllProjects.named("dining-table").drawings().templates().get(0).shapes().get(0);
    At right = new At(1, 0);
    TemplateText.Side foot =
        leg.text().sides().stream()
            .filter(side -> side.outward().distance(right) < 1e-9)
            .findFirst()
            .orElseThrow();
    assertEquals("bottom end", foot.name());
    Bounds all = leg.bounds();
    assertEquals(1.375 * 25.4, width(leg, all.right()), TRUE_MM, "the taper is at the foot");
    assertEquals(2.25 * 25.4, width(leg, all.left()), TRUE_MM);
  }

  private static List<TemplateSheets> drawn(Piece piece, Size page) {
    return TemplateSheets.draw(FullSize.of(piece), piece.description().words(), page, page);
  }

  private static double width(FullSize shape, double x) {
    List<At> there =
        shape.cuts().getFirst().points().stream()
            .filter(at -> Math.abs(at.x() - x) < 0.01)
            .toList();
    return there.stream().mapToDouble(At::y).max().orElseThrow()
        - there.stream().mapToDouble(At::y).min().orElseThrow();
  }

  /** Holes in the file for machines, counted and measured against the part's own cuts. */
  @TestFactory
  List<DynamicTest> circlesOfTheFileAreThePartsHoles() {
    return each(
        sheets -> {
          for (FullSize shape : sheets.shapes()) {
            List<At> circles = circles(CutSvg.write(shape));
            assertEquals(shape.holes().size(), circles.size());
            List<At> bored =
                FlatPart.of(shape.mark().shown()).cuts(Cut.Holes.class).stream()
                    .flatMap(holes -> holes.centres().stream())
                    .map(at -> new At(at.on(Axis.X).toMm(), at.on(Axis.Z).toMm()))
                    .toList();
            for (At one : circles) {
              for (At other : circles) {
                double apart = one.distance(other);
                assertTrue(isFound(apart, bored), shape.name() + ": " + apart);
              }
            }
          }
        });
  }

  private static boolean isFound(double apart, List<At> bored) {
    return bored.stream()
        .flatMap(one -> bored.stream().map(one::distance))
        .anyMatch(each -> Math.abs(each - apart) < TRUE_MM);
  }

  private static List<At> circles(String svg) {
    List<At> circles = new ArrayList<>();
    Matcher circle = Pattern.compile("<circle cx=\"([\\d.]+)\" cy=\"([\\d.]+)\"").matcher(svg);
    while (circle.find()) {
      circles.add(new At(Double.parseDouble(circle.group(1)), Double.parseDouble(circle.group(2))));
    }
    return circles;
  }

  /** A hole that breaks out at the edge, or at a corner, leaves a clean sheet with its note. */
  @Test
  void aHoleAtTheEdgeIsDrawnCleanly() {
    FullSize leg = AllProjects.named("nightstand").drawings().templates().get(0).shapes().get(0);
    Bounds all = leg.bounds();
    for (At at : List.of(new At(all.left(), all.middle().y()), new At(all.left(), all.top()))) {
      FullSize holed =
          new FullSize(
              leg.name(),
              leg.mark(),
              leg.cuts(),
              List.of(),
              List.of(new FullSize.Hole(at, 8)),
              new TemplateText(
                  leg.text().facing(),
                  leg.text().sides(),
                  Optional.empty(),
                  List.of(new TemplateText.Note("Ø 8 mm, through", List.of(at))),
                  List.of()));
      TemplateTile tile = tiles(holed).getFirst();
      assertEquals(List.of(), Clean.faults(tile.drawing()));
      assertTrue(texts(tile).stream().anyMatch(text -> text.contains("Ø 8 mm")));
    }
  }

  private static List<TemplateTile> tiles(FullSize shape) {
    return TemplateBoard.pack(List.of(shape), TemplateTiles.window(PAGES.get(1))).stream()
        .flatMap(
            board ->
                TemplateTiles.of(board, PAGES.get(1), storyrod.words.Words.ENGLISH)
                    .tiles()
                    .stream())
        .toList();
  }

  /** A template narrower than its own name still gets it, with a leader. */
  @Test
  void aSliverHasItsNameAtALeader() {
    FullSize leg = AllProjects.named("nightstand").drawings().templates().get(0).shapes().get(0);
    Bounds all = leg.bounds();
    FullSize sliver = leg.mapped(at -> new At(all.left() + (at.x() - all.left()) / 40, at.y()));
    TemplateTile tile = tiles(sliver).getFirst();
    assertEquals(List.of(), Clean.faults(tile.drawing()));
    assertFalse(Clean.notes(tile.drawing()).isEmpty());
    assertTrue(
        Stream.of(Clean.notes(tile.drawing()).split("\n")).anyMatch("G A1"::equals),
        Clean.notes(tile.drawing()));
  }
}
