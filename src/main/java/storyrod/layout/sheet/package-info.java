/**
 * Layouts in which length and width matter, every cut right across a piece.
 *
 * <ol>
 *   <li>{@code Enlarged} makes parts and stock a kerf larger, after which there is no kerf.
 *   <li>{@code LayoutBounds} tells the least that any layout can take.
 *   <li>{@code Search} inserts the parts by many orders into trees of cuts ({@code CutTree}), then
 *       takes some out and puts them back, aiming at less, until the bound is reached or its steps
 *       are spent.
 *   <li>{@code CutSequence} turns the trees into numbered cuts in true sizes.
 * </ol>
 */
@NullMarked
package storyrod.layout.sheet;

import org.jspecify.annotations.NullMarked;
