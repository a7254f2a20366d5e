package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.PartDrawings.Sample;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

class PartDrawingTest {
  @TestFactory
  List<DynamicTest> nothingLiesOnATextOrOutsideThePaper() {
    return PartDrawings.each(sample -> assertEquals(List.of(), Clean.faults(sample.drawing())));
  }

  @TestFactory
  List<DynamicTest> theDrawingKeepsToItsArea() {
    return PartDrawings.each(
        sample -> {
          assertEquals(PartDrawings.AREA.widthMm(), sample.drawing().widthMm());
          assertTrue(sample.drawing().heightMm() <= PartDrawings.AREA.heightMm());
        });
  }

  @TestFactory
  List<DynamicTest> aCountersunkHoleIsTwoCirclesInOne() {
    return PartDrawings.each(
        sample -> {
          List<Drawing.Ellipse> circles =
              Clean.flat(sample.drawing().elements()).stream()
                  .filter(Drawing.Ellipse.class::isInstance)
                  .map(Drawing.Ellipse.class::cast)
                  .toList();
          long rings =
              circles.stream()
                  .filter(
                      outer ->
                          circles.stream()
                              .anyMatch(
                                  inner ->
                                      inner.centre().equals(outer.centre())
                                          && inner.rx() < outer.rx()))
                  .count();
          assertEquals(sunkHoles(sample.part()), rings);
        });
  }

  private static long sunkHoles(Part part) {
    return part.cuts().stream()
        .filter(cut -> cut instanceof Cut.Holes holes && !holes.countersink().isZero())
        .mapToLong(cut -> ((Cut.Holes) cut).count())
        .sum();
  }

  /** Scales of ISO 5455, and 1:4, 1:8, 1:12, 1:16 of US practice for drawings in inches. */
  @TestFactory
  List<DynamicTest> scalesAreStandardOnes() {
    List<Integer> iso = List.of(1, 2, 5, 10, 20, 50, 100);
    List<Integer> us = List.of(4, 8, 12, 16);
    return PartDrawings.each(
        sample -> {
          Scale scale = sample.drawing().scale().orElseThrow();
          assertEquals(1, scale.paper());
          boolean inches = sample.format().unit() == Unit.INCH;
          assertTrue(iso.contains(scale.real()) || inches && us.contains(scale.real()));
        });
  }

  @TestFactory
  List<DynamicTest> theSvgParsesAndHasTheMark() {
    return PartDrawings.each(
        sample -> {
          String svg = SvgWriter.write(sample.drawing());
          List<String> texts = SvgWriterTest.texts(SvgWriterTest.parse(svg));
          assertTrue(texts.contains(sample.mark().mark()));
          Drawing again = PartDrawing.draw(sample.mark(), sample.piece(), PartDrawings.AREA);
          assertEquals(svg, SvgWriter.write(again));
        });
  }

  /** What is kept from one room for the next changes no drawing, whatever the order of rooms. */
  @TestFactory
  List<DynamicTest> anyRoomGetsTheDrawingThatItGetsAlone() {
    return PartDrawings.each(
        sample -> {
          PartDrawing part = PartDrawing.of(sample.mark(), sample.piece());
          for (double share : new double[] {0.5, 1, 0.34, 0.62}) {
            Size room = new Size(PartDrawings.AREA.widthMm(), share * PartDrawings.AREA.heightMm());
            assertEquals(
                PartDrawing.of(sample.mark(), sample.piece()).fitting(room), part.fitting(room));
          }
        });
  }

  @Test
  void notesNameTheMarkOfTheMatingPart() {
    Sample side = PartDrawings.named("left-side in inch");
    assertTrue(Clean.notes(side.drawing()).contains("dado for B, 3/8 deep"));
    assertTrue(Clean.notes(side.drawing()).contains("10× Ø 1/4, 3/8 deep, for shelf pin 1/4 in"));
  }

  @Test
  void theBottomOfTheBenchFillsItsSheet() {
    Drawing bottom = PartDrawings.named("window bench B").drawing();
    assertEquals(new Scale(1, 10), bottom.scale().orElseThrow());
    Drawing onMore =
        PartDrawing.draw(
            PartDrawings.named("window bench B").mark(),
            PartDrawings.named("window bench B").piece(),
            new Size(PartDrawings.AREA.widthMm() + 40, PartDrawings.AREA.heightMm()));
    assertEquals(new Scale(1, 8), onMore.scale().orElseThrow());
  }

  @TestFactory
  List<DynamicTest> theFaceAndTheWayUpAreNamed() {
    return PartDrawings.each(
        sample -> {
          FlatPart flat = FlatPart.of(sample.part());
          List<String> texts =
              Painter.texts(sample.drawing()).stream().map(PlacedText::text).toList();
          String up = flat.up().word() + " edge up";
          assertEquals(1, texts.stream().filter(text -> text.endsWith(up)).count());
        });
  }

  @Test
  void aHoleIsNotedByItsDrillEvenWhereLengthsAreRoundedMore() {
    String notes = Clean.notes(PartDrawings.named("window bench B").drawing());
    assertTrue(notes.contains("16× Ø 11/64 clearance holes, through"), notes);
  }

  @Test
  void pocketHolesAreShownOnTheirOwnFace() {
    String notes = Clean.notes(PartDrawings.named("window bench D").drawing());
    assertTrue(notes.contains("4× pocket holes for pocket screw"), notes);
    assertTrue(notes.contains("in this face"), notes);
  }

  /** A leader that ends where two trenches cross would name either. */
  @Test
  void aLeaderEndsInsideItsOwnTrenchAlone() {
    Sample side = PartDrawings.named("window bench A");
    FlatPart flat = FlatPart.of(side.part());
    var notes = CutNotes.of(flat, side.piece(), storyrod.words.Words.ENGLISH);
    var groove = notes.stream().filter(note -> note.words().startsWith("groove")).toList();
    var dado = flat.trenches().stream().filter(trench -> trench.term().equals("dado")).findFirst();
    assertEquals(1, groove.size());
    assertTrue(
        groove.getFirst().tips().stream()
            .noneMatch(tip -> dado.orElseThrow().removed().x().contains(tip.x())));
  }

  /** However crowded a part is, it gets a drawing with every size. */
  @Test
  void aCrowdedPartIsDrawnOnTallerPaper() {
    Piece piece = BenchParts.inInches();
    Part plain = piece.part("foot");
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      Point first = BenchParts.point(10 + i * 13, 0, 10 + i * 11);
      cuts.add(BenchParts.holes(Face.FRONT, first, Axis.X, 0, 1));
    }
    Part crowded =
        new Part(
            plain.name(),
            plain.title(),
            "X",
            false,
            plain.assembly(),
            plain.stock(),
            plain.shoulder(),
            plain.box(),
            plain.length(),
            plain.thickness(),
            cuts,
            plain.solid(),
            plain.say(),
            plain.at());
    Mark mark = new Mark("X", "Foot", crowded, 1, 0, List.of("foot"));
    Drawing drawing = PartDrawing.draw(mark, piece, new Size(110, 80));
    assertEquals(2 * 16 + 3, Clean.dimensions(drawing).size());
  }
}
