package storyrod.piece;

import storyrod.geometry.Box;
import storyrod.geometry.Pose;
import storyrod.geometry.Solid;

/**
 * How a part stands in the piece.
 *
 * @param pose how it is turned out of the frame in which it is described and made
 * @param placed its solid where it stands
 * @param bounds the least box round it there, rounded outwards; its own box if it is not turned
 */
public record Stance(Pose pose, Solid placed, Box bounds) {
  static Stance of(Pose pose, Solid solid, Box box) {
    Solid placed = solid.posed(pose);
    return new Stance(pose, placed, pose.isTurned() ? placed.bounds().orElse(box) : box);
  }
}
