package storyrod.piece.joint;

import java.util.List;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.piece.JointEffect;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/** One part set flat against another; only glue or what else joins them holds it. */
public final class Butt implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "butt",
          "One part set flat against another, nothing cut.",
          List.of(
              JointKeys.END,
              Key.required("to", new ValueType.PartName(), "The part it is set against."),
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public String into(Entry entry) {
    return entry.text("to");
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    boolean glued = meeting.entry().yes("glue", false);
    return new JointEffect(List.of(), JointKeys.plain(meeting, glued), List.of());
  }
}
