package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.Planner;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/** The planner leaves the lines of screws clear where some order does. */
class DriverOrderTest {
  private static final String FRAME =
      Shell.read(Path.of("src/test/resources/messages/driver-order.yaml"));

  private static long blocked(String text) {
    Diagnostics found = new Diagnostics();
    Piece piece =
        PieceBuilder.build(
                Pipeline.reader().read(new SourceText("frame.yaml", text), found).orElseThrow(),
                found)
            .orElseThrow();
    Planner.plan(piece, found).orElseThrow();
    return found.sorted().stream().map(Diagnostic::code).filter("driver-blocked"::equals).count();
  }

  @Test
  void whatStandsBeforeScrewsComesAfterThemUnlessTheMakerSaysElse() {
    String free = FRAME.substring(0, FRAME.indexOf("build:"));
    assertEquals(List.of(1L, 0L), List.of(blocked(FRAME), blocked(free)));
  }
}
