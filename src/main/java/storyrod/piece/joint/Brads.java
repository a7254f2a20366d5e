package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.FaceRef;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.JointEffect;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/** Brads driven through one part into another; nothing is drilled. */
public final class Brads implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "brads",
          "Brads driven through one part into another.",
          List.of(
              Key.required(
                  "through", new ValueType.FaceName(), "The face from which they are driven."),
              JointKeys.INTO,
              JointKeys.COUNT,
              JointKeys.item("brad", "The item of hardware."),
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public FaceRef meeting(Entry entry) {
    FaceRef driven = entry.face("through");
    return new FaceRef(driven.part(), driven.face().opposite());
  }

  @Override
  public String into(Entry entry) {
    return entry.text("into");
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    Entry entry = meeting.entry();
    FaceRef through = entry.face("through");
    Joint joint =
        JointKeys.fastened(
            meeting,
            true,
            List.of(new ItemCount(entry.text("brad"), entry.count("count"))),
            Optional.of(new Joint.Driven(through.part(), through.face())));
    return new JointEffect(List.of(), joint, List.of());
  }
}
