/**
 * Reads plain lists of parts and of stock, as CSV, into jobs to lay out. A fault of a list is told
 * with its file, line and column; lists with faults give no jobs.
 */
@NullMarked
package storyrod.cli.lists;

import org.jspecify.annotations.NullMarked;
