package storyrod.piece;

import storyrod.description.FaceRef;
import storyrod.measure.Length;

/** A part made longer at one face, so that it reaches into the part it meets. */
public record Extension(FaceRef face, Length by) {}
