package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.Piece;

/** The flat panel of a door is a sheet, which moves neither way: it has as little play in both. */
class PanelPlayTest {
  @Test
  void sheetInADoorsGroovesHasTheSamePlayAcrossAndAlong() {
    Piece piece = AllProjects.named("sideboard").piece();
    Box panel = piece.part("left-door.flat-panel").box();
    Length across =
        piece
            .part("left-door.right-stile")
            .bounds()
            .x()
            .from()
            .minus(piece.part("left-door.left-stile").bounds().x().to());
    Length along =
        piece
            .part("left-door.top-rail")
            .bounds()
            .z()
            .from()
            .minus(piece.part("left-door.bottom-rail").bounds().z().to());
    Length grooves = Length.inch(3, 4);
    assertEquals(Length.inch(1, 16), across.plus(grooves).minus(panel.size(Axis.X)));
    assertEquals(Length.inch(1, 16), along.plus(grooves).minus(panel.size(Axis.Z)));
  }
}
