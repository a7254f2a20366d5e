package storyrod.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import storyrod.build.Verb;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlanner;

/** The window bench as its description gives it, with the room that a Letter page leaves. */
final class WindowBench {
  static final Size PART_AREA = new Size(181.9, 172.8);
  static final Size LAYOUT_AREA = new Size(181.9, 95.5);
  private static final Path FILE = Path.of("projects/window-bench/project.yaml");

  private WindowBench() {}

  static Piece piece() {
    return piece(FILE);
  }

  /** The piece of another description. */
  static Piece piece(Path file) {
    Vocabulary vocabulary = new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
    Diagnostics diagnostics = new Diagnostics();
    return new DescriptionReader(vocabulary)
        .read(source(file), diagnostics)
        .flatMap(description -> PieceBuilder.build(description, diagnostics))
        .orElseThrow();
  }

  static List<SheetLayout> sheets(Piece piece) {
    return StockPlanner.plan(piece, new Diagnostics()).orElseThrow().layouts().stream()
        .flatMap(plan -> plan.sheets().stream())
        .toList();
  }

  private static SourceText source(Path file) {
    try {
      return new SourceText(file.toString(), Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
