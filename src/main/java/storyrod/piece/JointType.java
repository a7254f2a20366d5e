package storyrod.piece;

import java.util.List;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.FaceRef;
import storyrod.measure.Unit;

/**
 * A kind of joint: the keys it reads, what it adds to one part and cuts from the other, and what it
 * uses up. One file for each kind, one line in {@link JointTypes}.
 */
public interface JointType {
  /** Its name, its summary and its keys in the description. */
  EntryType words();

  /** The face of the first part that meets the second; {@code end} unless a kind says otherwise. */
  default FaceRef meeting(Entry entry) {
    return entry.face("end");
  }

  /** The full name of the second part; {@code into} unless a kind says otherwise. */
  default String into(Entry entry) {
    return entry.text("into");
  }

  /**
   * Whether the two parts are described right through each other, so that their meeting is the
   * space that both take; else they are described face to face.
   */
  default boolean crosses() {
    return false;
  }

  /** The two parts of a joint as described, before either is lengthened. */
  record Pair(Blank first, Blank second, Unit unit) {}

  /** What has to be lengthened before anything is cut; nothing unless a kind says so. */
  default List<Extension> extensions(Entry entry, Pair parts) {
    return List.of();
  }

  /** The cuts in both parts and the joint itself, once all parts have their full size. */
  JointEffect effect(Meeting meeting);
}
