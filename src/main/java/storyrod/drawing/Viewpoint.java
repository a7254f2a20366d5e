package storyrod.drawing;

import storyrod.geometry.Face;
import storyrod.words.Words;

/**
 * From where a picture is seen, and how the piece lies in it, where that is not the usual: what is
 * turned looks much like what is not.
 */
record Viewpoint(View view, Face down) {
  /** What a line below the picture says; empty where it stands and is seen from the front above. */
  String caption(Words words) {
    String key = key();
    return key.isEmpty() ? "" : words.say("step.view." + key);
  }

  private String key() {
    return switch (down) {
      case BOTTOM -> standing();
      case TOP -> "on-top";
      case FRONT -> "on-front";
      case BACK -> "on-back";
      case LEFT -> "on-left";
      case RIGHT -> "on-right";
    };
  }

  private String standing() {
    boolean isBehind = view.toViewer().getY() > 0;
    boolean isBelow = view.toViewer().getZ() < 0;
    if (isBehind && isBelow) {
      return "behind-below";
    }
    return isBehind ? "behind" : isBelow ? "below" : "";
  }
}
