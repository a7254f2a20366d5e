/**
 * Laying rectangles out on sheets, boards and lengths, cut by cut, with a proof where there is one.
 * It knows sizes only, nothing of furniture.
 */
package storyrod.layout;
