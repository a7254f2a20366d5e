package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.description.Description;
import storyrod.description.DescriptionReader;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Library;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;

/**
 * A sub-assembly with every shape that lies somewhere, as it is, turned and mirrored: its parts
 * stay the same parts, or become their mirror images. The piece is invented.
 */
class PlacedShapesTest {
  private static final String STAND =
      """
      project: Stand
      units: mm
      sizes: {width: 400, depth: 250, height: 300}
      stock:
        seat: {kind: solid, species: "ash, white", thickness: 25}
        wood: {kind: solid, species: "ash, white", thickness: 20}
      items:
        screw: {kind: wood-screw, length: 40, diameter: 4}
      parts:
        seat: {stock: seat, x: 0 to width, y: 0 to depth, z: height - seat.thickness to height, grain: x}
        leg:
          stock: wood
          x: 60 to 60 + wood.thickness
          y: 30 to 200
          z: 0 to seat.bottom
          grain: z
          turn: {about: y, by: 9, at: {x: 60, z: seat.bottom}}
          outline:
            - hollow: {edge: bottom, y: 60 to 150, rise: 20}
        rail:
          stock: wood
          x: 150 to 350
          y: 40 to 40 + wood.thickness
          z: 200 to seat.bottom
          grain: x
          outline:
            - round: {corners: [bottom-right], radius: 30}
      joints:
        - dado: {end: leg.top, into: seat, depth: 8}
        - screws: {through: seat.top, into: rail, count: 2, screw: screw}
      cuts:
        - bevel: {end: leg.bottom, level: 0}
        - bevel: {end: leg.top, level: seat.bottom}
        - mitre: {end: rail.left, by: 20, long: top}
        - taper: {end: seat.right, faces: front, from: 250, off: 30}
        - chamfer: {in: seat, edges: [left-top], size: 5}
        - slot: {in: seat, at: {x: 120, y: 120}, along: y, length: 90, width: 30}
        - notch: {in: seat, x: 0 to 40, y: 220 to depth}
        - roundover: {in: rail, edges: [front-bottom], radius: 6}
        - holes: {in: rail.front, at: {x: 200, z: 230}, along: x, step: 40, count: 3, diameter: 5, depth: 8}
      """;

  private static Piece placed(String how) {
    String body =
        """
        project: Two stands
        units: mm
        stock:
          wood: {kind: solid, species: "ash, white", thickness: 20}
        assemblies:
          plain: {use: stand.yaml}
          other: {use: stand.yaml, in: {x: 1000, y: 500, z: 100}, %s}
        """
            .formatted(how);
    Library library = (path, from) -> Library.Found.of(new SourceText(path, STAND));
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), List.of("fit"));
    Diagnostics diagnostics = new Diagnostics();
    Optional<Description> description =
        new DescriptionReader(words, codePoint -> true, library)
            .read(new SourceText("stands.yaml", body), diagnostics);
    return description
        .flatMap(each -> PieceBuilder.build(each, diagnostics))
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(diagnostics.sorted())));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "title: Moved",
        "turn: {about: z, by: 90}",
        "turn: {about: z, by: 180}",
        "turn: {about: z, by: 270}",
      })
  void turnedPartIsTheSamePart(String how) {
    for (Mark mark : placed(how).marks()) {
      assertEquals(2, mark.same(), () -> mark.title() + " with " + how);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"mirror: x", "mirror: y", "mirror: x, turn: {about: z, by: 90}"})
  void mirroredPartIsTheMirrorImage(String how) {
    Piece piece = placed(how);
    assertEquals(3, piece.marks().size(), how);
    assertEquals(1, piece.part("other.seat").mirrored() ? 1 : 0, how);
    assertTrue(piece.marks().stream().allMatch(mark -> mark.same() + mark.mirrored() == 2), how);
  }

  @ParameterizedTest
  @ValueSource(strings = {"mirror: x", "mirror: y", "turn: {about: z, by: 180}"})
  void leaningPartReachesAsFarInItsOwnFrame(String how) {
    Piece piece = placed(how);
    Box plain = piece.part("plain.leg").bounds();
    Box other = piece.part("other.leg").bounds();
    boolean swapsX = !how.equals("mirror: y");
    boolean swapsY = !how.equals("mirror: x");
    // the stand is 400 wide and 250 deep and lies at 1000, 500, 100
    assertNear(
        swapsX ? 1400 - plain.x().to().toMm() : 1000 + plain.x().from().toMm(),
        other.x().from().toMm());
    assertNear(
        swapsY ? 750 - plain.y().to().toMm() : 500 + plain.y().from().toMm(),
        other.y().from().toMm());
    assertNear(100 + plain.z().from().toMm(), other.z().from().toMm());
    assertNear(plain.size(Axis.X).toMm(), other.size(Axis.X).toMm());
  }

  private static void assertNear(double expected, double found) {
    assertEquals(expected, found, 0.001);
  }

  @Test
  void solidsHoldTheSameWood() {
    Piece piece = placed("mirror: x, turn: {about: z, by: 90}");
    for (String part : List.of("seat", "leg", "rail")) {
      double plain = piece.part("plain." + part).solid().volumeMm3();
      assertEquals(plain, piece.part("other." + part).solid().volumeMm3(), 1, part);
    }
  }
}
