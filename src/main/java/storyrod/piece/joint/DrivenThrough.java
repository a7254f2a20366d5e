package storyrod.piece.joint;

import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Entry;
import storyrod.description.FaceRef;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/** A joint whose fasteners go in at one face of the first part and leave it at the other. */
abstract class DrivenThrough implements JointType {
  static final Key THROUGH =
      Key.required("through", new ValueType.FaceName(), "The face from which they are driven.");

  static final Key ROWS =
      Key.optional("rows", new ValueType.Count(1), "How many rows of `count` each.").standard("1");

  @Override
  public FaceRef meeting(Entry entry) {
    FaceRef driven = entry.face("through");
    return new FaceRef(driven.part(), driven.face().opposite());
  }

  /** The joint with all its fasteners, which the description names under a key. */
  static Joint joint(Meeting meeting, String itemKey) {
    Entry entry = meeting.entry();
    FaceRef through = entry.face("through");
    return JointKeys.fastened(
        meeting,
        true,
        Stream.of(
                Optional.of(entry.text(itemKey)),
                entry.find("plug", String.class),
                SlottedHoles.washer(meeting))
            .flatMap(Optional::stream)
            .map(item -> new ItemCount(item, entry.count("count") * rows(entry)))
            .toList(),
        Optional.of(new Joint.Driven(through.part(), through.face())));
  }

  static int rows(Entry entry) {
    return entry.has("rows") ? entry.count("rows") : 1;
  }
}
