package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
import storyrod.piece.Blank;
import storyrod.piece.Comb;
import storyrod.piece.Extension;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * The corner of two equally wide boards, cut to fingers that lie between each other. They are
 * counted from the low edge; what no whole finger fills is left for the last.
 */
public final class BoxJoint implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "box-joint",
          "Fingers at the corner of two boards lie between each other.",
          List.of(
              JointKeys.END,
              JointKeys.INTO,
              Key.optional(
                  "finger",
                  new ValueType.LengthValue(false),
                  "How wide each finger is; or say `fingers`."),
              Key.optional(
                  "fingers",
                  new ValueType.Count(3),
                  "How many equal fingers there are, those of both boards counted."),
              Key.optional(
                      "starts",
                      new ValueType.Choice(List.of("end", "into")),
                      "Which board has the finger at the bottom edge, or the front or the left.")
                  .standard("end"),
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
        new ArrayList<>(JointKeys.squareOnly(meeting, "join them with screws or a butt joint"));
    if (faults.isEmpty()) {
      faults.addAll(cornerFaults(meeting));
    }
    List<CutIn> cuts = new ArrayList<>();
    if (faults.isEmpty()) {
      faults.addAll(fingerFaults(meeting));
      cuts.addAll(faults.isEmpty() ? cuts(meeting) : List.of());
    }
    return new JointEffect(
        cuts, JointKeys.entering(meeting, meeting.face(), meeting.contact()), faults);
  }

  private static Axis along(Meeting meeting) {
    return Axis.other(meeting.axis(), meeting.first().thickness());
  }

  /**
   * The end of the second part that makes the corner: its face that the first part is flush with.
   */
  private static Optional<Face> corner(Meeting meeting) {
    Axis across = meeting.first().thickness();
    return Stream.of(Face.of(across, -1), Face.of(across, 1))
        .filter(
            face ->
                meeting.first().shoulder().at(face).equals(meeting.second().shoulder().at(face)))
        .findFirst();
  }

  private static Length finger(Meeting meeting) {
    Entry entry = meeting.entry();
    Length whole = meeting.contact().size(along(meeting));
    return entry
        .findLength("finger")
        .orElseGet(() -> whole.dividedBy(entry.count("fingers"), RoundingMode.HALF_EVEN));
  }

  /** From where to where each finger reaches, those of both boards in turn. */
  private static List<Range> fingers(Meeting meeting) {
    Range whole = meeting.contact().on(along(meeting));
    Optional<Integer> count = meeting.entry().find("fingers", Integer.class);
    Length finger = finger(meeting);
    int number =
        count.orElseGet(
            () -> (int) Math.ceilDiv(whole.length().ticks(), Math.max(1, finger.ticks())));
    Face low = meeting.onAxis(along(meeting), Face.BOTTOM, Face.FRONT, Face.LEFT);
    List<Length> ends =
        IntStream.rangeClosed(0, number)
            .mapToObj(
                i ->
                    count.isPresent()
                        ? whole.length().times(i).dividedBy(number, RoundingMode.HALF_EVEN)
                        : finger.times(i).min(whole.length()))
            .map(off -> whole.end(low.sign()).minus(off.times(low.sign())))
            .toList();
    return IntStream.range(0, number)
        .mapToObj(
            i -> new Range(ends.get(i).min(ends.get(i + 1)), ends.get(i).max(ends.get(i + 1))))
        .toList();
  }

  private static List<CutIn> cuts(Meeting meeting) {
    List<Range> all = fingers(meeting);
    int firstOwn = meeting.entry().find("starts", String.class).orElse("end").equals("end") ? 0 : 1;
    Face corner = corner(meeting).orElseThrow();
    Range deep = meeting.first().shoulder().on(corner.axis());
    return List.of(
        comb(
            meeting,
            meeting.first(),
            meeting.face(),
            JointKeys.place(meeting),
            every(all, 1 - firstOwn)),
        comb(
            meeting,
            meeting.second(),
            corner,
            meeting.second().box().with(corner.axis(), deep),
            every(all, firstOwn)));
  }

  private static List<Range> every(List<Range> all, int from) {
    return IntStream.range(0, all.size()).filter(i -> i % 2 == from).mapToObj(all::get).toList();
  }

  private static CutIn comb(Meeting meeting, Blank part, Face from, Box end, List<Range> sockets) {
    Blank other = part == meeting.first() ? meeting.second() : meeting.first();
    return new CutIn(
        part.name(),
        new Comb(
            "box joint",
            from,
            end,
            along(meeting),
            sockets,
            finger(meeting),
            Optional.of(other.name()),
            meeting.entry().at()));
  }

  private static List<Diagnostic> cornerFaults(Meeting meeting) {
    if (meeting.axis() == meeting.first().thickness()) {
      return List.of(Slotted.wideFace(meeting));
    }
    if (meeting.second().thickness() != meeting.axis() || corner(meeting).isEmpty()) {
      return List.of(noCorner(meeting));
    }
    Axis along = along(meeting);
    Range own = meeting.first().shoulder().on(along);
    Range its = meeting.second().shoulder().on(along);
    return own.equals(its) ? List.of() : List.of(unequal(meeting, own, its));
  }

  private static Diagnostic noCorner(Meeting meeting) {
    return Diagnostic.error(
            "box-joint-corner",
            meeting.entry().at("end"),
            "%s and %s do not make a corner: a box joint needs %s flush with an end of %s"
                .formatted(
                    meeting.first().name(),
                    meeting.second().name(),
                    meeting.first().name(),
                    meeting.second().name()))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint("move it to the end, or join it with a dado");
  }

  private static Diagnostic unequal(Meeting meeting, Range own, Range its) {
    return Diagnostic.error(
            "box-joint-widths",
            meeting.entry().at("end"),
            "%s runs from %s to %s on %s, but %s from %s to %s: fingers need boards of one width"
                .formatted(
                    meeting.first().name(),
                    meeting.print(own.from()),
                    meeting.print(own.to()),
                    along(meeting).word(),
                    meeting.second().name(),
                    meeting.print(its.from()),
                    meeting.print(its.to())))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint("make both equally wide");
  }

  private static List<Diagnostic> fingerFaults(Meeting meeting) {
    Entry entry = meeting.entry();
    if (entry.has("finger") == entry.has("fingers")) {
      return List.of(
          Diagnostic.error(
                  "box-joint-fingers",
                  entry.at("fingers"),
                  entry.has("finger")
                      ? "this box joint has both a width and a number of fingers"
                      : "this box joint has neither a width nor a number of fingers")
              .hint("say either `finger`, its width, or `fingers`, how many"));
    }
    Length whole = meeting.contact().size(along(meeting));
    if (finger(meeting).times(2).isShorterThan(whole)) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "box-joint-fingers",
                entry.at("finger"),
                "fingers %s wide are fewer than three, and nothing holds: both boards are %s wide"
                    .formatted(meeting.print(finger(meeting)), meeting.print(whole)))
            .hint("about as wide as the boards are thick is common practice"));
  }
}
