package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Text;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.planset.PlanSet;

/** The drawings of joints. */
class JointSheetsTest {
  /** A figure in a sentence, a fraction with its whole number. */
  private static final Pattern FIGURE =
      Pattern.compile("\\d+(?: \\d+/\\d+|/\\d+|\\.\\d+)?(?![\\d×])");

  private static final Pattern SCREW_HOLES =
      Pattern.compile("^(?:(\\d+)× )?(?:clearance|pilot|pocket) holes? ");

  private static final Pattern SCALE = Pattern.compile("(\\d+):(\\d+)$");

  private static List<JointSheet> sheets(PlanSet set) {
    return set.drawings().joints();
  }

  private static Stream<Joint> joints(JointSheet sheet) {
    return sheet.kind().places().stream().map(JointPlace::joint);
  }

  @TestFactory
  List<DynamicTest> eachJointIsDrawnOnce() {
    return AllProjects.each(
        sample -> {
          List<Joint> drawn =
              sheets(sample.set()).stream().flatMap(JointSheetsTest::joints).toList();
          List<Joint> all = sample.set().piece().joints();
          assertEquals(all.size(), drawn.size());
          assertTrue(drawn.containsAll(all));
        });
  }

  /** Whoever reads of four screws drills four holes, in as many rows as there are. */
  @TestFactory
  List<DynamicTest> asManyHolesAreToldAsScrews() {
    return AllProjects.each(
        sample -> {
          List<String> faults = new ArrayList<>();
          for (JointSheet sheet : sheets(sample.set())) {
            List<Integer> screws =
                sheet.kind().shown().joint().fasteners().stream()
                    .map(Joint.ItemCount::count)
                    .toList();
            sheet.kind().lines().stream()
                .map(JointLine::words)
                .filter(words -> holes(words) > 0 && !screws.contains(holes(words)))
                .forEach(words -> faults.add(screws + " screws, " + words));
          }
          assertEquals(List.of(), faults);
        });
  }

  /** How many holes of screws are told; 0 if it is not of such. */
  private static int holes(String words) {
    Matcher holes = SCREW_HOLES.matcher(words);
    return !holes.find() ? 0 : holes.group(1) == null ? 1 : Integer.parseInt(holes.group(1));
  }

  /** Two drawings that say and show the same would send a reader to look for what differs. */
  @TestFactory
  List<DynamicTest> noTwoDrawingsSayTheSame() {
    return AllProjects.each(
        sample -> {
          List<String> all = sheets(sample.set()).stream().map(JointSheetsTest::allSaid).toList();
          assertEquals(all.stream().distinct().toList(), all);
        });
  }

  private static String allSaid(JointSheet sheet) {
    Joint joint = sheet.kind().shown().joint();
    List<String> lines = sheet.kind().lines().stream().map(JointLine::words).toList();
    List<String> figures = Clean.dimensions(sheet.drawing()).stream().map(Dimension::text).toList();
    return joint.type() + " " + joint.glued() + joint.fasteners() + lines + figures;
  }

  /** Both parts are there twice, apart and sawn, each with its mark. */
  @TestFactory
  List<DynamicTest> bothPartsBearTheirMarks() {
    return AllProjects.each(
        sample ->
            sheets(sample.set())
                .forEach(
                    sheet -> {
                      Stream<String> marks =
                          sheet.kind().shown().parts().stream().map(each -> each.part().mark());
                      assertEquals(
                          marks.flatMap(mark -> Stream.of(mark, mark)).sorted().toList(),
                          marks(sheet),
                          sheet.drawing().name() + " " + sheet.kind().shown().joint());
                    }));
  }

  private static List<String> marks(JointSheet sheet) {
    return balloons(sheet).stream().map(Balloon::mark).sorted().toList();
  }

