/**
 * What to saw the parts from: rough sizes, board feet, guillotine layouts on sheets, the hardware
 * to buy, and what it costs. The piece comes in; an immutable plan goes out.
 *
 * <p>A layout is found in steps:
 *
 * <ol>
 *   <li>{@code Enlarged} makes parts and sheet a kerf larger, after which there is no kerf.
 *   <li>{@code LayoutEngine} inserts the parts by many orders and rules into trees of cuts.
 *   <li>{@code LayoutBounds} tells the fewest sheets there can be.
 *   <li>{@code RuinAndRecreate} tries to save a sheet until that bound is reached or its steps are
 *       spent, then makes the largest offcut larger.
 *   <li>{@code CutSequence} turns the trees into numbered cuts in true sizes.
 *   <li>{@link storyrod.stock.LayoutReplay} saws them again and knows of nothing above.
 * </ol>
 */
@NullMarked
package storyrod.stock;

import org.jspecify.annotations.NullMarked;
