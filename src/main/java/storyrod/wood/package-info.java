/**
 * Properties of woods and sheet goods from published tables; each row says whether its figures were
 * seen in the source or stand there from memory. An unknown wood has no properties.
 */
@NullMarked
package storyrod.wood;

import org.jspecify.annotations.NullMarked;