  private static List<Balloon> balloons(JointSheet sheet) {
    return Clean.flat(sheet.drawing().elements()).stream()
        .flatMap(each -> each instanceof Balloon balloon ? Stream.of(balloon) : Stream.of())
        .toList();
  }

  /** A ring on a part would look like that part's mark. */
  @TestFactory
  List<DynamicTest> ringsStandBesideTheParts() {
    return AllProjects.each(
        sample -> {
          List<String> onParts =
              sheets(sample.set()).stream()
                  .flatMap(
                      sheet ->
                          balloons(sheet).stream()
                              .filter(each -> isOnAPart(sheet, each))
                              .map(each -> sheet.drawing().name() + " " + each.mark()))
                  .toList();
          assertEquals(List.of(), onParts);
        });
  }

  private static boolean isOnAPart(JointSheet sheet, Balloon balloon) {
    return sheet.drawing().elements().stream()
        .flatMap(each -> Lowering.simple(each).stream())
        .flatMap(each -> each instanceof Area area ? area.rings().stream().limit(1) : Stream.of())
        .anyMatch(
            ring -> TemplateBody.ring(ring).contains(balloon.centre().x(), balloon.centre().y()));
  }

  @TestFactory
  List<DynamicTest> theFiguresOfASectionStandInThePartDrawings() {
    return eachKnows(sheet -> Clean.dimensions(sheet.drawing()).stream().map(Dimension::text));
  }

  @TestFactory
  List<DynamicTest> theFiguresOfTheLinesStandInThePartDrawings() {
    return eachKnows(sheet -> sheet.kind().lines().stream().flatMap(line -> figures(line.words())));
  }

  /** Whether each figure that a sheet says is in the drawings of its parts. */
  private static List<DynamicTest> eachKnows(Function<JointSheet, Stream<String>> said) {
    return AllProjects.each(
        sample -> sheets(sample.set()).forEach(sheet -> assertKnows(sample, sheet, said)));
  }

  private static void assertKnows(
      AllProjects.Sample sample, JointSheet sheet, Function<JointSheet, Stream<String>> said) {
    Set<String> known = known(sample.set(), sheet);
    List<String> strange = said.apply(sheet).filter(text -> !known.contains(text)).toList();
    assertEquals(List.of(), strange, said(sheet));
  }

  private static String said(JointSheet sheet) {
    return sheet.drawing().name()
        + " "
        + sheet.kind().shown().joint().type()
        + " "
        + sheet.kind().lines();
  }

  private static Stream<String> figures(String words) {
    Matcher matcher = FIGURE.matcher(words);
    List<String> figures = new ArrayList<>();
    while (matcher.find()) {
      figures.add(matcher.group());
    }
    return figures.stream();
  }

  /** All figures in the drawings of the two parts, and what lies between two of their ends. */
  private static Set<String> known(PlanSet set, JointSheet sheet) {
    Set<String> known = new TreeSet<>();
    for (JointPart each : sheet.kind().shown().parts()) {
      Drawing drawing = set.drawings().parts().get(each.part().mark());
      texts(drawing).flatMap(JointSheetsTest::figures).forEach(known::add);
      between(drawing).map(set.piece().description().printed()::told).forEach(known::add);
      texts(drawing).forEach(known::add);
    }
    return known;
  }

  /** What two dimensions differ by, and what two of them leave of a third. */
  private static Stream<Length> between(Drawing drawing) {
    List<Length> all =
        Clean.dimensions(drawing).stream().map(Dimension::measure).distinct().toList();
    List<Length> sums =
        all.stream().flatMap(one -> all.stream().map(one::plus)).distinct().toList();
    return Stream.concat(all.stream(), sums.stream())
        .flatMap(less -> all.stream().map(whole -> whole.minus(less).abs()))
        .distinct();
  }

  private static Stream<String> texts(Drawing drawing) {
    return Stream.concat(
        Clean.notes(drawing).lines(), Clean.dimensions(drawing).stream().map(Dimension::text));
  }

