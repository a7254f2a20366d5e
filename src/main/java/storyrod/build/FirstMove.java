package storyrod.build;

import storyrod.geometry.Face;
import storyrod.measure.Length;

/**
 * The first of two straight moves on which a unit comes in: towards a face, until it lies beside
 * its place; the second move takes it over.
 *
 * @param enters the face it leads with
 * @param beside how far from its place it stops, which is how far the second move goes
 */
public record FirstMove(Face enters, Length beside) {}
