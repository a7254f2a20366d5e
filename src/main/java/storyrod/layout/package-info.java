/**
 * Laying rectangles out on sheets, boards and lengths, cut by cut, with a proof where there is one.
 * It knows sizes only, nothing of furniture. {@link storyrod.layout.Layouts} is the way in.
 *
 * <p>A layout is found in steps:
 *
 * <ol>
 *   <li>{@code Enlarged} makes parts and stock a kerf larger, after which there is no kerf.
 *   <li>{@code LayoutBounds} tells the least that any layout can take.
 *   <li>{@code Search} inserts the parts by many orders into trees of cuts ({@code CutTree}), then
 *       takes some out and puts them back, aiming at less, until the bound is reached or its steps
 *       are spent.
 *   <li>{@code CutSequence} turns the trees into numbered cuts in true sizes.
 *   <li>{@link storyrod.layout.LayoutReplay} saws them again and knows of nothing above.
 * </ol>
 */
@NullMarked
package storyrod.layout;

import org.jspecify.annotations.NullMarked;
