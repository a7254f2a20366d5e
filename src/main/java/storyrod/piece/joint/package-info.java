/** The kinds of joint, one file each; {@link storyrod.piece.JointTypes} lists them. */
@NullMarked
package storyrod.piece.joint;

import org.jspecify.annotations.NullMarked;
