package storyrod.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

class WordsTest {
  private static final Words GERMAN = Words.load("de");

  @Test
  void aNameWithSizesIsNamedWhateverItsSizes() {
    assertEquals("Holzschraube #8 × 1 1/4 in", GERMAN.name("Wood screw #8 x 1 1/4 in"));
    assertEquals("Holzschraube 3,5 × 12 mm", GERMAN.name("Wood screw 3.5 x 12 mm"));
    assertEquals("Stift 5/8 in", GERMAN.name("Brad 5/8 in"));
    assertEquals("Stift 1 1/4 in, Drahtstärke 18 (gauge)", GERMAN.name("Brad 18 gauge x 1 1/4 in"));
    assertEquals(
        "Taschenlochschraube 1 1/4 in, Feingewinde",
        GERMAN.name("Pocket screw 1 1/4 in, fine thread"));
    assertEquals(
        "Stangengriff, Lochabstand 96 mm, mit Schrauben",
        GERMAN.name("Bar pull 96 mm centres, with screws"));
  }

  @Test
  void aNumberAtTheEndOfANameStays() {
    assertEquals("Fachboden 2", GERMAN.name("Shelf 2"));
  }

  @Test
  void aNameGoesBeforeThatOfItsKindWithAnySize() {
    Words words =
        new Words(
            "xx",
            Map.of("name.peg-1-in", "short", "name.peg-size", "{0} long", "decimal-mark", "."));
    assertEquals("short", words.name("Peg 1 in"));
    assertEquals("2 in long", words.name("Peg 2 in"));
    assertEquals("Rod 2 in", words.name("Rod 2 in"));
  }

  @Test
  void figuresWithinAWordAreNoSizes() {
    Words words = new Words("xx", Map.of("name.washer-msize", "wrong", "decimal-mark", "."));
    assertEquals("Washer M4", words.name("Washer M4"));
  }
}
