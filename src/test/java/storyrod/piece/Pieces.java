package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import storyrod.description.Description;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;

/** Pieces from short descriptions, for tests. */
public final class Pieces {
  private Pieces() {}

  /**
   * A piece from parts, joints and cuts, in millimetres, of an 18 mm and a 6 mm sheet and of ash.
   */
  public static Piece of(String body) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<Piece> piece = build(body, diagnostics);
    assertFalse(diagnostics.hasErrors(), DiagnosticPrinter.print(diagnostics.sorted()));
    return piece.orElseThrow();
  }

  /** What is wrong with such a piece. */
  public static List<Diagnostic> faultsOf(String body) {
    Diagnostics diagnostics = new Diagnostics();
    build(body, diagnostics);
    return diagnostics.sorted();
  }

  /** The whole description of such a piece. */
  static String text(String body) {
    return HEAD + body;
  }

  private static Optional<Piece> build(String body, Diagnostics diagnostics) {
    SourceText source = new SourceText("test.yaml", text(body));
    Vocabulary vocabulary =
        new Vocabulary(JointTypes.words(), CutTypes.words(), List.of("fit", "drill"));
    Optional<Description> description = new DescriptionReader(vocabulary).read(source, diagnostics);
    return description.flatMap(each -> PieceBuilder.build(each, diagnostics));
  }

  private static final String HEAD =
      """
      project: Test piece
      units: mm
      stock:
        ply18: {kind: sheet, species: birch plywood, thickness: 18, measured: 18, sheet: 2440 x 1220, density: 680}
        ply6: {kind: sheet, species: birch plywood, thickness: 6, measured: 6, sheet: 1525 x 1525, density: 680}
        strip: {kind: sheet, species: birch plywood, thickness: 2, measured: 2, sheet: 1525 x 1525, density: 680}
        ash: {kind: solid, species: "ash, white", thickness: 20, bought-as: 25}
        odd: {kind: solid, species: moonwood, thickness: 30, bought-as: 40}
      items:
        screw: {kind: wood-screw, title: Wood screw, length: 40, diameter: 4}
        pocket: {kind: pocket-screw, title: Pocket screw, length: 30, diameter: 4}
        pin: {kind: shelf-pin, title: Shelf pin, diameter: 5}
        clip: {kind: top-fastener, title: Top fastener}
        slide: {kind: slide, title: Slide, side-clearance: 13}
        long-slide: {kind: slide, title: Slide, side-clearance: 13, length: 280}
        brad: {kind: brad, title: Brad, length: 25}
        brad-12: {kind: brad, title: Brad, length: 12}
        brad-11-9: {kind: brad, title: Brad, length: 11.9}
        brad-30-7: {kind: brad, title: Brad, length: 30.7}
        brad-30-6: {kind: brad, title: Brad, length: 30.6}
      """;
}
