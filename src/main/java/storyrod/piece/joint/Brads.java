package storyrod.piece.joint;

import java.util.List;
import storyrod.description.EntryType;
import storyrod.piece.JointEffect;
import storyrod.piece.Meeting;

/** Brads driven through one part into another; nothing is drilled. */
public final class Brads extends DrivenThrough {
  private static final EntryType WORDS =
      new EntryType(
          "brads",
          "Brads driven through one part into another.",
          List.of(
              THROUGH,
              JointKeys.INTO,
              JointKeys.COUNT,
              JointKeys.item("brad", "The item of hardware."),
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    return new JointEffect(List.of(), joint(meeting, "brad"), List.of());
  }
}
