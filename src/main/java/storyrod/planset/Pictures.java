package storyrod.planset;

import java.util.Map;
import storyrod.drawing.Drawing;

/** What the pages show beside text, by the names that they use for it. */
record Pictures(Map<String, Drawing> drawings, Map<String, Photo> photos) {}
