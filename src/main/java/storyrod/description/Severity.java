package storyrod.description;

/** How grave a diagnostic is. */
public enum Severity {
  /** No plan set can be right. */
  ERROR,
  /** It can be built and will disappoint. */
  WARNING,
  /** Worth knowing. */
  ADVICE;

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
