package storyrod.geometry;

/**
 * A round of a turned body.
 *
 * @param atMm how far along the axis, in mm
 * @param radiusMm the radius there, in mm
 */
public record Ring(double atMm, double radiusMm) {}
