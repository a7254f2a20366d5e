package storyrod.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Collator;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The words of one language by key, with places {@code {0}}, {@code {1}} for values. */
public record Words(String language, Map<String, String> byKey) {
  /** English, the language that is always complete. */
  public static final Words ENGLISH = load("en");

  /** The tags of the languages that come with the tool. */
  public static final List<String> LANGUAGES = List.of("de", "en");

  private static final String NAME = "name.";
  private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Pattern NUMBERED = Pattern.compile("(.+)( \\d{1,4})");

  /** {@code #8}, {@code 1 1/4 in}, {@code 0,5} or {@code 4 x 30 mm}. */
  private static final Pattern SIZES = sizes();

  private static final Pattern PLACE = Pattern.compile("\\{\\d\\}");

  /** Reads the words of a language that comes with the tool. */
  public static Words load(String language) {
    String path = "/storyrod/templates/words/" + language + ".properties";
    try (InputStream in = Words.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalArgumentException("bug: no words for language '" + language + "'");
      }
      Properties properties = new Properties();
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      Map<String, String> byKey = new TreeMap<>();
      properties.stringPropertyNames().forEach(key -> byKey.put(key, properties.getProperty(key)));
      return new Words(language, byKey);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The name of a constant as descriptions and templates write it: {@code wood-screw}. */
  public static String hyphenated(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What stands before the decimals of a number. */
  public char decimalMark() {
    return say("decimal-mark").charAt(0);
  }

  /** The order of the letters in this language: {@code Ö} stands beside {@code O}. */
  public Comparator<String> order() {
    return Collator.getInstance(Locale.forLanguageTag(language))::compare;
  }

  /** Figures with a decimal point, as this language writes them. */
  public String figures(String figures) {
    return figures.replace('.', decimalMark());
  }

  public boolean has(String key) {
    return byKey.containsKey(key);
  }

  /**
   * What a maker wrote, in this language where it has a name for it: {@code name.drawer-side} for
   * {@code Drawer side}. Sizes stay where {@code name.wood-screw-size} has a place for them, a
   * number at the end always. Else it is what the maker wrote.
   */
  public String name(String written) {
    String named = byKey.get(nameKey(written));
    if (named != null) {
      return named;
    }
    String sized = nameKey(SIZES.matcher(written).replaceAll(" size "));
    if (byKey.containsKey(sized)) {
      return say(sized, SIZES.matcher(written).results().map(this::size).toArray());
    }
    Matcher numbered = NUMBERED.matcher(written);
    return numbered.matches() ? name(numbered.group(1)) + numbered.group(2) : written;
  }

  private static Pattern sizes() {
    String figure = "#?\\d+(?:[.,]\\d+|(?: \\d+)?/\\d+)?";
    String unit = "(?: (?:mm|in)\\b)?";
    return Pattern.compile("(?<![\\p{L}\\d])" + figure + "(?: x " + figure + ")*" + unit);
  }

  private String size(MatchResult found) {
    return figures(found.group()).replace(" x ", " × ");
  }

  /** A title within a sentence: its first letter made small where the language does so. */
  public String inSentence(String title) {
    if (title.isEmpty() || !say("names-in-sentences").equals("lower-case")) {
      return title;
    }
    int first = title.offsetByCodePoints(0, 1);
    return title.substring(0, first).toLowerCase(Locale.ROOT) + title.substring(first);
  }

  /** The key for a name: small letters and figures, hyphens for all that stands between. */
  public static String nameKey(String written) {
    String[] words = NO_LETTERS.split(written.toLowerCase(Locale.ROOT).strip());
    return NAME
        + Arrays.stream(words).filter(each -> !each.isEmpty()).collect(Collectors.joining("-"));
  }

  /** The words for a key with values put in their places; a key without words is a bug. */
  public String say(String key, Object... values) {
    String words = byKey.get(key);
    if (words == null) {
      throw new IllegalStateException("bug: no words for '" + key + "' in " + language);
    }
    return PLACE
        .matcher(words)
        .replaceAll(place -> Matcher.quoteReplacement(value(place.group(), values)));
  }

  /** A value's place stays as it is where there is no value for it. */
  private static String value(String place, Object[] values) {
    int at = Integer.parseInt(place.substring(1, place.length() - 1));
    return at < values.length ? String.valueOf(values[at]) : place;
  }
}
