package storyrod.planset;

import java.util.List;

/** A text in which terms are looked for, whatever the case of their letters. */
final class TermText {
  private final String folded;

  private TermText(String folded) {
    this.folded = folded;
  }

  static TermText of(String text) {
    return new TermText(folded(text));
  }

  /** Whether a form of a term stands anywhere without a letter or a hyphen on either side. */
  boolean has(String form) {
    String sought = folded(form);
    int at = folded.indexOf(sought);
    while (at >= 0) {
      if (!isInWord(before(at)) && !isInWord(after(at + sought.length()))) {
        return true;
      }
      at = folded.indexOf(sought, at + 1);
    }
    return false;
  }

  /** The text with some words left out. */
  TermText without(List<String> others) {
    String left = folded;
    for (String other : others) {
      left = left.replace(folded(other), " ");
    }
    return new TermText(left);
  }

  private int before(int at) {
    return at > 0 ? folded.codePointBefore(at) : ' ';
  }

  private int after(int end) {
    return end < folded.length() ? folded.codePointAt(end) : ' ';
  }

  private static boolean isInWord(int each) {
    return each == '-' || Character.isLetter(each);
  }

  /** Letter by letter, so that both cases of each are one. */
  private static String folded(String text) {
    StringBuilder folded = new StringBuilder(text.length());
    for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
      folded.appendCodePoint(Character.toLowerCase(Character.toUpperCase(text.codePointAt(at))));
    }
    return folded.toString();
  }
}
