package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Note;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Mark;

/**
 * Every part of every project is made again from its drawing and comes out as the same solid.
 *
 * <p>From the drawing come all sizes: the figures as printed, the two drawn lines between which
 * each dimension stands, and the notes with what their arrows touch. Every line of the drawing is
 * an unknown place; what is drawn in line, in a view or in two views beside each other, is one
 * place. Dimensions and notes are equations between places, and every place that the part needs
 * must follow from them. No stretch may be given twice, and what follows from two ways must agree.
 *
 * <p>From the part comes only its form, never a size: which cuts it has, and on which line of the
 * drawing each of their corners lies. Holes that are bored in place are left out, as no drawing
 * gives them; a pocket hole leaves at the middle of the end, and its narrow step is that of its
 * bit. Rounded edges are no part of any solid, so only their notes are read.
 */
class RebuiltPartTest {
  /** Parts that say nothing in two ways: a row of holes in line with other holes would. */
  private static final List<String> PLAIN =
      List.of(
          "window-bench A",
          "window-bench B",
          "bookcase B",
          "bookcase J",
          "bookcase L",
          "nightstand K",
          "nightstand T",
          "sewing-box E",
          "sewing-box N",
          "sewing-box P",
          "sideboard Z");

  private static final List<String> STEEP = List.of("slope 1:6 (9.5°)");

  /** A part with its drawing. */
  private record Sheet(String name, Mark mark, Drawing drawing, LengthFormat format) {
    List<String> faults(Drawing other) {
      try {
        return Rebuilding.faults(mark.shown(), other, format);
      } catch (IllegalStateException | IllegalArgumentException | Tracing.NotDrawn e) {
        return List.of(String.valueOf(e.getMessage()));
      }
    }

    /** The same drawing with something else, or nothing, instead of one of its elements. */
    Drawing with(Element element, List<? extends Element> instead) {
      return new Drawing(
          drawing.name(),
          drawing.widthMm(),
          drawing.heightMm(),
          drawing.scale(),
          with(drawing.elements(), element, instead));
    }

    private static List<Element> with(
        List<Element> all, Element element, List<? extends Element> instead) {
      List<Element> elements = new ArrayList<>();
      for (Element each : all) {
        if (each instanceof Group group) {
          List<Element> own = with(group.elements(), element, instead);
          elements.add(new Group(group.id(), group.mark(), group.name(), own));
        } else {
          elements.addAll(each == element ? instead : List.of(each));
        }
      }
      return elements;
    }
  }

  private static Stream<Sheet> sheets() {
    return AllProjects.all().stream()
        .flatMap(sample -> sample.set().piece().marks().stream().map(mark -> sheet(sample, mark)));
  }

  private static Sheet sheet(AllProjects.Sample sample, Mark mark) {
    return new Sheet(
        sample.name() + " " + mark.mark(),
        mark,
        sample.set().drawings().parts().get(mark.mark()),
        sample.set().piece().description().format());
  }

  private static List<DynamicTest> each(Stream<Sheet> sheets, Function<Sheet, List<String>> test) {
    return sheets
        .map(
            sheet ->
                DynamicTest.dynamicTest(
                    sheet.name, () -> assertEquals(List.of(), test.apply(sheet))))
        .toList();
  }

  /** Volume, symmetric difference, corners and bores are the same but for what print rounds. */
  @TestFactory
  List<DynamicTest> everyPartIsMadeAgain() {
    return each(sheets(), sheet -> sheet.faults(sheet.drawing));
  }

  /**
   * A part cannot be made without any one of its dimensions and notes. Figures in brackets only
   * repeat what another says (ISO 129-1), so nobody misses them.
   */
  @TestFactory
  List<DynamicTest> whateverIsLeftOutIsMissed() {
    return each(
        sheets().filter(sheet -> PLAIN.contains(sheet.name)),
        sheet ->
            Clean.flat(sheet.drawing.elements()).stream()
                .filter(each -> isGiven(each) || each instanceof Note)
                .filter(each -> sheet.faults(sheet.with(each, List.of())).isEmpty())
                .map(each -> "not missed: " + each)
                .toList());
  }

  private static boolean isGiven(Element each) {
    return each instanceof Dimension dimension && !Figures.isAuxiliary(dimension.text());
  }

  /** A dimension that is wrong by an inch spoils the part. */
  @TestFactory
  List<DynamicTest> everyWrongFigureIsFound() {
    return each(
        sheets(),
        sheet ->
            Clean.dimensions(sheet.drawing).stream()
                .filter(
                    each -> sheet.faults(sheet.with(each, List.of(wrong(each, sheet)))).isEmpty())
                .map(each -> "may be wrong: " + each)
                .toList());
  }

  private static Dimension wrong(Dimension right, Sheet sheet) {
    String figure = sheet.format.format(right.measure().plus(Length.inches(1)));
    String text = Figures.isAuxiliary(right.text()) ? "(" + figure + ")" : figure;
    return new Dimension(
        right.from(), right.to(), right.alongX(), right.line(), text, right.measure());
  }

