package storyrod.build;

/**
 * The hours of a day in which a shop works. Times are minutes on the clock, counted from the start
 * of work on the first day; nights pass on the clock and hold no work.
 *
 * @param minutes that are worked in a day, from 1 to 24 hours
 */
public record WorkDay(int minutes) {
  private static final int CLOCK = 24 * 60;

  /** Work that goes on through the night, as in a plain network of activities. */
  public static final WorkDay ROUND_THE_CLOCK = new WorkDay(CLOCK);

  public WorkDay {
    if (minutes < 1 || minutes > CLOCK) {
      throw new IllegalArgumentException("bug: a day of " + minutes + " working minutes");
    }
  }

  public static WorkDay ofHours(int hours) {
    return new WorkDay(60 * hours);
  }

  /** The number of the day in which a time lies, from 1. */
  public int day(int time) {
    return time / CLOCK + 1;
  }

  /** How much work has been possible by a time. */
  int workable(int time) {
    return time / CLOCK * minutes + Math.min(time % CLOCK, minutes);
  }

  /** How much work is possible between two times. */
  public int workable(int from, int to) {
    return workable(to) - workable(from);
  }

  /** The start of a work that can start from a time on. */
  int start(int from, Work work) {
    if (work.minutes() == 0) {
      return from;
    }
    int at = workable(from);
    int left = minutes - at % minutes;
    return morning(isPutOff(work, left) ? at + left : at);
  }

  /** The end of a work that starts at a time. */
  int finish(int start, Work work) {
    return work.minutes() == 0 ? start : evening(workable(start) + work.minutes());
  }

  /** The last end of a work that is done by a time. */
  int lastFinish(int by, Work work) {
    if (work.minutes() == 0) {
      return by;
    }
    int at = workable(by);
    int since = (at - 1) % minutes + 1;
    return evening(isPutOff(work, since) ? at - since : at);
  }

  /** The start of a work that ends at a time. */
  int lastStart(int finish, Work work) {
    return work.minutes() == 0 ? finish : morning(workable(finish) - work.minutes());
  }

  /** Whether a work that is not left half done finds too little of a day, but room in another. */
  private boolean isPutOff(Work work, int left) {
    return minutes < CLOCK && work.whole() && work.minutes() > left && work.minutes() <= minutes;
  }

  private int morning(int workable) {
    return workable / minutes * CLOCK + workable % minutes;
  }

  /** The same, at the end of a day where {@link #morning} gives the start of the next. */
  private int evening(int workable) {
    return (workable - 1) / minutes * CLOCK + (workable - 1) % minutes + 1;
  }
}
