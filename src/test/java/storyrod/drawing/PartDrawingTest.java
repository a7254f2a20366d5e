package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.function.ThrowingConsumer;
import storyrod.drawing.Drawing.Dimension;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;

class PartDrawingTest {
  private static final Size AREA = WindowBench.PART_AREA;
  private static final Map<String, Sample> SAMPLES = samples();

  private record Sample(Piece piece, Mark mark, Drawing drawing) {
    LengthFormat format() {
      return piece.description().format();
    }

    Part part() {
      return mark.shown();
    }
  }

  private static Map<String, Sample> samples() {
    Map<String, Sample> samples = new LinkedHashMap<>();
    for (Piece piece : List.of(BenchParts.inInches(), BenchParts.inMillimetres())) {
      String unit = piece.description().format().unit().word();
      piece.marks().forEach(mark -> samples.put(mark.title() + " in " + unit, sample(piece, mark)));
    }
    Piece bench = WindowBench.piece();
    bench.marks().forEach(mark -> samples.put("window bench " + mark.mark(), sample(bench, mark)));
    for (String project : List.of("side-table", "panel-door")) {
      Piece piece = TenonDrawingTest.piece(project);
      piece.marks().forEach(mark -> samples.put(project + " " + mark.mark(), sample(piece, mark)));
    }
    return samples;
  }

  private static Sample sample(Piece piece, Mark mark) {
    return new Sample(piece, mark, PartDrawing.draw(mark, piece, AREA));
  }

