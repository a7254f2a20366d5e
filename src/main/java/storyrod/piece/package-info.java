/**
 * From a description to the piece: parts as solids with joints and cuts applied, marks, hardware
 * and sub-assemblies. A joint says what it adds to one part and cuts from the other; nothing later
 * asks which joint it was.
 */
@NullMarked
package storyrod.piece;

import org.jspecify.annotations.NullMarked;
