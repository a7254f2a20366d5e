package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.piece.Blank;
import storyrod.piece.Extension;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;
import storyrod.piece.Slanted;

/**
 * Two parts that meet at a corner, both ends cut at 45°: a frame's over its width, a case's over
 * its thickness. As with other joints, the second part is described as running to the outer corner
 * and the first as ending where it meets the second; the joint lengthens it to the outer corner.
 */
public final class Mitre implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "mitre",
          "Two parts meet at a corner, both cut at 45°, with or without a spline across the joint.",
          List.of(
              JointKeys.END,
              Key.required(
                  "into",
                  new ValueType.PartName(),
                  "The part that it meets, described as running to the outer corner."),
              Key.optional(
                  "spline",
                  new ValueType.ItemName(),
                  "The spline that lies in a slot of both parts; their slots are cuts."),
              Key.optional(
                  "thickness", new ValueType.LengthValue(false), "How thick the spline is."),
              Key.optional(
                  "depth",
                  new ValueType.LengthValue(false),
                  "How deep its slot is in each part, square to the mitre."),
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public List<Extension> extensions(Entry entry, Pair parts) {
    return List.of(JointKeys.rightAcross(entry, parts.second()));
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    List<Diagnostic> faults =
        new ArrayList<>(
            JointKeys.squareOnly(meeting, "cut its ends with `bevel` or `mitre` under `cuts`"));
    if (faults.isEmpty()) {
      faults.addAll(endFaults(meeting));
    }
    List<CutIn> cuts = new ArrayList<>();
    if (faults.isEmpty()) {
      Corner corner = new Corner(meeting, outside(meeting).orElseThrow());
      SplineSlots splines = new SplineSlots(corner);
      faults.addAll(splines.faults());
      cuts.addAll(faults.isEmpty() ? slopes(corner) : List.of());
      cuts.addAll(faults.isEmpty() ? splines.cuts() : List.of());
    }
    return new JointEffect(cuts, joint(meeting), faults);
  }

  private static Joint joint(Meeting meeting) {
    List<ItemCount> spline =
        meeting.entry().find("spline", String.class).stream()
            .map(item -> new ItemCount(item, 1))
            .toList();
    boolean glued = meeting.entry().yes("glue", false);
    return JointKeys.fastened(meeting, glued, spline, Optional.empty());
  }

  /** The axis on which the first part is measured across the corner. */
  private static Axis across(Meeting meeting) {
    return meeting.second().thickness() == meeting.axis()
        ? meeting.first().thickness()
        : meeting.second().length();
  }

  /** The face of the first part at the outer corner, with which the end of the second is flush. */
  private static Optional<Face> outside(Meeting meeting) {
    Axis across = across(meeting);
    return Stream.of(Face.of(across, -1), Face.of(across, 1))
        .filter(face -> meeting.first().box().at(face).equals(meeting.second().box().at(face)))
        .findFirst();
  }

  private static List<CutIn> slopes(Corner corner) {
    Meeting meeting = corner.meeting();
    return List.of(
        new CutIn(meeting.first().name(), slope(corner, meeting.first(), meeting.face())),
        new CutIn(meeting.second().name(), slope(corner, meeting.second(), corner.outside())));
  }

  /** Each part is cut from its end, from the outer corner to the inner. */
  private static Slanted.Slope slope(Corner corner, Blank part, Face end) {
    Meeting meeting = corner.meeting();
    Face shortSide = part == meeting.first() ? corner.outside().opposite() : meeting.touched();
    Axis along = corner.along();
    Point low = Point.ORIGIN.with(along, part.box().on(along).from());
    return new Slanted.Slope(
        shortSide.axis() == part.thickness() ? "bevel" : "mitre",
        end,
        shortSide,
        corner.outer(low),
        corner.inner(low),
        meeting.entry().at());
  }

  private static List<Diagnostic> endFaults(Meeting meeting) {
    Axis across = across(meeting);
    if (meeting.first().thickness() == meeting.axis() || across == meeting.axis()) {
      return List.of(notAnEnd(meeting));
    }
    if (outside(meeting).isEmpty()) {
      return List.of(noCorner(meeting, across));
    }
    return meeting
            .first()
            .shoulder()
            .size(across)
            .equals(meeting.second().shoulder().size(meeting.axis()))
        ? List.of()
        : List.of(unequal(meeting, across));
  }

  private static Diagnostic notAnEnd(Meeting meeting) {
    return Diagnostic.error(
            "mitre-end",
            meeting.entry().at("end"),
            "%s meets %s, and the two make no corner with an end of each"
                .formatted(meeting.entry().face("end"), meeting.second().name()))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint("name an end that meets the inner edge or face of the other part beside its own end");
  }

  private static Diagnostic noCorner(Meeting meeting, Axis across) {
    return Diagnostic.error(
            "mitre-corner",
            meeting.entry().at("into"),
            "%s lies at no end of %s: it runs from %s = %s to %s, %s from %s to %s"
                .formatted(
                    meeting.first().name(),
                    meeting.second().name(),
                    across.word(),
                    meeting.print(meeting.first().box().on(across).from()),
                    meeting.print(meeting.first().box().on(across).to()),
                    meeting.second().name(),
                    meeting.print(meeting.second().box().on(across).from()),
                    meeting.print(meeting.second().box().on(across).to())))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint(
            "let `into` name the part that runs to the outer corner, flush with the outer edge of"
                + " the other, which ends at its inner edge");
  }

  private static Diagnostic unequal(Meeting meeting, Axis across) {
    return Diagnostic.error(
            "mitre-unequal",
            meeting.entry().at("end"),
            "%s is %s wide across the corner and %s %s, so a mitre of 45° does not meet"
                .formatted(
                    meeting.first().name(),
                    meeting.print(meeting.first().shoulder().size(across)),
                    meeting.second().name(),
                    meeting.print(meeting.second().shoulder().size(meeting.axis()))))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint("make them equal there, or cut the two ends with `mitre` or `bevel` under `cuts`");
  }
}
