/**
 * Laying rectangles out on sheets, boards and lengths, cut by cut, with a proof where there is one.
 * It knows sizes only, nothing of furniture. Here are a job, the plan that answers it, and {@link
 * storyrod.layout.LayoutReplay}, which saws the plan again and knows nothing of how it was found;
 * {@code sheet} and {@code length} find plans, {@code search} is the way in.
 */
@NullMarked
package storyrod.layout;

import org.jspecify.annotations.NullMarked;
