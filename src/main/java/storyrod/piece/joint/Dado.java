package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Box;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.Meeting;
import storyrod.piece.TrenchRole;

/** A slot across the grain, or across a sheet, that takes the end of another part. */
public final class Dado extends Slotted {
  public Dado() {
    super(
        "dado",
        "The end of one part sits in a slot across another.",
        StoppedDado.STOP,
        StoppedDado.EDGE);
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    boolean leans = StoppedDado.isMeant(meeting.entry()) && meeting.askew().isPresent();
    return leans
        ? new JointEffect(
            List.of(),
            JointKeys.plain(meeting, meeting.entry().yes("glue", false)),
            JointKeys.squareOnly(meeting, "let the dado run through: leave `stop` out"))
        : super.effect(meeting);
  }

  @Override
  TrenchRole role(Meeting meeting) {
    return TrenchRole.HOUSING;
  }

  @Override
  String term(Meeting meeting) {
    String word = byGrain(meeting);
    return StoppedDado.isMeant(meeting.entry()) ? "stopped " + word : word;
  }

  @Override
  Box slot(Meeting meeting) {
    return stopped(meeting).map(StoppedDado::slot).orElseGet(() -> super.slot(meeting));
  }

  @Override
  List<CutIn> cutsInFirst(Meeting meeting) {
    return stopped(meeting).flatMap(StoppedDado::notch).stream().toList();
  }

  /** The dado as it stops, if it is meant to and can. */
  private static Optional<StoppedDado> stopped(Meeting meeting) {
    return Optional.of(new StoppedDado(meeting))
        .filter(each -> StoppedDado.isMeant(meeting.entry()) && each.fits());
  }

  @Override
  List<Diagnostic> placeFaults(Meeting meeting, Box slot) {
    Stream<Diagnostic> stopFaults =
        StoppedDado.isMeant(meeting.entry())
            ? new StoppedDado(meeting).faults().stream()
            : Stream.of(meeting.entry())
                .filter(entry -> entry.has("edge"))
                .map(StoppedDado::noStop);
    return Stream.concat(openSlotFaults(meeting, slot).stream(), stopFaults).toList();
  }

  static List<Diagnostic> openSlotFaults(Meeting meeting, Box slot) {
    if (!opensAtAnEdge(meeting, slot)) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "slot-at-edge",
                meeting.entry().at("end"),
                "this %s has no wood on one side: %s lies at the edge of %s"
                    .formatted(
                        meeting.entry().kind(),
                        meeting.entry().face("end"),
                        meeting.second().name()))
            .also(meeting.second().at(), meeting.second().name() + " is defined here")
            .hint("write `rabbet` if it is meant to lie at the edge, or move it inwards"));
  }
}
