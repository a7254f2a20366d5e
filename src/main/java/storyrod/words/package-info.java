/** The fixed words a reader sees, by key, from {@code templates/words}; a language is one file. */
@NullMarked
package storyrod.words;

import org.jspecify.annotations.NullMarked;
