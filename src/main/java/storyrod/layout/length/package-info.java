/**
 * Layouts in which only lengths matter: boards sawn by length, dowels, edging, mouldings.
 *
 * <ol>
 *   <li>{@link Bars} writes the job in whole numbers without kerf: every part, and every clear span
 *       of stock, is longer by a kerf.
 *   <li>{@link SizeBounds} and {@link Generation} prove how little stock can do.
 *   <li>{@link Greedy}, {@link Dive}, {@link Joining} and {@link ExactSearch} look for a layout
 *       that takes as little.
 *   <li>{@link Offcuts} then makes the largest piece left over as long as it can be, and {@link
 *       SawOrder} brings equal lengths together.
 *   <li>{@link Sawing} turns patterns into numbered cuts.
 * </ol>
 *
 * <p>Floating point only guides the search. Whatever is told as proved rests on whole numbers.
 */
package storyrod.layout.length;
