package storyrod.planset;

import java.util.regex.Pattern;

/**
 * What stays on one line: a number with its unit, with the decimals behind its comma, or with its
 * fraction, from–to, A × 2, and the brackets, stop or comma beside it.
 */
final class Together {
  private static final String FRACTION = "(?:\\d+ )?\\d{1,3}/\\d{1,3}(?![\\d/])";
  private static final String NUMBER = "(?:" + FRACTION + "|\\d+(?:[.,]\\d+)?)";

  static final Pattern PATTERN =
      Pattern.compile(
          "(?<![\\w/.])[(\\[]*"
              + ("(?:" + NUMBER + " (?:in|mm|h|min|lb|kg|%)(?!\\w)|" + FRACTION)
              + "|\\d+[,–]\\d+(?!\\w)|[A-Z]{1,2} × \\d+(?!\\w))[].,;:)]*");

  /** With what the units of the pattern begin. */
  private static final String UNIT_STARTS = "imhlk%";

  private static final char BOUND = '\u00A0';

  private Together() {}

  /** A text whose spaces within what stays together are no-break spaces. */
  static String bound(String text) {
    return mayBind(text)
        ? PATTERN.matcher(text).replaceAll(found -> found.group().replace(' ', BOUND))
        : text;
  }

  /** Whether any space stands as one of the pattern would; few texts have any. */
  private static boolean mayBind(String text) {
    int space = text.indexOf(' ', 1);
    while (space > 0 && space + 1 < text.length()) {
      if (mayBind(text.charAt(space - 1), text.charAt(space + 1))) {
        return true;
      }
      space = text.indexOf(' ', space + 1);
    }
    return false;
  }

  private static boolean mayBind(char before, char after) {
    return after == '×' || isDigit(before) && (isDigit(after) || UNIT_STARTS.indexOf(after) >= 0);
  }

  private static boolean isDigit(char each) {
    return each >= '0' && each <= '9';
  }

  static String unbound(String text) {
    return text.replace(BOUND, ' ');
  }
}
