package storyrod.description;

/** A value and the place in the description where it stands. */
public record Located<T>(T value, Span at) {}
