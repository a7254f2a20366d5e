package storyrod.build;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is done in an operation; the words are those of a maker's own order. */
public enum Verb {
  /** Choose the boards or the sheet for a part. */
  CHOOSE,
  /** Flatten and thickness boards for a part; a sheet comes ready. */
  MILL,
  /** Cut the blank of a board that the saw takes apart with what the rips will take. */
  BLANK,
  /** Cut out of a board the pieces that become other parts. */
  KEEP,
  /** Glue together again what is left of a board that the saw took apart. */
  REJOIN,
  /** Cut a part to its finished length and width, from its board or straight from its sheet. */
  SIZE,
  /** Mark a part: its letter, its face and edge, its place in a pair. */
  MARK,
  /** Cut a part's dados, grooves, rabbets, notches and cutouts. */
  CUT,
  /** Drill a part's holes and pocket holes. */
  DRILL,
  /** Sand a part's faces that cannot be reached later. */
  SAND,
  /** Put a sub-assembly or the piece together without glue, and take it apart again. */
  DRY_FIT,
  /** Finish a part's faces that no brush reaches later, or that move into sight. */
  PRE_FINISH,
  /** Put a part or a sub-assembly in its place, with glue or without, and fasten it. */
  FIT,
  /** Shape a part's edges that run on across a joint, when that is closed. */
  TRIM,
  /** Fit on trial what hangs doors and drawers, and take it off for the finish. */
  TRIAL_FIT,
  /** Fit hardware that no joint brings, or put it back. */
  MOUNT,
  /** Try the finish on an offcut. */
  TEST,
  /** Put on the finish. */
  FINISH;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Verb::word).toList();
  }

  public static Optional<Verb> named(String word) {
    return Arrays.stream(values()).filter(verb -> verb.word().equals(word)).findFirst();
  }
}