  /** The bench's dado, worked out by hand from its description. */
  @Test
  void theDadoOfTheBenchHasItsFigures() {
    JointSheet dado = of(AllProjects.named("window-bench"), "dado");
    assertEquals("dado 23/32 wide, 5/16 deep", dado.kind().lines().getFirst().words());
    List<String> figures =
        Clean.dimensions(dado.drawing()).stream().map(Dimension::text).sorted().toList();
    assertTrue(figures.containsAll(List.of("23/32", "5/16")), figures.toString());
  }

  private static JointSheet of(PlanSet set, String type) {
    return sheets(set).stream()
        .filter(sheet -> sheet.kind().shown().joint().type().equals(type))
        .findFirst()
        .orElseThrow();
  }

  /** Joints that differ in a figure are drawn apart. */
  @TestFactory
  List<DynamicTest> alikeJointsAreOfOneKindAndGlue() {
    return AllProjects.each(
        sample ->
            sheets(sample.set())
                .forEach(
                    sheet ->
                        assertEquals(
                            1,
                            joints(sheet)
                                .map(each -> each.type() + each.glued() + each.fasteners())
                                .distinct()
                                .count())));
  }

  /** What is drawn apart does not overlap in space: the first part is clear of the second. */
  @TestFactory
  List<DynamicTest> thePartsAreDrawnClearOfEachOther() {
    return AllProjects.each(
        sample -> sheets(sample.set()).forEach(sheet -> assertClear(sheet.kind().shown())));
  }

  private static void assertClear(JointPlace place) {
    assertEquals(0, JointApart.of(place).sharedVolumeMm3(), 1e-6, place.joint().toString());
  }

  @TestFactory
  List<DynamicTest> aSectionShowsBothParts() {
    return AllProjects.each(
        sample ->
            sheets(sample.set())
                .forEach(
                    sheet ->
                        assertFalse(groups(sheet, "cut-part").size() < 2, sheet.drawing().name())));
  }

  private static List<Group> groups(JointSheet sheet, String id) {
    return sheet.drawing().elements().stream()
        .flatMap(each -> each instanceof Group group ? Stream.of(group) : Stream.of())
        .filter(group -> group.id().startsWith(id) && !group.elements().isEmpty())
        .toList();
  }

  /** What fastens can be told from a dash: no section is smaller than 1:5. */
  @TestFactory
  List<DynamicTest> sectionsCanBeRead() {
    return AllProjects.each(
        sample -> {
          List<String> small =
              sheets(sample.set()).stream()
                  .map(JointSheetsTest::caption)
                  .filter(caption -> factor(caption) < 0.2)
                  .toList();
          assertEquals(List.of(), small);
        });
  }

  private static String caption(JointSheet sheet) {
    return Clean.flat(sheet.drawing().elements()).stream()
        .flatMap(each -> each instanceof Text text ? Stream.of(text.text()) : Stream.of())
        .filter(text -> SCALE.matcher(text).find())
        .findFirst()
        .orElseThrow();
  }

  private static double factor(String caption) {
    Matcher scale = SCALE.matcher(caption);
    assertTrue(scale.find(), caption);
    return Double.parseDouble(scale.group(1)) / Double.parseDouble(scale.group(2));
  }

  /** Nothing white is left above and below a low picture, so rows stand close. */
  @TestFactory
  List<DynamicTest> drawingsAreNoHigherThanWhatIsOnThem() {
    return AllProjects.each(
        sample ->
            sheets(sample.set())
                .forEach(
                    sheet -> {
                      Paper paper = new Paper();
                      sheet.drawing().elements().forEach(paper::add);
                      double used = paper.bounds().height();
                      assertTrue(used <= sheet.drawing().heightMm(), sheet.drawing().name());
                      assertTrue(
                          sheet.drawing().heightMm() <= used + 2 + 1e-6, sheet.drawing().name());
                    }));
  }
}
