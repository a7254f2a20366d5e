/**
 * What to saw the parts from: rough sizes, board feet, guillotine layouts on sheets, the hardware to
 * buy, and what it costs. The piece comes in; an immutable plan goes out.
 */
@NullMarked
package storyrod.stock;

import org.jspecify.annotations.NullMarked;
