/**
 * The rules of the trade that put one operation before another, one to a file, each with its
 * reason. A rule sees the piece, its operations and how the parts go together, and names what must
 * come before what.
 */
@NullMarked
package storyrod.build.rule;

import org.jspecify.annotations.NullMarked;
