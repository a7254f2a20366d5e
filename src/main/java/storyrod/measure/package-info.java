/**
 * Exact lengths, fractions and units: what a person writes comes in, what a person reads goes out.
 * Nothing here rounds unless it is told how.
 */
@NullMarked
package storyrod.measure;

import org.jspecify.annotations.NullMarked;
