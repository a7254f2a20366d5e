package storyrod.drawing;

/** What a view of a part shows: of boxes cut from a box, or of a part with curves. */
sealed interface Shown permits Projection, SolidView {}
