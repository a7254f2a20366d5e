package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.check.WoodMovement.Free;
import storyrod.check.WoodMovement.Grooves;
import storyrod.check.WoodMovement.Held;
import storyrod.check.WoodMovement.Moving;
import storyrod.drawing.AllProjects;
import storyrod.piece.Piece;

/** How the wood of whole pieces moves, against published figures. */
class WoodMovementTest {
  /** White ash, tangential, for each per cent of moisture: Wood Handbook, table 13-5. */
  private static final double WHITE_ASH = 0.00274;

  private static Piece piece(String project) {
    return AllProjects.named(project).piece();
  }

  private static Moving named(Piece piece, String title) {
    return new WoodMovement(piece)
        .parts().stream()
            .filter(each -> piece.mark(each.part().mark()).title().equals(title))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void aTopMovesAsTheHandbookSays() {
    Piece bench = piece("window-bench");
    Moving top = named(bench, "Top");
    WoodMovement wood = new WoodMovement(bench);
    double width = top.part().finishedWidth().toMm();
    double expected = width * WHITE_ASH * (wood.dampMoisture() - wood.dryMoisture());
    assertEquals(expected, top.swells() + top.shrinks(), expected * 0.01);
  }

  /** The widest board of each is its top. */
  @Test
  void aTopOnTopFastenersIsNeitherHeldNorLeftAlone() {
    for (String project : List.of("window-bench", "dining-table")) {
      WoodMovement.Room room = new WoodMovement(piece(project)).parts().getFirst().room();
      assertFalse(room instanceof Held || room instanceof Free, project + " " + room);
    }
  }

  /** Its mortises are blind and glued: they are no slots in which it could move. */
  @Test
  void aStretcherOnLooseTenonsIsNotFastenedInSlots() {
    WoodMovement.Room room = named(piece("sewing-box"), "Long stretcher").room();
    assertFalse(room instanceof WoodMovement.Slotted, room.toString());
    WoodMovement.Room slab = named(piece("dining-table"), "Slab").room();
    assertTrue(slab instanceof WoodMovement.Slotted, slab.toString());
  }

  /** The check of panels finds nothing to say here, so each panel has the room that it needs. */
  @Test
  void panelsInGroovesHaveRoomToSwell() {
    int panels = 0;
    for (AllProjects.Sample sample : AllProjects.all()) {
      for (Moving each : new WoodMovement(sample.set().piece()).parts()) {
        if (each.room() instanceof Grooves grooves) {
          panels++;
          assertTrue(grooves.mm() >= each.swells(), sample.name() + " " + each.part().name());
        }
      }
    }
    assertTrue(panels > 0, "no project has a solid panel in grooves");
  }

  /**
   * None of them is a finding, so each bends less than would pass; with time half as much again.
   */
  @Test
  void loadsOfTheProjectsBendLessThanWouldPass() {
    List<Sag> all =
        AllProjects.all().stream()
            .flatMap(sample -> new WoodMovement(sample.set().piece()).loads().stream())
            .toList();
    assertFalse(all.isEmpty());
    for (Sag sag : all) {
      assertTrue(sag.bends() > 0 && sag.bends() <= sag.limit(), sag.shelf().name());
      assertEquals(1.5 * sag.bends(), sag.inTime(), 1e-9);
    }
  }

  /** The tops that come with the tool bear what stands on them, and the table of loads tells it. */
  @Test
  void usedTopsHaveALoad() {
    List<Sag> loads =
        Stream.of("dining-table", "nightstand")
            .flatMap(name -> new WoodMovement(piece(name)).loads().stream())
            .toList();
    assertEquals(100, pounds(loads, "top.slab", "Slab"), 1e-6);
    assertEquals(20, pounds(loads, "top.slab", "Top") * 0.45359, 1e-6);
  }

  /** Its legs end in slots of its underside, 11 in apart from middle to middle. */
  @Test
  void aStepOnLegsSpansFromLegToLeg() {
    Sag step = new WoodMovement(piece("step-stool")).loads().getFirst();
    assertEquals("step", step.shelf().name());
    assertTrue(step.span() > 10 * 25.4 && step.span() < 12.5 * 25.4, step.toString());
  }

  private static double pounds(List<Sag> loads, String part, String title) {
    return loads.stream()
            .filter(sag -> sag.shelf().name().equals(part) && sag.shelf().title().equals(title))
            .findFirst()
            .orElseThrow()
            .load()
            .value()
            .toDouble()
        / 0.45359237;
  }

  /** Feet are glued to the bottom and screwed to cleats: that is not nothing. */
  @Test
  void whatIsGluedIsNotSaidToBeHeldByNothing() {
    WoodMovement.Room foot = named(piece("sideboard"), "Foot").room();
    assertTrue(foot instanceof WoodMovement.Joined, foot.toString());
    for (String project : List.of("sideboard", "sewing-box", "nightstand")) {
      Piece piece = piece(project);
      new WoodMovement(piece)
          .parts().stream()
              .filter(each -> each.room() instanceof Free)
              .forEach(
                  each ->
                      assertFalse(CrossGrain.isRigidlyJoined(piece, each.part()), each.toString()));
    }
  }
}
