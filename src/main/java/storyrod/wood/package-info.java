/** Properties of woods and sheet goods, from published tables; nothing is ever invented. */
@NullMarked
package storyrod.wood;

import org.jspecify.annotations.NullMarked;
