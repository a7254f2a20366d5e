package storyrod.description;

import java.util.Arrays;

/** Turns a count of characters, as the parser gives it, into a position in a Java string. */
final class Offsets {
  private final String text;
  private final int lead;
  private final int[] wide;

  Offsets(String text) {
    this.text = text;
    this.lead = text.startsWith("\uFEFF") ? 1 : 0;
    this.wide = wide(withoutMark());
  }

  /** The text without the mark that some editors put before it. */
  String withoutMark() {
    return text.substring(lead);
  }

  /** For each character that takes two places, its count among all characters. */
  private static int[] wide(String text) {
    int[] found = new int[text.length() - text.codePointCount(0, text.length())];
    int next = 0;
    for (int i = 0; next < found.length; i++) {
      if (Character.isSurrogatePair(text.charAt(i), text.charAt(i + 1))) {
        found[next] = i - next;
        next++;
        i++;
      }
    }
    return found;
  }

  int of(int characters) {
    int before = Arrays.binarySearch(wide, characters);
    int extra = before >= 0 ? before : -before - 1;
    return Math.min(lead + characters + extra, text.length());
  }
}
