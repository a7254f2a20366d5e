package storyrod.piece.joint;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.ItemEntry;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;
import storyrod.piece.PocketHoles;

/**
 * Screws driven through slanted holes in the end of one part into another.
 *
 * <p>The holes are those of the usual jig: a 3/8 in step bit at 15° to the face, its axis leaving
 * the end at the middle of the thickness (common practice).
 */
public final class PocketScrews implements JointType {
  private static final Length BIT = Length.inch(3, 8);
  private static final int ANGLE_DEGREES = 15;
  private static final EntryType WORDS =
      new EntryType(
          "pocket-screws",
          "Screws driven through slanted holes in the end of one part into another.",
          List.of(
              JointKeys.END,
              JointKeys.INTO,
              Key.required(
                  "from",
                  new ValueType.FaceWord(),
                  "The face of the part that goes in from which the holes are drilled."),
              JointKeys.COUNT,
              JointKeys.item("screw", "The item of hardware."),
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    Entry entry = meeting.entry();
    Face from = entry.expect("from", Face.class);
    Joint joint =
        JointKeys.fastened(
            meeting,
            true,
            List.of(new ItemCount(entry.text("screw"), entry.count("count"))),
            Optional.of(new Joint.Driven(meeting.first().name(), from)));
    List<Diagnostic> askew = JointKeys.squareOnly(meeting, "write `screws`, or `butt` with glue");
    if (!askew.isEmpty()) {
      return new JointEffect(List.of(), joint, askew);
    }
    if (from.axis() == meeting.axis()) {
      return new JointEffect(List.of(), joint, List.of(sameAxis(meeting, from)));
    }
    return new JointEffect(
        List.of(new CutIn(meeting.first().name(), holes(meeting, from))), joint, List.of());
  }

  private static Cut holes(Meeting meeting, Face from) {
    Axis along = Axis.other(meeting.axis(), from.axis());
    Length end = meeting.first().box().at(meeting.face());
    Length middle = meeting.first().box().on(from.axis()).middle();
    List<Point> centres =
        meeting.spread(along, meeting.entry().count("count")).stream()
            .map(
                at ->
                    Point.ORIGIN
                        .with(meeting.axis(), end)
                        .with(from.axis(), middle)
                        .with(along, at))
            .toList();
    Length shank = meeting.item("screw").flatMap(ItemEntry::diameter).orElse(Length.inch(11, 64));
    return new PocketHoles(
        "pocket hole",
        from,
        meeting.face(),
        centres,
        BIT,
        shank,
        ANGLE_DEGREES,
        Optional.of(meeting.entry().text("screw")),
        meeting.entry().at());
  }

  private static Diagnostic sameAxis(Meeting meeting, Face from) {
    return Diagnostic.error(
            "pocket-face",
            meeting.entry().at("from"),
            "pocket holes at %s cannot be drilled from its %s: that is not a face beside the end"
                .formatted(meeting.entry().face("end"), from.word().toLowerCase(Locale.ROOT)))
        .hint("name a wide face of " + meeting.first().name() + ", such as its back");
  }
}
