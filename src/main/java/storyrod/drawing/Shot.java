package storyrod.drawing;

import java.util.List;

/** A step from one viewpoint. */
record Shot(View view, Scene scene, Picture picture, Picture.Notes notes, Sight sight) {
  Shot with(Picture full) {
    return new Shot(view, scene, full, notes, sight);
  }

  double score() {
    return sight.score();
  }

  Fitted fitted(int strong, List<String> marked) {
    return new Fitted(scene, picture.parts(), strong, view, marked);
  }
}
