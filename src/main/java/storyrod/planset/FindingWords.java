package storyrod.planset;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import storyrod.words.Words;

/**
 * Puts findings into the words of another language. Checks speak English, to the maker at the
 * keyboard; the English words hold the patterns of what they say, {@code message.CODE} and {@code
 * hint.CODE}, the other language its own under the same keys. What a pattern's places took in goes
 * over as it is, a part of a sentence by a pattern {@code phrase.CODE} or {@code phrase.any}. What
 * no pattern fits stays English.
 */
final class FindingWords {
  private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
  private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");
  private static final String AFTER_ALL = "/";
  private static final String ANY = "any";

  private final SortedMap<String, String> english = new TreeMap<>(Words.ENGLISH.byKey());
  private final Words words;

  FindingWords(Words words) {
    this.words = words;
  }

  String message(String code, String said) {
    return isEnglish() ? said : told("message.", code, said).orElse(said);
  }

  String hint(String code, String said) {
    return isEnglish() ? said : told("hint.", code, said).orElse(said);
  }

  private boolean isEnglish() {
    return words.language().equals(Words.ENGLISH.language());
  }

  /**
   * What is said by the longest of the patterns {@code CODE}, {@code CODE.2} and so on that fits.
   */
  private Optional<String> told(String kind, String code, String said) {
    String start = kind + code;
    return english.subMap(start, start + AFTER_ALL).entrySet().stream()
        .filter(each -> each.getKey().equals(start) || each.getKey().startsWith(start + "."))
        .sorted(Comparator.comparingInt(each -> -each.getValue().length()))
        .filter(each -> pattern(each.getValue()).matcher(said).matches())
        .findFirst()
        .map(each -> words.say(each.getKey(), values(each.getValue(), code, said)));
  }

  private Object[] values(String pattern, String code, String said) {
    Matcher found = pattern(pattern).matcher(said);
    List<String> places = PLACE.matcher(pattern).results().map(each -> each.group(1)).toList();
    String[] values = new String[found.matches() ? places.size() : 0];
    for (int i = 0; i < values.length; i++) {
      values[Integer.parseInt(places.get(i))] = value(code, found.group(i + 1));
    }
    return values;
  }

  /** A part of a sentence, or a value with the decimal mark of the language. */
  private String value(String code, String said) {
    return told("phrase.", code, said)
        .or(() -> told("phrase.", ANY, said))
        .orElseGet(() -> POINT.matcher(said).replaceAll(String.valueOf(words.decimalMark())));
  }

  /** An expression that takes in what stands in a pattern's places. */
  static Pattern pattern(String words) {
    return Pattern.compile(
        Arrays.stream(PLACE.split(words, -1))
            .map(Pattern::quote)
            .collect(Collectors.joining("(.+?)")));
  }
}
