package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import freemarker.template.TemplateModelException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.words.Words;

class SaidTest {
  private static final Said SAID =
      new Said(new Texts(new LengthFormat(Unit.MM, 32), Words.ENGLISH));

  @Test
  void valuesGoIntoTheirPlaces() throws TemplateModelException {
    assertEquals("grit 180", SAID.exec(List.of("finish.grit", 180)));
  }

  @Test
  void aValueThatIsMissingIsAFaultAndNotANull() {
    List<Object> arguments = Arrays.asList("finish.grit", null);
    String told =
        assertThrows(TemplateModelException.class, () -> SAID.exec(arguments)).getMessage();
    assertTrue(told.contains("finish.grit"), told);
  }
}
