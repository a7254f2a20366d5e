package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever a hand slips on, the reader answers with a description or with an error. */
class FuzzTest {
  private static final int TRIES = 120;
  private static final String ODD = "{}[]:,&*!|>'\"%@`#-?~\t\n\\ \u00e9\ud83e\ude91\u0000\ufeff";

  @Test
  void lineLeftOut() {
    Random random = new Random(1);
    for (int i = 0; i < TRIES; i++) {
      List<String> lines = new ArrayList<>(Arrays.asList(Bench.TEXT.split("\n")));
      lines.remove(random.nextInt(lines.size()));
      check(String.join("\n", lines));
    }
  }

  @Test
  void twoCharactersSwapped() {
    Random random = new Random(2);
    for (int i = 0; i < TRIES; i++) {
      StringBuilder text = new StringBuilder(Bench.TEXT);
      int at = random.nextInt(text.length() - 1);
      char first = text.charAt(at);
      text.setCharAt(at, text.charAt(at + 1));
      text.setCharAt(at + 1, first);
      check(text.toString());
    }
  }

  @Test
  void textCutOff() {
    Random random = new Random(3);
    for (int i = 0; i < TRIES; i++) {
      check(Bench.TEXT.substring(0, random.nextInt(Bench.TEXT.length())));
    }
  }

  @Test
  void oddCharactersPutIn() {
    Random random = new Random(4);
    for (int i = 0; i < TRIES; i++) {
      StringBuilder text = new StringBuilder(Bench.TEXT);
      for (int odd = 0; odd < 3; odd++) {
        text.insert(random.nextInt(text.length()), ODD.charAt(random.nextInt(ODD.length())));
      }
      check(text.toString());
    }
  }

  private static void check(String text) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<Description> description =
        new DescriptionReader(TestVocabulary.ALL)
            .read(new SourceText("project.yaml", text), diagnostics);
    assertEquals(description.isEmpty(), diagnostics.hasErrors(), text);
    String printed = DiagnosticPrinter.print(diagnostics.sorted());
    assertTrue(!printed.contains("snakeyaml") && !printed.contains("jackson"), printed);
  }
}