  private static List<DynamicTest> each(ThrowingConsumer<Sample> test) {
    return SAMPLES.entrySet().stream()
        .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> test.accept(entry.getValue())))
        .toList();
  }

  @TestFactory
  List<DynamicTest> nothingLiesOnATextOrOutsideThePaper() {
    return each(sample -> assertEquals(List.of(), Clean.faults(sample.drawing)));
  }

  @TestFactory
  List<DynamicTest> theDrawingKeepsToItsArea() {
    return each(
        sample -> {
          assertEquals(AREA.widthMm(), sample.drawing.widthMm());
          assertTrue(sample.drawing.heightMm() <= AREA.heightMm());
        });
  }

  /** First line at least 10 mm off, the next at least 8 mm further (ISO 129-1, from memory). */
  @TestFactory
  List<DynamicTest> dimensionLinesKeepTheirDistance() {
    return each(
        sample -> {
          List<Dimension> all = Clean.dimensions(sample.drawing);
          for (Dimension one : all) {
            double off = Math.min(away(one, one.from()), away(one, one.to()));
            assertTrue(off > 10 - 1e-6, one + " is " + off + " off");
            for (Dimension other : all) {
              double between = Math.abs(one.line() - other.line());
              boolean clash =
                  one.alongX() == other.alongX() && between > 1e-6 && overlap(one, other);
              assertTrue(!clash || between > 8 - 1e-6, one + " and " + other);
            }
          }
        });
  }

  private static double away(Dimension dimension, Drawing.At point) {
    return Math.abs(dimension.line() - (dimension.alongX() ? point.y() : point.x()));
  }

  private static double[] span(Dimension d) {
    double from = d.alongX() ? d.from().x() : d.from().y();
    double to = d.alongX() ? d.to().x() : d.to().y();
    return new double[] {Math.min(from, to), Math.max(from, to)};
  }

  private static boolean overlap(Dimension one, Dimension other) {
    return span(one)[0] < span(other)[1] - 1e-6 && span(other)[0] < span(one)[1] - 1e-6;
  }

  private static final Pattern EXACT_CHAIN = Pattern.compile("(\\d+) × ([^≈(]+) \\(= (.+)\\)");

  /** As printed, so that a maker who adds up finds the total; rounded steps say that they are. */
  @TestFactory
  List<DynamicTest> chainsAddUpAsPrinted() {
    return each(
        sample -> {
          String unit = " " + sample.format().unit().word();
          for (Dimension d : Clean.dimensions(sample.drawing)) {
            Matcher chain = EXACT_CHAIN.matcher(d.text());
            if (chain.matches()) {
              Length step = Length.parse(chain.group(2) + unit);
              Length total = Length.parse(chain.group(3) + unit);
              assertEquals(total, step.times(Long.parseLong(chain.group(1))), d.text());
            }
          }
        });
  }

  /** What a dimension says is what lies between its points; only breaks make it longer. */
  @TestFactory
  List<DynamicTest> dimensionsAreTrueToScale() {
    return each(
        sample -> {
          double factor = sample.drawing.scale().orElseThrow().factor();
          for (Dimension d : Clean.dimensions(sample.drawing)) {
            double paper = span(d)[1] - span(d)[0];
            double real = d.measure().toMm() * factor;
            boolean broken = d.alongX() && real > paper && real > 24;
            assertTrue(broken || Math.abs(paper - real) < 1e-6, d.toString());
            String figures = sample.format().format(d.measure());
            assertTrue(d.text().equals(figures) || d.text().endsWith("(= " + figures + ")"));
          }
        });
  }

  @TestFactory
  List<DynamicTest> eachOverallSizeIsGivenOnce() {
    return each(
        sample -> {
          Part part = sample.part();
          List<Length> sizes =
              List.of(part.finishedLength(), part.finishedWidth(), part.finishedThickness());
          for (Length size : sizes) {
            long given =
                Clean.dimensions(sample.drawing).stream()
                    .filter(d -> d.measure().equals(size))
                    .count();
            assertTrue(given >= 1, "no " + size);
          }
        });
  }

  /** Every cut's place from an edge, size and depth stand in the drawing. */
  @TestFactory
  List<DynamicTest> everySizeOfEveryCutIsGiven() {
    return each(
        sample -> {
          List<String> missing = new ArrayList<>();
          sample.part().cuts().forEach(cut -> missing.addAll(missing(sample, cut)));
          assertEquals(List.of(), missing);
        });
  }

  private static List<String> missing(Sample sample, Cut cut) {
    List<Length> lengths = new ArrayList<>();
    List<String> words = new ArrayList<>();
    Part part = sample.part();
    switch (cut) {
      case Cut.Trench t -> {
        boolean through = t.removed().on(part.thickness()).equals(part.box().on(part.thickness()));
        for (Axis axis : Axis.values()) {
          boolean shown = through ? axis != part.thickness() : axis != t.from().axis();
          if (shown) {
            addRange(t.removed().on(axis), part.box().on(axis), lengths);
          }
        }
        words.add(through ? t.term() : sample.format().format(t.depth()) + " deep");
      }
      case Cut.Tenon t -> {
        for (Axis axis : Axis.values()) {
          addRange(t.tenon().on(axis), part.box().on(axis), lengths);
        }
        words.add(t.term());
      }
      case Cut.Holes h -> {
        for (Axis axis : Axis.values()) {
          if (axis != h.from().axis()) {
            Length first = h.centres().getFirst().on(axis);
            Length last = h.centres().getLast().on(axis);
            addPlace(new Range(first.min(last), first.max(last)), part.box().on(axis), lengths);
          }
        }
        words.add("Ø " + sample.format().forBits().format(h.diameter()));
        words.add(h.through() ? "through" : sample.format().format(h.depth()) + " deep");
        if (!h.countersink().isZero()) {
          words.add("countersunk to Ø " + sample.format().forBits().format(h.countersink()));
        }
        lengths.add(h.step().times(h.count() - 1L));
      }
      case Slanted.Slope s -> {}
      case Slanted.Housing h -> {}
      case Cut.InPlace i -> {}
      case Slots s -> {
        for (Axis axis : Axis.values()) {
          if (axis != s.from().axis()) {
            Length first = s.centres().getFirst().on(axis);
            Length last = s.centres().getLast().on(axis);
            addPlace(new Range(first.min(last), first.max(last)), part.box().on(axis), lengths);
          }
        }
        words.add(sample.format().format(s.width()) + " × " + sample.format().format(s.length()));
        words.add(s.through() ? "through" : sample.format().format(s.depth()) + " deep");
        lengths.add(s.step().times(s.count() - 1L));
      }
      case Cut.Shaped s -> {
        for (Axis axis : s.contour().axes()) {
          addRange(s.contour().extent(axis), part.box().on(axis), lengths);
        }
      }
      case Cut.Roundover r ->
          words.add("R " + sample.format().forBits().format(r.radius()) + " roundover");
      case Cut.PocketHoles p -> {
        Axis across = Axis.other(p.from().axis(), p.end().axis());
        for (Point centre : p.centres()) {
          Length at = centre.on(across);
          addPlace(new Range(at, at), part.box().on(across), lengths);
        }
        String drill = sample.format().forBits().format(p.diameter());
        words.add("Ø " + drill + " at " + p.angleDegrees() + "°");
      }
    }
    return notGiven(sample, lengths, words);
  }

  @TestFactory
  List<DynamicTest> aCountersunkHoleIsTwoCirclesInOne() {
    return each(
        sample -> {
          List<Drawing.Ellipse> circles =
              Clean.flat(sample.drawing.elements()).stream()
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

  private static List<String> notGiven(Sample sample, List<Length> lengths, List<String> words) {
    List<Length> given = Clean.dimensions(sample.drawing).stream().map(Dimension::measure).toList();
    List<String> missing = new ArrayList<>();
    lengths.stream()
        .filter(length -> !given.contains(length))
        .forEach(length -> missing.add(sample.format().format(length)));
    String notes = Clean.notes(sample.drawing);
    words.stream().filter(word -> !notes.contains(word)).forEach(missing::add);
    return missing;
  }

  private static void addRange(Range cut, Range whole, List<Length> lengths) {
    if (!cut.equals(whole)) {
      lengths.add(cut.length());
      addPlace(cut, whole, lengths);
    }
  }

  private static void addPlace(Range cut, Range whole, List<Length> lengths) {
    Length nearer = cut.from().minus(whole.from()).min(whole.to().minus(cut.to()));
    if (nearer.isPositive()) {
      lengths.add(nearer);
    }
  }

  /** Scales of ISO 5455, and 1:4, 1:8, 1:12, 1:16 of US practice for drawings in inches. */
  @TestFactory
  List<DynamicTest> scalesAreStandardOnes() {
    List<Integer> iso = List.of(1, 2, 5, 10, 20, 50, 100);
    List<Integer> us = List.of(4, 8, 12, 16);
    return each(
        sample -> {
          Scale scale = sample.drawing.scale().orElseThrow();
          assertEquals(1, scale.paper());
          boolean inches = sample.format().unit() == Unit.INCH;
          assertTrue(iso.contains(scale.real()) || inches && us.contains(scale.real()));
        });
  }

  @TestFactory
  List<DynamicTest> theSvgParsesAndHasTheMark() {
    return each(
        sample -> {
          String svg = SvgWriter.write(sample.drawing);
          List<String> texts = SvgWriterTest.texts(SvgWriterTest.parse(svg));
          assertTrue(texts.contains(sample.mark.mark()));
          Drawing again = PartDrawing.draw(sample.mark, sample.piece, AREA);
          assertEquals(svg, SvgWriter.write(again));
        });
  }

  @Test
  void notesNameTheMarkOfTheMatingPart() {
    Sample side = SAMPLES.get("left-side in inch");
    assertTrue(Clean.notes(side.drawing).contains("dado for B, 3/8 deep"));
    assertTrue(Clean.notes(side.drawing).contains("10× Ø 1/4, 3/8 deep, for shelf pin 1/4 in"));
  }

  @Test
  void equalSpacingIsAChainOfOneDimension() {
    List<String> texts =
        Clean.dimensions(SAMPLES.get("left-side in inch").drawing).stream()
            .map(Dimension::text)
            .toList();
    assertEquals(1, texts.stream().filter("4 × 1 1/4 (= 5)"::equals).count(), texts.toString());
  }

  @Test
  void theBottomOfTheBenchFillsItsSheet() {
    Drawing bottom = SAMPLES.get("window bench B").drawing;
    assertEquals(new Scale(1, 10), bottom.scale().orElseThrow());
    Drawing onMore =
        PartDrawing.draw(
            SAMPLES.get("window bench B").mark,
            SAMPLES.get("window bench B").piece,
            new Size(AREA.widthMm() + 40, AREA.heightMm()));
    assertEquals(new Scale(1, 8), onMore.scale().orElseThrow());
  }

  @TestFactory
  List<DynamicTest> theFaceAndTheWayUpAreNamed() {
    return each(
        sample -> {
          FlatPart flat = FlatPart.of(sample.part());
          List<String> texts =
              Painter.texts(sample.drawing).stream().map(PlacedText::text).toList();
          String up = flat.up().word() + " edge up";
          assertEquals(1, texts.stream().filter(text -> text.endsWith(up)).count());
        });
  }

  @Test
  void aHoleIsNotedByItsDrillEvenWhereLengthsAreRoundedMore() {
    String notes = Clean.notes(SAMPLES.get("window bench B").drawing);
    assertTrue(notes.contains("8× Ø 11/64 clearance holes, through"), notes);
  }

  @Test
  void pocketHolesAreShownOnTheirOwnFace() {
    String notes = Clean.notes(SAMPLES.get("window bench D").drawing);
    assertTrue(notes.contains("4× pocket holes for pocket screw"), notes);
    assertTrue(notes.contains("in this face"), notes);
  }

  /** A leader that ends where two trenches cross would name either. */
  @Test
  void aLeaderEndsInsideItsOwnTrenchAlone() {
    Sample side = SAMPLES.get("window bench A");
    FlatPart flat = FlatPart.of(side.part());
    var notes = CutNotes.of(flat, side.piece, storyrod.words.Words.ENGLISH);
    var groove = notes.stream().filter(note -> note.words().startsWith("groove")).toList();
    var dado = flat.trenches().stream().filter(trench -> trench.term().equals("dado")).findFirst();
    assertEquals(1, groove.size());
    assertTrue(
        groove.getFirst().tips().stream()
            .noneMatch(tip -> dado.orElseThrow().removed().x().contains(tip.x())));
  }

  /** Three points of a face that run counter-clockwise still do when the part is laid flat. */
  @Test
  void aPartIsTurnedAndNeverMirrored() {
    Part side = BenchParts.inInches().parts().getFirst();
    for (Axis length : Axis.values()) {
      for (Axis thickness : Axis.values()) {
        for (int sign : new int[] {-1, 1}) {
          if (length != thickness) {
            Cut cut = cutInACorner(side, Face.of(thickness, sign));
            FlatPart flat = FlatPart.of(with(side, length, thickness, cut));
            assertEquals(handedness(side, cut), handedness(flat, flat.cuts().getFirst()));
          }
        }
      }
    }
  }

  private static Part with(Part part, Axis length, Axis thickness, Cut cut) {
    return new Part(
        part.name(),
        part.title(),
        part.mark(),
        false,
        part.assembly(),
        part.stock(),
        part.shoulder(),
        part.box(),
        length,
        thickness,
        List.of(cut),
        part.solid(),
        part.say(),
        part.at());
  }

  private static Cut cutInACorner(Part part, Face face) {
    Length deep = BenchParts.at(4);
    Length wide = BenchParts.at(8);
    var box = part.box();
    Axis one = Axis.values()[(face.axis().ordinal() + 1) % 3];
    Axis other = Axis.other(face.axis(), one);
    Length low = box.on(face.axis()).from();
    Length high = box.on(face.axis()).to();
    Range into =
        face.sign() > 0 ? new Range(high.minus(deep), high) : new Range(low, low.plus(deep));
    var removed =
        box.with(face.axis(), into)
            .with(one, new Range(box.on(one).from(), box.on(one).from().plus(wide)))
            .with(other, new Range(box.on(other).from(), box.on(other).from().plus(wide.times(2))));
    return BenchParts.trench("notch", face, removed, "rail");
  }

  private static int handedness(Part part, Cut cut) {
    return handedness(part.box(), cut);
  }

  private static int handedness(FlatPart part, Cut cut) {
    return handedness(part.box(), cut);
  }

  /** The sign of (way to the corner along the short side) x (along the long side) . (outwards). */
  private static int handedness(storyrod.geometry.Box box, Cut cut) {
    Cut.Trench trench = (Cut.Trench) cut;
    Axis normal = trench.from().axis();
    Axis shorter = Axis.values()[(normal.ordinal() + 1) % 3];
    Axis longer = Axis.other(normal, shorter);
    if (trench.removed().size(shorter).isLongerThan(trench.removed().size(longer))) {
      Axis swap = shorter;
      shorter = longer;
      longer = swap;
    }
    int turn = Math.floorMod(longer.ordinal() - shorter.ordinal(), 3) == 1 ? 1 : -1;
    return turn
        * trench.from().sign()
        * end(trench.removed().on(shorter), box.on(shorter))
        * end(trench.removed().on(longer), box.on(longer));
  }

  private static int end(Range cut, Range whole) {
    return cut.from().equals(whole.from()) ? -1 : 1;
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
