package storyrod.drawing;

/** A size on paper in mm. */
public record Size(double widthMm, double heightMm) {}
