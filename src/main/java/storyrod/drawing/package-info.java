/**
 * Views of the piece and its parts as one drawing model on paper, and the one painter that puts it on
 * any Graphics2D. Measures on paper are millimetres in double precision; x runs right, y runs down.
 */
@NullMarked
package storyrod.drawing;

import org.jspecify.annotations.NullMarked;
