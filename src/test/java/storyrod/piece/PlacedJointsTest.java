package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.check.Checks;
import storyrod.description.Description;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Library;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;

/**
 * The example of every joint and every cut in the reference, and random joints, each used as a
 * sub-assembly as it is and again turned or mirrored: its parts stay the same parts or become their
 * mirror images, and what is found in the one is found in the other.
 */
class PlacedJointsTest {
  private static final Path EXAMPLES = Path.of("src/main/resources/storyrod/reference/examples");
  private static final String EXTENT = "\nsizes: {width: 100, depth: 40, height: 40}\n";
  private static final int TRIES = 2;
  private static final long SEED = 20261126;

  private static final List<String> WAYS =
      List.of(
          "mirror: x",
          "mirror: y",
          "mirror: z",
          "turn: {about: x, by: 90}",
          "turn: {about: x, by: 180}",
          "turn: {about: y, by: 90}",
          "turn: {about: y, by: 270}",
          "turn: {about: z, by: 90}",
          "turn: {about: z, by: 180}",
          "mirror: y, turn: {about: z, by: 270}");

  static Stream<Named<String>> examples() throws IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files
          .filter(file -> file.getFileName().toString().matches("(joint|cut)-.*"))
          .sorted()
          .toList()
          .stream()
          .map(file -> Named.of(file.getFileName().toString(), read(file)));
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Stream<Named<String>> randomJoints() {
    Random random = new Random(SEED);
    return RandomJoints.ALL.stream()
        .flatMap(maker -> IntStream.range(0, TRIES).mapToObj(i -> maker.make(random)))
        .map(RandomJoints.Sample::fitting)
        .map(body -> Named.of(body.substring(body.indexOf("joints:")), Pieces.text(body)));
  }

  /** Joints that say nothing of a side, in parts that a notch gives one. */
  static Stream<Named<String>> oneSided() {
    return Stream.of(
            """
            parts:
              post: {stock: ply18, x: 0 to 18, y: 0 to 400, z: 0 to 100, grain: y}
              rail: {stock: ash, x: post.right to 300, y: 380 to 400, z: 0 to 100, grain: x}
            joints:
              - box-joint: {end: rail.left, into: post, finger: 15}
            cuts:
              - notch: {in: rail, x: 290 to 300, z: 0 to 10}
              - notch: {in: post, y: 0 to 10, z: 0 to 10}
            """,
            """
            parts:
              post: {stock: ash, x: 0 to 60, y: 0 to 400, z: 0 to 20, grain: y}
              rail: {stock: ash, x: post.right to 300, y: 340 to 400, z: 0 to 20, grain: x}
            joints:
              - half-lap: {end: rail.left, into: post, depth: 7}
            cuts:
              - notch: {in: rail, x: 290 to 300, z: 0 to 10}
              - notch: {in: post, y: 0 to 10, z: 0 to 10}
            """,
            """
            parts:
              post: {stock: ash, x: 0 to 20, y: 0 to 20, z: 0 to 200, grain: z}
              rail: {stock: ash, x: post.right to 300, y: 0 to 20, z: 0 to 20, grain: x}
            joints:
              - screws: {through: post.left, into: rail, count: 2, screw: screw}
            cuts:
              - notch: {in: rail, x: 290 to 300, z: 0 to 10}
              - notch: {in: post, y: 0 to 10, z: 190 to 200}
            """)
        .map(body -> Named.of(body.substring(body.indexOf("joints:")), Pieces.text(body)));
  }

  @ParameterizedTest
  @MethodSource({"examples", "oneSided", "randomJoints"})
  void partsStayTheSameOrBecomeMirrorImages(String text) {
    for (String way : WAYS) {
      Piece piece = piece(text, "plain: {use: it.yaml}", other(way));
      for (Part part : piece.parts()) {
        if (part.name().startsWith("plain.")) {
          Part other = piece.part(part.name().replace("plain.", "other."));
          assertEquals(part.mark(), other.mark(), () -> part.name() + " with " + way);
          assertEquals(part.solid().volumeMm3(), other.solid().volumeMm3(), 1, way);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource({"examples", "oneSided", "randomJoints"})
  void findingsStayTheSame(String text) {
    List<String> plain = findings(piece(text, "other: {use: it.yaml}"));
    for (String way : WAYS) {
      assertEquals(plain, findings(piece(text, other(way))), way);
    }
  }

  private static String other(String way) {
    return "other: {use: it.yaml, in: {x: 9000, y: 5000, z: -7}, %s}".formatted(way);
  }

  /** What is found, but for what depends on how it stands on the floor. */
  private static List<String> findings(Piece piece) {
    Diagnostics found = new Diagnostics();
    Checks.run(piece, found);
    return found.sorted().stream()
        .map(Diagnostic::code)
        .filter(code -> !code.equals("tipping-over"))
        .sorted()
        .toList();
  }

  private static Piece piece(String text, String... assemblies) {
    String body =
        "project: Placed\nunits: mm\nassemblies:\n  " + String.join("\n  ", assemblies) + "\n";
    Library library = (path, from) -> Library.Found.of(new SourceText(path, text + EXTENT));
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), List.of("fit"));
    Diagnostics diagnostics = new Diagnostics();
    Optional<Description> description =
        new DescriptionReader(words, codePoint -> true, library)
            .read(new SourceText("placed.yaml", body), diagnostics);
    return description
        .flatMap(each -> PieceBuilder.build(each, diagnostics))
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(diagnostics.sorted())));
  }
}
