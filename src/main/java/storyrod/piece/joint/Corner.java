package storyrod.piece.joint;

import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Meeting;

/**
 * A mitred corner of two parts that are equally wide across it.
 *
 * @param outside the face of the first part at the outer corner, which is the end of the second
 */
record Corner(Meeting meeting, Face outside) {
  /** The axis on which neither part is cut. */
  Axis along() {
    return Axis.other(meeting.axis(), outside.axis());
  }

  /** How wide both parts are across the corner. */
  Length width() {
    return meeting.second().shoulder().size(meeting.axis());
  }

  /** The outer corner, at the height of some point. */
  Point outer(Point at) {
    return at.with(meeting.axis(), meeting.second().box().at(meeting.face()))
        .with(outside.axis(), meeting.first().box().at(outside));
  }

  /** The inner corner, at the height of some point. */
  Point inner(Point at) {
    return at.with(meeting.axis(), meeting.second().box().at(meeting.touched()))
        .with(outside.axis(), meeting.first().box().at(outside.opposite()));
  }
}
