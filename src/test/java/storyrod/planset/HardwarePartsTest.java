package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** A list names every part that a screw, a catch or a fastener goes into. */
class HardwarePartsTest {
  private static final Map<String, byte[]> FILES =
      new PlanSetWriter(Words.ENGLISH).write(AllProjects.named("sideboard"));

  private static String line(String file, String words) {
    List<String> found =
        new String(FILES.get(file), StandardCharsets.UTF_8)
            .lines()
            .filter(line -> line.contains(words))
            .toList();
    assertEquals(1, found.size(), found::toString);
    return found.getFirst();
  }

  @Test
  void catchesAreOnTheDoorsAndOnWhatStandsBesideThem() {
    assertTrue(line("hardware.csv", "Magnetic catch").contains(",\"K, AA\","));
    assertTrue(line("steps.csv", "Mount the catches").contains(",AA K,"));
  }

  /** The top comes new, and its fasteners sit in the stretchers that stand. */
  @Test
  void stepsNameWhatStandsAlreadyAndTakesTheirScrews() {
    assertTrue(line("steps.csv", "Fasten the top,").contains(",A D,"));
    assertTrue(line("steps.csv", "Screw the cleats to the bottom").contains(",AG C,"));
    assertTrue(line("steps.csv", "Screw the stretchers to").contains(",D B F,"));
  }
}
