/** The commands: they read files, run the stages, and write files. Nothing else touches a file. */
@NullMarked
package storyrod.cli;

import org.jspecify.annotations.NullMarked;
