package storyrod.planset;

import storyrod.words.Words;

/** Times in words. */
record Durations(Words words) {
  /** Short, for a table: {@code 45 min}, {@code 1 h 20 min}; nothing for no time. */
  String brief(int minutes) {
    int hours = minutes / 60;
    int rest = minutes % 60;
    if (minutes == 0) {
      return "";
    }
    if (hours == 0) {
      return words.say("time.minutes", rest);
    }
    return rest == 0
        ? words.say("time.hours", hours)
        : words.say("time.hours-minutes", hours, rest);
  }

  /** For a sentence: {@code one hour}, {@code 24 hours}; nothing for no time. */
  String spoken(int minutes) {
    if (minutes == 0) {
      return "";
    }
    if (minutes == 60) {
      return words.say("time.one-hour");
    }
    return minutes % 60 == 0
        ? words.say("time.say-hours", minutes / 60)
        : words.say("time.say-minutes", minutes);
  }
}
