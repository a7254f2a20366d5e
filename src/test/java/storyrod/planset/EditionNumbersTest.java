package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.description.Description;
import storyrod.drawing.AllProjects;

/** What the foot of each page says agrees with the list of changes. */
class EditionNumbersTest {
  @TestFactory
  List<DynamicTest> everyRevisionIsAnEdition() {
    return AllProjects.each(
        sample -> {
          Description description = sample.set().piece().description();
          int revisions = description.record().revisions().size();
          if (revisions > 0) {
            assertEquals(Optional.of("" + revisions), description.about().edition());
          }
        });
  }
}
