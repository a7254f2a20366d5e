/**
 * Directions, exact boxes, and solids. Exact lengths come in; solids with flat faces and round
 * bores go out, in millimetres of double precision, all in the frame of the piece: x to the right,
 * y to the back, z up.
 */
@NullMarked
package storyrod.geometry;

import org.jspecify.annotations.NullMarked;
