/**
 * Views of the piece and its parts as one drawing model on paper, and the one painter that puts it
 * on any Graphics2D. Measures on paper are millimetres in double precision; x runs right, y runs
 * down.
 *
 * <p>Views in space are made in these steps:
 *
 * <ol>
 *   <li>{@link storyrod.drawing.View} says how points are projected.
 *   <li>The exploded view and the step pictures move parts out along the ways they went in.
 *   <li>{@link storyrod.drawing.HiddenLines} works out, exactly and as vectors, which lines and
 *       which regions of faces are seen; its own steps stand there.
 *   <li>The view is fitted to the page, outlines strong and inner edges thin, faces toned by where
 *       they look.
 *   <li>Balloons are set in columns beside it, with leaders that do not cross.
 * </ol>
 */
@NullMarked
package storyrod.drawing;

import org.jspecify.annotations.NullMarked;
