package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A knob's screw goes in from behind, so its head is in the way of whatever slides close by. */
class SunkBehindTest {
  private static final String SUNK = "sunk in the other face for the head of its screw";

  @Test
  void theLidThatSlidesSaysThatTheHeadIsSunk() {
    assertTrue(notes("sewing-box", "T").contains(SUNK), notes("sewing-box", "T"));
  }

  /** A door has room behind it. */
  @Test
  void theDoorDoesNot() {
    String door = notes("sideboard", "AA");
    assertTrue(door.contains("for knob with screw"), door);
    assertEquals(-1, door.indexOf(SUNK));
  }

  private static String notes(String project, String mark) {
    Drawing drawing = AllProjects.named(project).drawings().parts().get(mark);
    return String.join("; ", Clean.notes(drawing));
  }
}
