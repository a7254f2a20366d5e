/**
 * Reads a project description. A YAML text comes in; an immutable {@link
 * storyrod.description.Description} goes out, in which every value knows its line and column and
 * every formula is worked out. All faults of a text are reported in one go.
 */
@NullMarked
package storyrod.description;

import org.jspecify.annotations.NullMarked;