  /** Brackets are for what is said elsewhere: each dimension is needed without them. */
  @TestFactory
  List<DynamicTest> whatOnlyBracketsSayIsMissed() {
    return each(
        sheets().filter(sheet -> PLAIN.contains(sheet.name)),
        sheet ->
            Clean.dimensions(sheet.drawing).stream()
                .filter(RebuiltPartTest::isGiven)
                .filter(each -> sheet.faults(sheet.with(each, List.of(inBrackets(each)))).isEmpty())
                .map(each -> "not missed: " + each)
                .toList());
  }

  private static Dimension inBrackets(Dimension it) {
    String text = "(" + it.text() + ")";
    return new Dimension(it.from(), it.to(), it.alongX(), it.line(), text, it.measure());
  }

  /** Details are among the drawings that are read, with figures of both kinds. */
  @Test
  void detailsAreRead() {
    List<String> texts =
        sheets()
            .flatMap(sheet -> Clean.details(sheet.drawing))
            .flatMap(detail -> Clean.dimensions(detail.elements()).stream())
            .map(Dimension::text)
            .toList();
    assertTrue(texts.stream().anyMatch(Figures::isAuxiliary), texts.toString());
    assertFalse(texts.stream().allMatch(Figures::isAuxiliary), texts.toString());
  }

  /** A detail whose ring bears another name says nothing. */
  @Test
  void aDetailThatNoRingBearsIsTold() {
    Sheet sheet =
        sheets().filter(each -> Clean.details(each.drawing).count() > 0).findFirst().orElseThrow();
    Element ring =
        Clean.flat(sheet.drawing.elements()).stream()
            .filter(ReadDetail::isRing)
            .findFirst()
            .orElseThrow();
    String faults = String.join("; ", sheet.faults(sheet.with(ring, List.of())));
    assertTrue(faults.contains("no ring bears"), faults);
  }

  /**
   * The side of a tail is read in its detail: a slope that its corners have not is told, so is one
   * that points at no slanted edge.
   */
  @Test
  void aSlopeThatADetailDoesNotShowIsTold() {
    Sheet sheet = sheets().filter(each -> each.name.equals("sewing-box L")).findFirst().get();
    Note right =
        Clean.details(sheet.drawing)
            .flatMap(detail -> detail.elements().stream())
            .flatMap(each -> each instanceof Note note ? Stream.of(note) : Stream.empty())
            .findFirst()
            .orElseThrow();
    assertEquals(List.of("slope 1:8 (7.1°)"), right.lines());
    Note steeper = new Note(right.tip(), right.elbow(), right.text(), right.anchor(), STEEP);
    String faults = String.join("; ", sheet.faults(sheet.with(right, List.of(steeper))));
    assertTrue(faults.contains("is drawn 1:"), faults);
    assertTrue(faults.contains("contradicts"), faults);
    At off = right.tip().plus(1, 1);
    Note astray = new Note(off, right.elbow(), right.text(), right.anchor(), right.lines());
    String lost = String.join("; ", sheet.faults(sheet.with(right, List.of(astray))));
    assertTrue(lost.contains("points at no slanted edge"), lost);
  }

  /** The same stretch twice, or from beside an edge, is told as such. */
  @Test
  void aStretchGivenTwiceOrFromNowhereIsTold() {
    Sheet sheet = sheets().filter(each -> each.name.equals("window-bench A")).findFirst().get();
    Dimension first = Clean.dimensions(sheet.drawing).getFirst();
    String twice = String.join("; ", sheet.faults(sheet.with(first, List.of(first, first))));
    assertTrue(twice.contains("given twice"), twice);
    At beside = first.from().plus(first.alongX() ? -0.3 : 0, first.alongX() ? 0 : -0.3);
    Dimension moved =
        new Dimension(
            beside, first.to(), first.alongX(), first.line(), first.text(), first.measure());
    assertFalse(sheet.faults(sheet.with(first, List.of(moved))).isEmpty());
  }

  /**
   * A tape hooks over an edge of the face that is shown: of the stool's leg, whose end is bevelled,
   * the edge of that face, not the one of the far face that shows beyond it.
   */
  @Test
  void placesAreMeasuredFromEdgesOfTheFaceShown() {
    List<String> texts = texts("step-stool B");
    assertTrue(texts.contains("≈ 4 1/32"), texts.toString());
    assertFalse(texts.contains("≈ 4 5/32"), texts.toString());
  }

  /** The stretcher's long corners are taken by its curve, so its short side is measured. */
  @Test
  void nothingIsMeasuredBetweenCornersThatAreGone() {
    List<String> texts = texts("step-stool C");
    assertTrue(texts.contains("≈ 11 1/16"), texts.toString());
    assertFalse(texts.contains("≈ 12 1/8"), texts.toString());
  }

  private static List<String> texts(String name) {
    Optional<Sheet> sheet = sheets().filter(each -> each.name.equals(name)).findFirst();
    return Clean.dimensions(sheet.orElseThrow().drawing).stream().map(Dimension::text).toList();
  }
}
