/**
 * The order of work: operations on parts and joints, the rules of the trade that put one before
 * another, an order that keeps them, and numbered steps. A maker's own order is held to the same
 * rules.
 */
@NullMarked
package storyrod.build;

import org.jspecify.annotations.NullMarked;
