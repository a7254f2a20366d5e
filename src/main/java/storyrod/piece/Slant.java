package storyrod.piece;

import java.util.function.Function;

/**
 * A slanted cut as asked for: where its plane lies follows from the part as long as it is by then.
 *
 * @param part the full name of the part
 * @param on the cut on a blank
 */
record Slant(String part, Function<Blank, Slanted.Slope> on) {}
