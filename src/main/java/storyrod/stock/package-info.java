/**
 * What to saw the parts from: rough sizes, board feet, guillotine layouts on sheets, the hardware
 * to buy, and what it costs. The piece comes in; an immutable plan goes out. How parts are laid out
 * is the work of {@link storyrod.layout}.
 */
@NullMarked
package storyrod.stock;

import org.jspecify.annotations.NullMarked;
