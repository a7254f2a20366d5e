package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Askew;
import storyrod.piece.Cut;
import storyrod.piece.InPlace;
import storyrod.piece.InPlace.Bore;
import storyrod.piece.Joint;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.Meeting;
import storyrod.piece.ScrewHoles;

/**
 * Screws square through one part into another that stands at an angle to it: the clearance holes
 * are drilled as ever, the pilot holes through them once the parts are held together (common
 * practice).
 */
final class ScrewsAskew {
  private final Meeting meeting;
  private final Askew askew;
  private final Joint joint;
  private final ItemEntry screw;

  ScrewsAskew(Meeting meeting, Askew askew, Joint joint, ItemEntry screw) {
    this.meeting = meeting;
    this.askew = askew;
    this.joint = joint;
    this.screw = screw;
  }

  JointEffect effect() {
    if (!meeting.contact().size(meeting.axis()).isZero()) {
      return failed(slantedEnd());
    }
    Length passed = Screws.passed(meeting, housed());
    Length bite = screw.length().orElseThrow().minus(passed);
    if (!bite.isPositive()) {
      return failed(Screws.tooShort(meeting, screw, passed));
    }
    ScrewHoles holes = ScrewHoles.forShank(screw.diameter().orElseThrow());
    CutIn clearance = Screws.clearance(meeting, holes, screw);
    InPlace pilots = pilots((Cut.Holes) clearance.cut(), holes, bite);
    return breaksOut(pilots)
        ? failed(breaking(bite))
        : new JointEffect(
            List.of(clearance, new CutIn(meeting.second().name(), pilots)), joint, List.of());
  }

  private JointEffect failed(Diagnostic fault) {
    return new JointEffect(List.of(), joint, List.of(fault));
  }

  private InPlace pilots(Cut.Holes clearance, ScrewHoles holes, Length bite) {
    Length surface =
        meeting.contact().at(meeting.face()).minus(housed().times(meeting.face().sign()));
    Vector3D inwards = askew.seenBySecond(meeting.face().normal());
    List<Bore> bores = new ArrayList<>();
    for (Point centre : clearance.centres()) {
      Vector3D mouth = askew.pointInSecond(centre.with(meeting.axis(), surface).toMm());
      Vector3D end = mouth.add(inwards.multiply(bite.toMm()));
      bores.add(new Bore(Askew.nearest(mouth), Askew.nearest(end)));
    }
    return new InPlace(
        "pilot hole",
        touched(),
        bores,
        holes.pilot(meeting.second().stock()),
        bite,
        meeting.first().name(),
        Optional.of(screw.name()),
        meeting.entry().at());
  }

  private Face touched() {
    return Face.nearest(askew.intoSecond().negate());
  }

  /** How deep the second part's end sits in the first, square to where they meet. */
  private Length housed() {
    double cosine = -askew.intoSecond().dot(touched().normal());
    return Length.nearest(Screws.housed(meeting, touched()).toMm() * cosine);
  }

  private boolean breaksOut(InPlace pilots) {
    Box box = meeting.second().box();
    return pilots.bores().stream()
        .anyMatch(
            bore ->
                List.of(Axis.values()).stream()
                    .anyMatch(axis -> !box.on(axis).contains(bore.end().on(axis))));
  }

  private Diagnostic breaking(Length bite) {
    return Diagnostic.error(
            "screw-breaks-through",
            meeting.entry().at("screw"),
            "%s reaches %s into %s at an angle, and comes out of it"
                .formatted(screw.name(), meeting.print(bite), meeting.second().name()))
        .also(screw.at(), screw.name() + " is defined here")
        .hint("take a shorter screw");
  }

  private Diagnostic slantedEnd() {
    return Diagnostic.error(
            "joint-askew",
            meeting.entry().at(),
            "screws cannot be driven square through %s: it is cut at an angle where it meets %s"
                .formatted(meeting.first().name(), meeting.second().name()))
        .hint(
            "drive them through %s into %s"
                .formatted(meeting.second().name(), meeting.first().name()));
  }
}
