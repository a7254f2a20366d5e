package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.drawing.AllProjects;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Units;
import storyrod.words.Words;

/** What a finished piece's sizes are said to differ from the plan's. */
class DifferencesTest {
  /**
   * An inch is 25.4 mm; the nightstand is printed to half a millimetre and, converted, to 1/64 in.
   */
  @ParameterizedTest
  @CsvSource({"499.5, −0.5 [−1/64]", "501, +1 [+3/64]", "498, −2 [−5/64]"})
  void eachUnitHasTheSign(double made, String said) {
    LengthFormat own = AllProjects.named("nightstand").piece().description().printed();
    Texts both = new Texts(own.shownIn(Units.BOTH), Words.ENGLISH);
    Optional<Length> found = Optional.of(Length.nearest(made));
    assertEquals(said, new Differences(both).of(Length.mm(500), found));
  }
}
