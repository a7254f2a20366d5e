package storyrod.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every language that comes with the tool says all that English says, with the same values. */
class LanguagesTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d}");

  static List<Words> others() {
    return Words.LANGUAGES.stream()
        .filter(each -> !each.equals(Words.ENGLISH.language()))
        .map(Words::load)
        .toList();
  }

  /** Names are no fixed words: each language has those that descriptions write otherwise. */
  private static Set<String> keys(Words words) {
    return words.byKey().keySet().stream()
        .filter(key -> !key.startsWith("name."))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> places(String text) {
    return PLACE
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @MethodSource("others")
  void everyLanguageHasTheKeysOfEnglish(Words words) {
    assertEquals(keys(Words.ENGLISH), keys(words));
  }

  @ParameterizedTest
  @MethodSource("others")
  void everyLanguagePutsInTheValuesThatEnglishPutsIn(Words words) {
    Map<String, Set<String>> english = new TreeMap<>();
    Map<String, Set<String>> other = new TreeMap<>();
    for (String key : keys(Words.ENGLISH)) {
      english.put(key, places(Words.ENGLISH.byKey().get(key)));
      other.put(key, places(words.byKey().get(key)));
    }
    assertEquals(english, other);
  }

  @ParameterizedTest
  @MethodSource("others")
  void keysOfNamesAreThoseThatNamesAreLookedUpBy(Words words) {
    words.byKey().keySet().stream()
        .filter(key -> key.startsWith("name."))
        .forEach(key -> assertEquals(key, Words.nameKey(key.substring("name.".length()))));
  }

  @Test
  void aNameIsLookedUpByItsWordsAndKeepsItsNumber() {
    Words words = new Words("xx", Map.of("name.drawer-side", "Wand", "name.drawer", "Lade"));
    assertEquals("Wand", words.name("Drawer side"));
    assertEquals("Lade 3", words.name("Drawer 3"));
    assertEquals("Slab", words.name("Slab"));
  }

  @Test
  void thereIsALanguageBesideEnglish() {
    assertFalse(others().isEmpty());
  }

  /** Of a key written twice, one is read and the other is mended in vain. */
  @Test
  void noKeyIsWrittenTwice() throws IOException {
    for (String language : Words.LANGUAGES) {
      Path file = Path.of("templates/words", language + ".properties");
      Set<String> seen = new TreeSet<>();
      List<String> twice =
          Files.readAllLines(file).stream()
              .filter(line -> !line.startsWith("#") && line.contains("="))
              .map(line -> line.substring(0, line.indexOf('=')))
              .filter(key -> !seen.add(key))
              .toList();
      assertEquals(List.of(), twice, language);
    }
  }
}
