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
import storyrod.piece.Cut;
import storyrod.piece.Extension;
import storyrod.piece.Joint;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * The edge of a lid, whole or thinned to a tongue, that runs in a groove of a side. The groove is
 * open at one end, through which the lid is brought in; nothing is ever glued. Room to slide is
 * 1/32 in or 0.8 mm if not said (common practice): between the edge and the bottom of the groove,
 * behind the lid, beside the shoulder of a tongue, and in all over the thickness, where the lid
 * lies on the lower wall.
 */
public final class SlidingLid implements JointType {
  /** The trade's word for the cut in the side. */
  private static final String GROOVE = "lid groove";

  private static final EntryType WORDS =
      new EntryType(
          "sliding-lid",
          "The edge of a lid runs in a groove that is open at one end; it is never glued.",
          List.of(
              JointKeys.END,
              JointKeys.INTO,
              JointKeys.DEPTH,
              Key.required(
                  "opens",
                  new ValueType.FaceWord(),
                  "The side on which the lid comes out; at the edge opposite, the groove is a stop."),
              Key.optional(
                  "room",
                  new ValueType.Allowance(),
                  "What the groove is wider than the edge in all, and what is free in its depth and"
                      + " behind the lid; 1/32 in or 0.8 mm if not said."),
              Key.optional(
                  "thickness",
                  new ValueType.LengthValue(false),
                  "How thick the edge is, if it is thinned to a tongue."),
              Cheeks.SETBACK,
              Cheeks.FROM));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public List<Extension> extensions(Entry entry, Pair parts) {
    return List.of(new Extension(entry.face("end"), entry.length("depth")));
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    List<Diagnostic> faults = new ArrayList<>(shapeFaults(meeting));
    List<CutIn> cuts = new ArrayList<>();
    if (faults.isEmpty()) {
      Length deep = meeting.entry().length("depth").plus(room(meeting));
      faults.addAll(meeting.depthFaults("depth", deep));
      Box groove = groove(meeting, deep);
      faults.addAll(Dado.openSlotFaults(meeting, groove));
      cuts.add(new CutIn(meeting.second().name(), grooveCut(meeting, groove)));
      tongue(meeting).ifPresent(cut -> cuts.add(new CutIn(meeting.first().name(), cut)));
    }
    return new JointEffect(cuts, joint(meeting), faults);
  }

  private static Joint joint(Meeting meeting) {
    return JointKeys.entering(meeting, opens(meeting).opposite(), meeting.contact());
  }

  private static Face opens(Meeting meeting) {
    return meeting.entry().expect("opens", Face.class);
  }

  private static Length room(Meeting meeting) {
    boolean isInch = meeting.items().format().unit() == Unit.INCH;
    Length usual = isInch ? Length.inch(1, 32) : Length.micrometres(800);
    return meeting.entry().findLength("room").orElse(usual);
  }

  /** The stretch of the lid's thickness that lies in the groove. */
  private static Range edge(Meeting meeting) {
    return meeting.entry().has("thickness")
        ? Cheeks.across(meeting)
        : meeting.first().shoulder().on(meeting.first().thickness());
  }

  /** The groove: open on the side where the lid comes out, closed behind it with some room. */
  private static Box groove(Meeting meeting, Length deep) {
    Axis run = Axis.other(meeting.axis(), meeting.first().thickness());
    Range whole = meeting.second().box().on(run);
    Length room = room(meeting);
    Range lid = meeting.first().box().on(run).extended(1, room).extended(-1, room);
    Range along = lid.shared(whole);
    if (opens(meeting).axis() == run) {
      along =
          opens(meeting).sign() > 0
              ? new Range(along.from(), whole.to())
              : new Range(whole.from(), along.to());
    }
    return meeting
        .contact()
        .with(
            meeting.axis(),
            meeting.contact().on(meeting.axis()).extended(meeting.face().sign(), deep))
        .with(meeting.first().thickness(), edge(meeting).extended(above(meeting), room))
        .with(run, along);
  }

  /** The side of the lid on which the groove is wider than its edge. */
  private static int above(Meeting meeting) {
    return meeting.onAxis(meeting.first().thickness(), Face.TOP, Face.BACK, Face.RIGHT).sign();
  }

  private static Cut grooveCut(Meeting meeting, Box groove) {
    return new Cut.Trench(
        GROOVE,
        meeting.touched(),
        groove,
        groove.size(meeting.axis()),
        Optional.of(meeting.first().name()),
        meeting.entry().at());
  }

  /** The thinned edge; its shoulder stays clear of the side. */
  private static Optional<Cut> tongue(Meeting meeting) {
    if (!meeting.entry().has("thickness")) {
      return Optional.empty();
    }
    Range reach =
        meeting
            .contact()
            .on(meeting.axis())
            .extended(meeting.face().sign(), meeting.entry().length("depth"))
            .extended(-meeting.face().sign(), room(meeting));
    Box end = meeting.first().box().with(meeting.axis(), reach);
    return Optional.of(
        new Cut.Tenon(
            "lid tongue",
            meeting.face(),
            end,
            end.with(meeting.first().thickness(), Cheeks.across(meeting)),
            Optional.of(meeting.second().name()),
            meeting.entry().at()));
  }

  private static List<Diagnostic> shapeFaults(Meeting meeting) {
    List<Diagnostic> faults =
        new ArrayList<>(
            JointKeys.squareOnly(meeting, "let the lid run square to the side, in its plane"));
    if (meeting.axis() == meeting.first().thickness()) {
      faults.add(Slotted.wideFace(meeting));
    } else if (opens(meeting).axis() == meeting.first().thickness()
        || opens(meeting) == meeting.face()) {
      faults.add(wrongWay(meeting));
    }
    if (meeting.entry().has("thickness")) {
      faults.addAll(Cheeks.faults(meeting));
    } else if (meeting.entry().has("from") || meeting.entry().has("setback")) {
      faults.add(noTongue(meeting.entry()));
    }
    return faults;
  }

  private static Diagnostic wrongWay(Meeting meeting) {
    Axis run = Axis.other(meeting.axis(), meeting.first().thickness());
    return Diagnostic.error(
            "lid-opens",
            meeting.entry().at("opens"),
            "a lid whose edge %s lies in %s cannot come out at the %s"
                .formatted(
                    meeting.entry().face("end"), meeting.second().name(), opens(meeting).word()))
        .hint(
            "it can run along the groove, `opens: %s` or `opens: %s`, or out of it, `opens: %s`"
                .formatted(
                    Face.of(run, -1).word(),
                    Face.of(run, 1).word(),
                    meeting.face().opposite().word()));
  }

  private static Diagnostic noTongue(Entry entry) {
    return Diagnostic.error(
            "lid-tongue",
            entry.at(entry.has("setback") ? "setback" : "from"),
            "`setback` and `from` place a tongue, but this lid has none")
        .hint("give its `thickness`, or leave them out: then the whole edge runs in the groove");
  }
}
