package storyrod.planset;

import java.util.regex.Pattern;

/**
 * What stays on one line: a number with its unit, with the decimals behind its comma, or with its
 * fraction, A × 2, and the bracket, stop or comma beside it.
 */
final class Together {
  private static final String FRACTION = "(?:\\d+ )?\\d{1,3}/\\d{1,3}(?![\\d/])";
  private static final String NUMBER = "(?:" + FRACTION + "|\\d+(?:[.,]\\d+)?)";

  static final Pattern PATTERN =
      Pattern.compile(
          "(?<![\\w/.])\\[?"
              + ("(?:" + NUMBER + " (?:in|mm|h|min|lb|kg|%)(?!\\w)|" + FRACTION)
              + "|\\d+,\\d+(?!\\w)|[A-Z]{1,2} × \\d+(?!\\w))[].,;:)]*");

  private static final char BOUND = '\u00A0';

  private Together() {}

  /** A text whose spaces within what stays together are no-break spaces. */
  static String bound(String text) {
    return PATTERN.matcher(text).replaceAll(found -> found.group().replace(' ', BOUND));
  }

  static String unbound(String text) {
    return text.replace(BOUND, ' ');
  }
}
