/**
 * Checks of the piece: each one file and one line in the registry, each with its code and source.
 */
@NullMarked
package storyrod.check;

import org.jspecify.annotations.NullMarked;
