package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.Extension;
import storyrod.piece.Haunch;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * A mortise and tenon. A blind mortise is deeper than its tenon by 1/16 in or 1.5 mm, where the
 * glue gathers; shoulders above and below are 1/4 in or 6 mm if not said (both common practice).
 */
public final class Tenon implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "tenon",
          "The end of one part, cut down to a tenon, sits in a mortise in another.",
          List.of(
              JointKeys.END,
              JointKeys.INTO,
              Key.optional(
                  "depth",
                  new ValueType.LengthValue(false),
                  "How long the tenon is; or say `through: yes`."),
              Key.optional(
                  "through",
                  new ValueType.YesNo(),
                  "Whether it goes right through; no if not said."),
              Cheeks.THICKNESS,
              Cheeks.SETBACK,
              Cheeks.FROM,
              Key.optional(
                  "shoulder",
                  new ValueType.LengthValue(true),
                  "What is cut away at both edges, 0 for none; 1/4 in or 6 mm if not said."),
              Key.optional(
                  "top-shoulder",
                  new ValueType.LengthValue(true),
                  "What is cut away at the top edge, where that differs."),
              TenonHaunch.SIDE,
              TenonHaunch.DEPTH,
              TenonHaunch.WIDTH,
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public List<Extension> extensions(Entry entry, Pair parts) {
    return List.of(new Extension(entry.face("end"), reach(entry, parts.second())));
  }

  /** How long the tenon is: as said, or the whole of what it goes through. */
  private static Length reach(Entry entry, Blank second) {
    Length whole = second.shoulder().size(entry.face("end").face().axis());
    return isThrough(entry) ? whole : entry.findLength("depth").orElse(whole);
  }

  private static boolean isThrough(Entry entry) {
    return entry.yes("through", false);
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    List<Diagnostic> faults = new ArrayList<>(Cheeks.faults(meeting));
    faults.addAll(depthFaults(meeting));
    if (faults.isEmpty()) {
      faults.addAll(haunchFaults(meeting));
    }
    if (faults.isEmpty()) {
      faults.addAll(shoulderFaults(meeting));
    }
    List<CutIn> cuts = new ArrayList<>();
    if (faults.isEmpty()) {
      Box tenon = tenon(meeting);
      Cut.Trench mortise = mortise(meeting, tenon);
      TenonHaunch haunched = new TenonHaunch(meeting);
      Optional<Haunch> haunch = haunched.beside(tenon);
      faults.addAll(outsideFaults(meeting, mortise));
      haunch.ifPresent(each -> faults.addAll(haunched.outsideFaults(each)));
      cuts.add(new CutIn(meeting.second().name(), mortise));
      haunch.ifPresent(each -> cuts.add(new CutIn(meeting.second().name(), haunched.socket(each))));
      cuts.add(new CutIn(meeting.first().name(), Cheeks.cut(meeting, tenon, haunch)));
    }
    boolean glued = meeting.entry().yes("glue", false);
    return new JointEffect(cuts, JointKeys.plain(meeting, glued), faults);
  }

  private static List<Diagnostic> haunchFaults(Meeting meeting) {
    Length reach = reach(meeting.entry(), meeting.second());
    TenonHaunch haunch = new TenonHaunch(meeting);
    int side = haunch.isAt(Face.of(width(meeting), 1)) ? 1 : -1;
    return haunch.faults(reach, plainShoulder(meeting, -side));
  }

  private static Box tenon(Meeting meeting) {
    Axis width = width(meeting);
    Range wide = meeting.first().shoulder().on(width);
    Length reach = reach(meeting.entry(), meeting.second());
    return meeting
        .contact()
        .with(meeting.axis(), meeting.contact().on(meeting.axis()).extended(sign(meeting), reach))
        .with(meeting.first().thickness(), Cheeks.across(meeting))
        .with(
            width,
            new Range(
                wide.from().plus(shoulder(meeting, -1)), wide.to().minus(shoulder(meeting, 1))));
  }

  private static int sign(Meeting meeting) {
    return meeting.face().sign();
  }

  private static Axis width(Meeting meeting) {
    return Axis.other(meeting.axis(), meeting.first().thickness());
  }

  /** How far the tenon is set in at one edge: by its haunch, if that is there. */
  private static Length shoulder(Meeting meeting, int side) {
    TenonHaunch haunch = new TenonHaunch(meeting);
    return haunch.isAt(Face.of(width(meeting), side))
        ? haunch.width(plainShoulder(meeting, -side))
        : plainShoulder(meeting, side);
  }

  private static Length plainShoulder(Meeting meeting, int side) {
    boolean isTop = Face.of(width(meeting), side) == meeting.entry().placed(Face.TOP);
    Optional<Length> top = isTop ? meeting.entry().findLength("top-shoulder") : Optional.empty();
    return top.or(() -> meeting.entry().findLength("shoulder"))
        .orElse(isInch(meeting) ? Length.inch(1, 4) : Length.mm(6));
  }

  private static boolean isInch(Meeting meeting) {
    return meeting.items().format().unit() == Unit.INCH;
  }

  private static Length glueRoom(Meeting meeting) {
    return isInch(meeting) ? Length.inch(1, 16) : Length.micrometres(1500);
  }

  private static Cut.Trench mortise(Meeting meeting, Box tenon) {
    Length room = isThrough(meeting.entry()) ? Length.ZERO : glueRoom(meeting);
    Box removed = tenon.extended(meeting.face(), room);
    return new Cut.Trench(
        "mortise",
        meeting.touched(),
        removed,
        removed.size(meeting.axis()),
        Optional.of(meeting.first().name()),
        meeting.entry().at());
  }

  private static List<Diagnostic> depthFaults(Meeting meeting) {
    Entry entry = meeting.entry();
    if (isThrough(entry) == entry.has("depth")) {
      return List.of(
          Diagnostic.error(
                  "tenon-depth",
                  entry.at("depth"),
                  isThrough(entry)
                      ? "a tenon that goes right through is as long as %s is thick, and has no depth"
                          .formatted(meeting.second().name())
                      : "this tenon has no depth")
              .hint("say either `depth` or `through: yes`"));
    }
    Length have = meeting.second().box().size(meeting.axis());
    Length room = glueRoom(meeting);
    if (isThrough(entry) || entry.length("depth").plus(room).isShorterThan(have)) {
      return List.of();
    }
    return List.of(breaksOut(meeting, have, room));
  }

  private static Diagnostic breaksOut(Meeting meeting, Length have, Length room) {
    Entry entry = meeting.entry();
    return Diagnostic.error(
            "mortise-breaks-out",
            entry.at("depth"),
            "the mortise for a tenon %s long is %s deep, but %s is only %s there"
                .formatted(
                    meeting.print(entry.length("depth")),
                    meeting.print(entry.length("depth").plus(room)),
                    meeting.second().name(),
                    meeting.print(have)))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint("make it shorter, or write `through: yes` in place of `depth`");
  }

  private static List<Diagnostic> shoulderFaults(Meeting meeting) {
    Entry entry = meeting.entry();
    if (entry.has("top-shoulder") && width(meeting) != entry.placed(Face.TOP).axis()) {
      return List.of(
          Diagnostic.error(
                  "tenon-shoulders",
                  entry.at("top-shoulder"),
                  "the edges of %s do not lie at its top and bottom"
                      .formatted(meeting.first().name()))
              .hint("leave `top-shoulder` out: `shoulder` holds for both edges"));
    }
    Length high = shoulder(meeting, 1);
    Length low = shoulder(meeting, -1);
    if (high.isNegative() || low.isNegative()) {
      return List.of(negative(meeting));
    }
    Length have = meeting.first().shoulder().size(width(meeting));
    return high.plus(low).isShorterThan(have)
        ? List.of()
        : List.of(noWidth(meeting, high.plus(low), have));
  }

  private static Diagnostic noWidth(Meeting meeting, Length shoulders, Length have) {
    Entry entry = meeting.entry();
    return Diagnostic.error(
            "tenon-shoulders",
            entry.at(entry.has("shoulder") ? "shoulder" : "top-shoulder"),
            "shoulders of %s leave no tenon: %s is %s wide"
                .formatted(meeting.print(shoulders), meeting.first().name(), meeting.print(have)))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint("give smaller shoulders, 0 for none");
  }

  private static Diagnostic negative(Meeting meeting) {
    Entry entry = meeting.entry();
    boolean isTop = entry.findLength("top-shoulder").filter(Length::isNegative).isPresent();
    return Diagnostic.error(
            "tenon-shoulders",
            entry.at(isTop ? "top-shoulder" : "shoulder"),
            "a shoulder is cut away, so it cannot be less than nothing")
        .hint("give 0 for none");
  }

  /** A mortise must lie inside the part, though it may be open at an edge. */
  private static List<Diagnostic> outsideFaults(Meeting meeting, Cut.Trench mortise) {
    List<Diagnostic> faults = new ArrayList<>();
    Box have = meeting.second().box();
    for (Face face : Face.values()) {
      Length out = mortise.removed().at(face).minus(have.at(face)).times(face.sign());
      if (face.axis() != meeting.axis() && out.isPositive()) {
        faults.add(outside(meeting, face, out));
      }
    }
    return faults;
  }

  private static Diagnostic outside(Meeting meeting, Face face, Length out) {
    return Diagnostic.error(
            "mortise-outside",
            meeting.entry().at("end"),
            "the tenon of %s reaches %s past the %s of %s"
                .formatted(
                    meeting.first().name(),
                    meeting.print(out),
                    face.word(),
                    meeting.second().name()))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint("give it a wider shoulder or another setback, or move one of the parts");
  }
}
