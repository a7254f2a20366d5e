package storyrod.layout.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class PublishedUseTest {
  private static final List<String[]> ITEMS =
      List.<String[]>of(new String[] {"", "0", "984", "100", "2", "0"});

  @Test
  void takesTheUseOfTheInstancesClass() {
    assertEquals(OptionalLong.of(200_000), PublishedUse.stock("M1b", ITEMS));
    assertEquals(OptionalLong.of(196_800), PublishedUse.stock("Path25i6b3", ITEMS));
  }

  @Test
  void knowsNothingOfOtherClasses() {
    assertEquals(OptionalLong.empty(), PublishedUse.stock("cz5_1", ITEMS));
  }
}
