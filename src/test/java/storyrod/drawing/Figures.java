package storyrod.drawing;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;

/** Reads figures as they are printed on a sheet whose lengths are all in one unit. */
record Figures(LengthFormat format) {
  private static final String ABOUT = "≈ ";
  static final String NUMBER = "(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?)";
  private static final Pattern STEPS =
      Pattern.compile(
          "(\\d+) (?:×|steps of|equal steps)(?: (" + NUMBER + ")( mm| in)?)? \\(= (.*)\\)");

  /**
   * A printed length.
   *
   * @param mm what the figures say
   * @param halfStep by how much print may have rounded it, in mm
   */
  record Figure(double mm, double halfStep) {}

  /** A printed length, perhaps with the sign that print rounds it. */
  Figure length(String text) {
    String figures = isAbout(text) ? text.substring(ABOUT.length()) : text;
    return new Figure(mm(figures, perUnit()), format.step().toMm() / 2);
  }

  /** Whether figures say that print rounds them. */
  static boolean isAbout(String text) {
    return text.startsWith(ABOUT);
  }

  /** A printed diameter, which is given in finer steps than lengths. */
  Figure bit(String text) {
    return new Figure(mm(text, perUnit()), format.forBits().step().toMm() / 2);
  }

  /** Whether a dimension is auxiliary: in brackets, since another says it (ISO 129-1). */
  static boolean isAuxiliary(String text) {
    return text.startsWith("(") && text.endsWith(")");
  }

  /** What a dimension says in all: of a chain, its total. */
  Figure total(String text) {
    Matcher chain = STEPS.matcher(text);
    if (!chain.matches()) {
      return length(isAuxiliary(text) ? text.substring(1, text.length() - 1) : text);
    }
    if (chain.group(3) == null) {
      return length(chain.group(4));
    }
    double unit = chain.group(3).equals(" mm") ? 1 : 25.4;
    double steps = Integer.parseInt(chain.group(1));
    return new Figure(steps * mm(chain.group(2), unit), format.step().toMm() / 2);
  }

  /** Into how many equal steps a dimension is divided. */
  static OptionalInt steps(String text) {
    Matcher chain = STEPS.matcher(text);
    return chain.matches() ? OptionalInt.of(Integer.parseInt(chain.group(1))) : OptionalInt.empty();
  }

  /** Degrees as printed, {@code 12.5°}. */
  static double radians(String text) {
    return Math.toRadians(Double.parseDouble(text.replace("°", "")));
  }

  private double perUnit() {
    return format.unit() == Unit.INCH ? 25.4 : 1;
  }

  private static double mm(String text, double perUnit) {
    double sum = 0;
    for (String word : text.trim().split(" ")) {
      int slash = word.indexOf('/');
      sum +=
          slash < 0
              ? Double.parseDouble(word)
              : Double.parseDouble(word.substring(0, slash))
                  / Double.parseDouble(word.substring(slash + 1));
    }
    return sum * perUnit;
  }

  /** What a pattern finds in a note; a note that does not say it is told. */
  static String found(Pattern pattern, String text, int group) {
    Matcher matcher = pattern.matcher(text);
    if (!matcher.find()) {
      throw new IllegalStateException("'" + text + "' does not say " + pattern);
    }
    return matcher.group(group);
  }
}
