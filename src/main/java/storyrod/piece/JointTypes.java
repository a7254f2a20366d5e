package storyrod.piece;

import java.util.List;
import storyrod.description.EntryType;
import storyrod.piece.joint.Biscuits;
import storyrod.piece.joint.BoxJoint;
import storyrod.piece.joint.Brads;
import storyrod.piece.joint.Bridle;
import storyrod.piece.joint.Butt;
import storyrod.piece.joint.CrossLap;
import storyrod.piece.joint.Dado;
import storyrod.piece.joint.Dovetail;
import storyrod.piece.joint.Dowels;
import storyrod.piece.joint.FastenedTop;
import storyrod.piece.joint.Groove;
import storyrod.piece.joint.HalfLap;
import storyrod.piece.joint.LooseTenon;
import storyrod.piece.joint.Mitre;
import storyrod.piece.joint.PocketScrews;
import storyrod.piece.joint.Rabbet;
import storyrod.piece.joint.Screws;
import storyrod.piece.joint.SlidingLid;
import storyrod.piece.joint.Tenon;
import storyrod.piece.joint.Tongue;

/** All kinds of joint, in the order of their names. */
public final class JointTypes {
  public static final List<JointType> ALL =
      List.of(
          new Biscuits(),
          new BoxJoint(),
          new Brads(),
          new Bridle(),
          new Butt(),
          new CrossLap(),
          new Dado(),
          new Dovetail(),
          new Dowels(),
          new FastenedTop(),
          new Groove(),
          new HalfLap(),
          new LooseTenon(),
          new Mitre(),
          new PocketScrews(),
          new Rabbet(),
          new Screws(),
          new SlidingLid(),
          new Tenon(),
          new Tongue());

  private JointTypes() {}

  /** The words of all kinds, for the description reader. */
  public static List<EntryType> words() {
    return ALL.stream().map(JointType::words).toList();
  }

  static JointType named(String name) {
    return ALL.stream()
        .filter(type -> type.words().name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: a joint '" + name + "' was read"));
  }
}
