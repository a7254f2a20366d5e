package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.build.Catches;
import storyrod.check.Checks;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Severity;
import storyrod.description.SourceText;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/** The sideboard of shipped sub-assemblies: as it is, by its options, and with other sizes. */
class SideboardTest {
  private static final Path PROJECT = Path.of("projects/sideboard/project.yaml");
  private static final Pattern SIZE =
      Pattern.compile("(?m)^  ([a-z-]+): ([0-9][0-9 /]*?)(?= +#|$)");

  private static String text() {
    try {
      return Files.readString(PROJECT);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<Piece> checked(String text, Optional<String> option, Diagnostics found) {
    SourceText source = new SourceText(PROJECT.toString(), text);
    Optional<Piece> piece =
        Pipeline.reader().read(source, option, found).flatMap(d -> PieceBuilder.build(d, found));
    piece.ifPresent(each -> Checks.run(each, found));
    return piece;
  }

  private static Piece built(Optional<String> option) {
    Diagnostics found = new Diagnostics();
    Optional<Piece> piece = checked(text(), option, found);
    assertFalse(found.hasErrors(), () -> DiagnosticPrinter.print(found.sorted()));
    return piece.orElseThrow();
  }

  @Test
  void canBeBuiltWithoutAWarning() {
    Diagnostics found = new Diagnostics();
    assertTrue(Pipeline.plan(new SourceText(PROJECT.toString(), text()), found).isPresent());
    assertTrue(
        found.sorted().stream().allMatch(each -> each.severity() == Severity.ADVICE),
        () -> DiagnosticPrinter.print(found.sorted()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"solid-wood", "all-plywood"})
  void bothOptionsCanBeBuilt(String option) {
    assertFalse(built(Optional.of(option)).parts().isEmpty());
  }

  @Test
  void plywoodVersionHasSlabDoors() {
    Piece piece = built(Optional.of("all-plywood"));
    assertEquals("oak plywood", piece.part("left-slab.slab").stock().species());
    assertTrue(piece.parts().stream().map(Part::name).noneMatch("left-door.left-stile"::equals));
  }

  /** Their hinges tell the free edge, for a slab has no stile to name. */
  @Test
  void slabDoorsAreCaughtWhereTheyDoNotHang() {
    Piece piece = built(Optional.of("all-plywood"));
    assertEquals(
        List.of("frame.middle-stile-1", "frame.middle-stile-2"),
        new Catches(piece).posts(piece.description().hardware()));
  }

  @Test
  void upperDrawerIsCutOutOfTheRailThatItCloses() {
    Piece piece = built(Optional.empty());
    assertEquals("frame.top-rail", piece.kept().getFirst().board());
    assertEquals("upper-drawer.face", piece.kept().getFirst().kept());
  }

  /** A size's name, and the whole text with the size changed. */
  record Changed(String name, String text) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Changed> changes() {
    String text = text();
    int from = text.indexOf("\nsizes:");
    Matcher sizes = SIZE.matcher(text).region(from, text.indexOf("\nstock:"));
    return sizes
        .results()
        .flatMap(
            size ->
                Stream.of(9, 11)
                    .map(
                        tenths ->
                            new Changed(
                                size.group(1) + " * " + tenths + " / 10",
                                text.substring(0, size.start(2))
                                    + "(%s) * %d / 10".formatted(size.group(2), tenths)
                                    + text.substring(size.end(2)))));
  }

  @ParameterizedTest
  @MethodSource("changes")
  void eachSizeMayChangeByATenth(Changed changed) {
    Diagnostics found = new Diagnostics();
    checked(changed.text(), Optional.empty(), found);
    assertOnlyLimits(found);
    assertEquals(changed.name().equals("depth * 9 / 10"), found.hasErrors());
  }

  @Test
  void changesReachAllSizes() {
    assertTrue(changes().count() >= 30);
    assertEquals(changes().count(), new TreeSet<>(changes().map(Changed::name).toList()).size());
  }

  @Test
  void otherUnitsAreRefusedWithAReason() {
    Diagnostics found = new Diagnostics();
    checked(text().replace("units: inch", "units: mm"), Optional.empty(), found);
    assertTrue(found.hasErrors());
    assertTrue(
        limits(found).contains("the opening is too narrow for a drawer between its slides"),
        () -> DiagnosticPrinter.print(found.sorted()));
  }

  /**
   * Millimetres throughout, with the numbers that were inches in inches: the same piece. Only what
   * joints add follows the figures that each unit prints: depths that are a share of a thickness of
   * 23/32 or 15/32, and the room of a sheet in its groove.
   */
  @Test
  void otherUnitsForTheSameSizesBuildTheSamePiece() {
    Diagnostics found = new Diagnostics();
    Optional<Piece> same = checked(inMillimetres(), Optional.empty(), found);
    assertFalse(found.hasErrors(), () -> DiagnosticPrinter.print(found.sorted()));
    List<Part> inches = built(Optional.empty()).parts();
    List<Part> millimetres = same.orElseThrow().parts();
    assertEquals(shoulders(inches), shoulders(millimetres));
    Length room = Length.inch(1, 32).minus(Length.parse("0.5 mm"));
    Length corner = Length.parse("5.9 mm").minus(Length.inch(7, 32));
    Length dado = Length.parse("9.1 mm").minus(Length.inch(11, 32));
    Length partition = Length.parse("6.0 mm").minus(Length.inch(7, 32));
    Map<String, Length> expected = new TreeMap<>();
    for (String face : List.of("left", "right")) {
      expected.put("bottom-panel " + face, dado);
      expected.put("box-front " + face, corner);
      expected.put("box-back " + face, corner);
      expected.put("back-panel " + face, room);
    }
    expected.put("back-panel bottom", room);
    expected.put("partition bottom", partition);
    List.of("left", "right", "front", "back").forEach(f -> expected.put("panel " + f, room));
    List.of("bottom", "top").forEach(face -> expected.put("flat-panel " + face, room));
    assertEquals(expected, differences(inches, millimetres));
  }

  /** How far the faces of parts lie apart, by the last word of the part's name and the face. */
  private static Map<String, Length> differences(List<Part> one, List<Part> other) {
    Map<String, Length> differences = new TreeMap<>();
    for (int i = 0; i < one.size(); i++) {
      String name = one.get(i).name().replaceFirst(".*\\.", "").replaceFirst("-\\d+$", "");
      for (Face face : Face.values()) {
        Length apart = one.get(i).box().at(face).minus(other.get(i).box().at(face)).abs();
        if (!apart.equals(Length.ZERO)) {
          String key = name + " " + face.word();
          assertEquals(apart, Objects.requireNonNullElse(differences.put(key, apart), apart), key);
        }
      }
    }
    return differences;
  }

  private static String inMillimetres() {
    return text()
        .replace("units: inch", "units: mm")
        .replace("edge-gap + 2 1/2", "edge-gap + 2 1/2 in")
        .replaceAll("(?m)^(  [a-z-]+: [0-9][0-9 /]*?)(?= +#|$)", "$1 in")
        .replaceAll(
            "((thickness|bought-as|slot-from-top|first-hole|plain-height): [0-9 /]*[0-9])", "$1 in")
        .replaceAll("(space-[a-z]+: [0-9 /]+)", "$1 in")
        .replaceAll("(sheet: [0-9]+ x [0-9]+)", "$1 in");
  }

  private static List<String> shoulders(List<Part> parts) {
    return parts.stream().map(part -> part.name() + " " + part.shoulder()).toList();
  }

  private static void assertOnlyLimits(Diagnostics found) {
    List<Diagnostic> errors =
        found.sorted().stream().filter(each -> each.severity() == Severity.ERROR).toList();
    assertTrue(
        errors.stream().allMatch(each -> each.code().equals("limit")),
        () -> DiagnosticPrinter.print(errors));
  }

  private static List<String> limits(Diagnostics found) {
    return found.sorted().stream()
        .filter(each -> each.code().equals("limit"))
        .map(Diagnostic::message)
        .toList();
  }
}
