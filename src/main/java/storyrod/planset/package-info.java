/**
 * The plan set: data for the templates, the templates' text laid out as PDF, and the lists as CSV
 * and JSON. Everything that was computed comes in; bytes by file name go out.
 */
@NullMarked
package storyrod.planset;

import org.jspecify.annotations.NullMarked;
