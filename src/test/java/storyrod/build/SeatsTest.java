package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.Seat.How;
import storyrod.description.ItemKind;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Piece;

/** Small pieces in mm: a rail 1000 long from 0, 20 thick, 50 high, and what is joined to it. */
class SeatsTest {
  private static TestPiece rail() {
    return new TestPiece()
        .item("screw", "Screw", ItemKind.WOOD_SCREW)
        .item("clip", "Clip", ItemKind.TOP_FASTENER)
        .part("rail", "Rail", "A", "ash", 0, 1000, 0, 20, 200, 250);
  }

  private static List<Seat> seats(TestPiece draft, String moving, String... standing) {
    Piece piece = draft.piece();
    Operation fit =
        new Operation(
            Verb.FIT,
            moving,
            List.of(moving),
            List.of(),
            piece.joints().stream()
                .filter(j -> j.first().equals(moving) || j.second().equals(moving))
                .toList(),
            List.of(),
            0,
            0);
    return Seats.in(piece).of(fit, List.of(standing));
  }

  private static TestPiece with(double... fromTo) {
    return rail()
        .part("stile", "Stile", "B", "ash", fromTo)
        .fasten("pocket-screws", "stile", Face.TOP, "rail", true, "screw", 2);
  }

  @Test
  void partBetweenTheEndsIsSetFromTheNearerEnd() {
    assertEquals(
        List.of(new Seat(How.FROM, "stile", "rail", Face.RIGHT, Length.mm(260))),
        seats(with(700, 740, 0, 20, 0, 200), "stile", "rail"));
  }

  @Test
  void partEqualOnBothEndsNeedsNoWord() {
    assertEquals(List.of(), seats(with(0, 1000, 0, 20, 0, 200), "stile", "rail"));
  }

  @Test
  void partEqualOnOneEndIsFlushThere() {
    assertEquals(
        List.of(new Seat(How.FLUSH, "stile", "rail", Face.LEFT, Length.ZERO)),
        seats(with(0, 40, 0, 20, 0, 200), "stile", "rail"));
  }

  @Test
  void bothAxesOfTheFacesThatMeetCount() {
    assertEquals(
        List.of(
            new Seat(How.FLUSH, "stile", "rail", Face.LEFT, Length.ZERO),
            new Seat(How.FROM, "stile", "rail", Face.BACK, Length.mm(3))),
        seats(with(0, 40, 5, 17, 0, 200), "stile", "rail"));
  }

  @Test
  void partThatStandsOutPastTheEndSaysByHowMuch() {
    assertEquals(
        List.of(new Seat(How.PAST, "stile", "rail", Face.LEFT, Length.mm(15))),
        seats(with(-15, 25, 0, 20, 0, 200), "stile", "rail"));
  }

  @Test
  void longPartIsMarkedWithThePlaceOfWhatStands() {
    assertEquals(
        List.of(new Seat(How.FROM, "stile", "rail", Face.LEFT, Length.mm(100))),
        seats(with(100, 140, 0, 20, 0, 200), "rail", "stile"));
  }

  @Test
  void partInASlotSitsByItself() {
    TestPiece shelf =
        rail()
            .part("shelf", "Shelf", "B", "ply", 300, 318, 0, 20, 0, 200)
            .letIn("dado", "shelf", Face.TOP, "rail", 6, true);
    assertEquals(List.of(), seats(shelf, "shelf", "rail"));
  }

  @Test
  void screwsThroughTheSlotNeedNoWordEither() {
    TestPiece shelf =
        rail()
            .part("shelf", "Shelf", "B", "ply", 300, 318, 0, 15, 0, 200)
            .letIn("dado", "shelf", Face.TOP, "rail", 6, true)
            .fasten("screws", "rail", Face.BOTTOM, "shelf", false, "screw", 2);
    assertEquals(List.of(), seats(shelf, "shelf", "rail"));
  }

  @Test
  void whereAnEndIsLetInTheWallStandsForIt() {
    TestPiece piece =
        with(0, 40, 0, 20, 0, 200)
            .part("wall", "Wall", "C", "ply", -18, 0, 0, 20, 0, 400)
            .letIn("dado", "rail", Face.LEFT, "wall", 6, true);
    assertEquals(
        List.of(new Seat(How.AGAINST, "stile", "wall", Face.RIGHT, Length.ZERO)),
        seats(piece, "stile", "rail", "wall"));
    assertEquals(
        List.of(new Seat(How.FLUSH, "stile", "rail", Face.LEFT, Length.ZERO)),
        seats(piece, "stile", "rail"));
  }

  /** A top screwed to a rail between two walls: only the walls' outer faces can be seen. */
  @Test
  void boardLaidOverWallsIsSetByThem() {
    TestPiece top =
        rail()
            .part("left", "Wall", "C", "ply", -18, 0, -30, 300, 0, 250)
            .part("top", "Top", "B", "ash", -38, 1038, -50, 300, 250, 270)
            .fasten("screws", "top", Face.BOTTOM, "rail", false, "screw", 2);
    assertEquals(
        List.of(
            new Seat(How.PAST, "top", "left", Face.LEFT, Length.mm(20)),
            new Seat(How.PAST, "top", "left", Face.FRONT, Length.mm(20))),
        seats(top, "top", "rail", "left"));
    assertEquals(
        List.of(
            new Seat(How.FROM, "rail", "top", Face.LEFT, Length.mm(38)),
            new Seat(How.FROM, "rail", "top", Face.FRONT, Length.mm(50))),
        seats(top, "top", "rail"));
  }

  @Test
  void topThatIsShiftedByItsOverhangsHasNoSeat() {
    TestPiece top =
        rail()
            .part("top", "Top", "B", "ash", -20, 1020, -20, 300, 250, 270)
            .fasten("fastened-top", "top", Face.BOTTOM, "rail", false, "clip", 2);
    assertEquals(List.of(), seats(top, "top", "rail"));
  }
}
