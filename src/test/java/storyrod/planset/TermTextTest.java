package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class TermTextTest {
  private static final List<String> PIECES =
      List.of("rip", "Rip", "ÜBER", "über", "ß", "ſ", "s", "K", "\u212a", "-", " ", "2");

  private final Random random = new Random(3);

  private String text(int pieces) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < pieces; i++) {
      text.append(PIECES.get(random.nextInt(PIECES.size())));
    }
    return text.toString();
  }

  /** The same as an expression that knows the cases of Unicode's letters. */
  @Test
  void aFormIsFoundAsAnExpressionFindsIt() {
    int found = 0;
    for (int i = 0; i < 50_000; i++) {
      String form = text(1 + random.nextInt(2));
      String text = text(random.nextInt(12));
      boolean has = expression(form).matcher(text).find();
      assertEquals(has, TermText.of(text).has(form), form + " in " + text);
      found += has ? 1 : 0;
    }
    assertTrue(found > 1000, found + " found");
  }

  private static Pattern expression(String form) {
    return Pattern.compile(
        "(?<![\\p{L}-])" + Pattern.quote(form) + "(?![\\p{L}-])",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }
}
