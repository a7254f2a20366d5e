package storyrod.description;

/** A stretch of a description, from one offset up to but not including another. */
public record Span(SourceText source, int start, int end) {
  /** The very start of a file, for faults that have no better place. */
  public static Span startOf(SourceText source) {
    return new Span(source, 0, 0);
  }

  public int line() {
    return source.lineOf(start);
  }

  public int column() {
    return source.columnOf(start);
  }

  /** The same stretch narrowed to a part of it, by offsets from its start. */
  public Span part(int from, int to) {
    return new Span(source, start + Math.min(from, end - start), start + Math.min(to, end - start));
  }

  /** The same as that of any record, the offsets first: to compare two texts takes far longer. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Span that
        && start == that.start
        && end == that.end
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return 31 * start + end;
  }

  @Override
  public String toString() {
    return source.file() + ":" + line() + ":" + column();
  }
}
