/** The way in to layouts of any kind; every plan is sawn again before it is told. */
@NullMarked
package storyrod.layout.search;

import org.jspecify.annotations.NullMarked;
