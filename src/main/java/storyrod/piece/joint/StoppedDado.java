package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.Meeting;

/**
 * A dado that ends short of one edge of the part it is cut in. The part that goes in is notched at
 * that corner, so that its shoulder hides the end of the dado (common practice).
 */
record StoppedDado(Meeting meeting) {
  static final Key STOP =
      Key.optional(
          "stop",
          new ValueType.LengthValue(false),
          "How far it ends short of an edge of the part that takes it, so that it does not show"
              + " there; the part that goes in is notched at that corner. 1/2 in to 3/4 in is common"
              + " practice.");
  static final Key EDGE =
      Key.optional("edge", new ValueType.FaceWord(), "The edge that it ends short of.")
          .standard("front");

  static boolean isMeant(Entry entry) {
    return entry.has("stop");
  }

  private Entry entry() {
    return meeting.entry();
  }

  private Face edge() {
    return entry().find("edge", Face.class).orElseGet(() -> entry().placed(Face.FRONT));
  }

  private Axis run() {
    return Axis.other(meeting.axis(), meeting.first().thickness());
  }

  /** Where it ends, on the axis along which it runs. */
  private Length end() {
    return meeting.second().box().at(edge()).minus(entry().length("stop").times(edge().sign()));
  }

  /** How far the part that goes in reaches past the end; less than zero if it does not. */
  private Length past() {
    return meeting.first().box().at(edge()).minus(end()).times(edge().sign());
  }

  boolean fits() {
    return edge().axis() == run()
        && !past().isNegative()
        && past().isShorterThan(meeting.first().box().size(run()));
  }

  Box slot() {
    Box through = meeting.slot(entry().length("depth"));
    return through.with(run(), cutTo(through.on(run()), edge().sign()));
  }

  /** The notch in the part that goes in; none where that ends with the dado. */
  Optional<CutIn> notch() {
    if (!past().isPositive()) {
      return Optional.empty();
    }
    Axis thickness = meeting.first().thickness();
    Box whole = meeting.first().box();
    Box removed =
        whole
            .with(meeting.axis(), slot().on(meeting.axis()))
            .with(run(), cutTo(whole.on(run()), -edge().sign()));
    Cut cut =
        new Cut.Trench(
            "notch",
            meeting.onAxis(thickness, Face.TOP, Face.FRONT, Face.RIGHT),
            removed,
            whole.size(thickness),
            Optional.empty(),
            entry().at());
    return Optional.of(new CutIn(meeting.first().name(), cut));
  }

  /** The range without what lies beyond the dado's end on one side. */
  private Range cutTo(Range whole, int side) {
    return side > 0 ? new Range(whole.from(), end()) : new Range(end(), whole.to());
  }

  List<Diagnostic> faults() {
    if (fits()) {
      return List.of();
    }
    if (edge().axis() != run()) {
      return List.of(wrongEdge());
    }
    return List.of(past().isNegative() ? shows() : holdsNothing());
  }

  private Diagnostic wrongEdge() {
    return Diagnostic.error(
            "dado-edge",
            entry().at(entry().has("edge") ? "edge" : "stop"),
            "the dado for %s runs along %s in %s, so it cannot end short of the %s"
                .formatted(
                    entry().face("end"), run().word(), meeting.second().name(), edge().word()))
        .hint(
            "write `edge: %s` or `edge: %s`"
                .formatted(Face.of(run(), -1).word(), Face.of(run(), 1).word()));
  }

  /** An edge is named, but not how far the dado ends short of it. */
  static Diagnostic noStop(Entry entry) {
    return Diagnostic.error(
            "dado-edge",
            entry.at("edge"),
            "`edge` says where a dado stops, but this one runs through")
        .hint("say how far it ends short of that edge, as in `stop: 1/2 in`, or leave `edge` out");
  }

  private Diagnostic shows() {
    Length stop = entry().length("stop");
    return Diagnostic.error(
            "dado-stop",
            entry().at("stop"),
            "the dado ends %s from the %s of %s, but %s only begins %s from it, so that %s of the"
                    .formatted(
                        meeting.print(stop),
                        edge().word(),
                        meeting.second().name(),
                        meeting.first().name(),
                        meeting.print(stop.minus(past())),
                        meeting.print(past().negated()))
                + " dado shows")
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint("make the stop %s or more".formatted(meeting.print(stop.minus(past()))));
  }

  private Diagnostic holdsNothing() {
    Length most = entry().length("stop").minus(past()).plus(meeting.first().box().size(run()));
    return Diagnostic.error(
            "dado-stop",
            entry().at("stop"),
            "a stop of %s leaves nothing of %s in the dado"
                .formatted(meeting.print(entry().length("stop")), meeting.first().name()))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint(
            "make it less than %s; 1/2 in to 3/4 in is common practice"
                .formatted(meeting.print(most)));
  }
}
