package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.EntryType;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.Meeting;
import storyrod.piece.ScrewHoles;

/** Screws through a clearance hole in one part into pilot holes in another. */
public final class Screws extends DrivenThrough {
  private static final EntryType WORDS =
      new EntryType(
          "screws",
          "Screws through one part into another, with clearance and pilot holes.",
          List.of(
              THROUGH,
              JointKeys.INTO,
              JointKeys.COUNT,
              JointKeys.item("screw", "The item of hardware."),
              Key.optional(
                  "countersink",
                  new ValueType.YesNo(),
                  "Whether their heads are sunk flush; yes if not said, no for pocket screws."),
              Plugs.PLUG,
              Plugs.DEPTH,
              SlottedHoles.SLOTTED,
              SlottedHoles.WASHER,
              ROWS,
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    Joint joint = joint(meeting, "screw");
    Optional<ItemEntry> screw = meeting.item("screw");
    if (screw.flatMap(ItemEntry::length).isEmpty()
        || screw.flatMap(ItemEntry::diameter).isEmpty()) {
      return new JointEffect(List.of(), joint, List.of(sizeless(meeting)));
    }
    List<Diagnostic> headFaults = new ArrayList<>(Plugs.faults(meeting, screw.get()));
    headFaults.addAll(SlottedHoles.faults(meeting));
    headFaults.addAll(SlottedHoles.washerFaults(meeting, screw.get()));
    if (!headFaults.isEmpty()) {
      return new JointEffect(List.of(), joint, headFaults);
    }
    return meeting
        .askew()
        .map(askew -> new ScrewsAskew(meeting, askew, joint, screw.get()).effect())
        .orElseGet(() -> drilled(meeting, joint, screw.get()));
  }

  private static JointEffect drilled(Meeting meeting, Joint joint, ItemEntry screw) {
    Length passed = passed(meeting, housed(meeting, meeting.touched())).minus(Plugs.depth(meeting));
    Length bite = screw.length().orElseThrow().minus(passed);
    if (!bite.isPositive()) {
      return new JointEffect(List.of(), joint, List.of(tooShort(meeting, screw, passed)));
    }
    ScrewHoles holes = ScrewHoles.forShank(screw.diameter().orElseThrow());
    List<CutIn> cuts = new ArrayList<>();
    for (Length line : lines(meeting)) {
      Cut.Holes clearance = clearance(meeting, line, holes, screw);
      SlottedHoles.of(meeting, clearance)
          .forEach(cut -> cuts.add(new CutIn(meeting.first().name(), cut)));
      Plugs.item(meeting).ifPresent(plug -> cuts.add(counterbore(meeting, line, plug)));
      cuts.add(pilot(meeting, line, holes, bite));
    }
    return new JointEffect(cuts, joint, faults(meeting, bite, screw));
  }

  /** How far the second part's end, touched at a face, sits in the first, along its own axis. */
  static Length housed(Meeting meeting, Face end) {
    Blank second = meeting.second();
    return second.box().at(end).minus(second.shoulder().at(end)).abs();
  }

  /** The wood of the first part between a screw's head and an end that is housed so deep. */
  static Length passed(Meeting meeting, Length housed) {
    return meeting.first().box().size(meeting.axis()).minus(housed);
  }

  /** Where the rows lie across the contact. */
  private static List<Length> lines(Meeting meeting) {
    Axis across = Axis.other(meeting.longerAxis(), meeting.axis());
    return meeting.spread(across, rows(meeting.entry()));
  }

  static CutIn clearance(Meeting meeting, ScrewHoles holes, ItemEntry screw) {
    Axis across = Axis.other(meeting.longerAxis(), meeting.axis());
    return new CutIn(
        meeting.first().name(),
        clearance(meeting, meeting.spread(across, 1).getFirst(), holes, screw));
  }

  private static Cut.Holes clearance(
      Meeting meeting, Length line, ScrewHoles holes, ItemEntry screw) {
    Face entered = meeting.face().opposite();
    Blank first = meeting.first();
    Cut.Holes row =
        row(
            meeting,
            line,
            "clearance hole",
            entered,
            first.box().at(entered),
            holes.clearance(),
            first.box().size(meeting.axis()),
            true);
    return isCountersunk(meeting, screw) ? row.countersunk(head(screw)) : row;
  }

  private static CutIn counterbore(Meeting meeting, Length line, ItemEntry plug) {
    Face entered = meeting.face().opposite();
    Cut.Holes row =
        row(
            meeting,
            line,
            "counterbore",
            entered,
            meeting.first().box().at(entered),
            plug.diameter().orElseThrow(),
            Plugs.depth(meeting),
            false);
    return new CutIn(meeting.first().name(), row.forItem(plug.name()));
  }

  /** A proud head would lift whatever lies on it; a pocket screw's flat underside stays on top. */
  static boolean isCountersunk(Meeting meeting, ItemEntry screw) {
    boolean isUsual =
        screw.kind() != ItemKind.POCKET_SCREW
            && Plugs.item(meeting).isEmpty()
            && !meeting.entry().has("slotted");
    return meeting.entry().yes("countersink", isUsual);
  }

  /** A flat head is about twice as wide as the shank, by the head column of the screw chart. */
  static Length head(ItemEntry screw) {
    return screw.diameter().orElseThrow().times(2);
  }

  private static CutIn pilot(Meeting meeting, Length line, ScrewHoles holes, Length bite) {
    Blank second = meeting.second();
    Length diameter = holes.pilot(second.stock());
    boolean through = !bite.isShorterThan(second.box().size(meeting.axis()));
    return new CutIn(
        second.name(),
        row(
            meeting,
            line,
            "pilot hole",
            meeting.touched(),
            second.box().at(meeting.touched()),
            diameter,
            bite.min(second.box().size(meeting.axis())),
            through));
  }

  private static Cut.Holes row(
      Meeting meeting,
      Length line,
      String term,
      Face from,
      Length surface,
      Length diameter,
      Length depth,
      boolean through) {
    Axis along = meeting.longerAxis();
    Axis across = Axis.other(along, meeting.axis());
    List<Length> spread = meeting.spread(along, meeting.entry().count("count"));
    Point first =
        Point.ORIGIN
            .with(meeting.axis(), surface)
            .with(along, spread.getFirst())
            .with(across, line);
    Length step = spread.size() < 2 ? Length.ZERO : spread.get(1).minus(spread.get(0));
    return new Cut.Holes(
        term,
        from,
        first,
        along,
        step,
        spread.size(),
        diameter,
        depth,
        through,
        Optional.of(meeting.entry().text("screw")),
        meeting.entry().at());
  }

  private static List<Diagnostic> faults(Meeting meeting, Length bite, ItemEntry screw) {
    List<Diagnostic> faults = new ArrayList<>();
    Length have = meeting.second().box().size(meeting.axis());
    if (!bite.isShorterThan(have)) {
      faults.add(
          Diagnostic.error(
                  "screw-breaks-through",
                  meeting.entry().at("screw"),
                  "%s reaches %s into %s, which is only %s thick there"
                      .formatted(
                          screw.name(),
                          meeting.print(bite),
                          meeting.second().name(),
                          meeting.print(have)))
              .also(screw.at(), screw.name() + " is defined here")
              .hint("take a screw at least " + meeting.print(bite.minus(have)) + " shorter"));
    }
    return faults;
  }

  static Diagnostic tooShort(Meeting meeting, ItemEntry screw, Length passed) {
    return Diagnostic.error(
            "screw-too-short",
            meeting.entry().at("screw"),
            "%s is %s long and does not reach through %s, which is %s thick there"
                .formatted(
                    screw.name(),
                    meeting.print(screw.length().orElseThrow()),
                    meeting.first().name(),
                    meeting.print(passed)))
        .also(screw.at(), screw.name() + " is defined here")
        .hint("take a longer screw, or drive it through the thinner part");
  }

  private static Diagnostic sizeless(Meeting meeting) {
    return Diagnostic.error(
            "item-without-size",
            meeting.entry().at("screw"),
            "%s needs a length and a diameter before its holes can be drilled"
                .formatted(meeting.entry().text("screw")))
        .hint("add `length:` and `diameter:` to the item");
  }
}
