package storyrod.build;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Along which housings a part can still slide, because they run on past it; where both parts are
 * notched for each other, as in a cross lap, neither slides.
 */
record OpenHousings(Piece piece) {
  /** The part of a joint that is let into the other, if it can slide, with the way it slides. */
  record Sliding(Part housed, Part into, List<Axis> axes) {}

  Optional<Sliding> of(Joint joint) {
    Part first = piece.part(joint.first());
    Part second = piece.part(joint.second());
    boolean isSet =
        joint.slides()
            || first.pose().isTurned()
            || second.pose().isTurned()
            || slots(first, second).findAny().isPresent();
    return Optional.of(axes(joint, first, second))
        .filter(axes -> !isSet && !axes.isEmpty())
        .map(axes -> new Sliding(first, second, axes));
  }

  private List<Axis> axes(Joint joint, Part housed, Part into) {
    return Arrays.stream(Axis.values())
        .filter(axis -> axis != joint.firstFace().axis() && axis != joint.entry().axis())
        .filter(axis -> slots(into, housed).anyMatch(slot -> isOpen(slot, housed, into, axis)))
        .filter(axis -> !isHeld(housed, axis))
        .toList();
  }

  private static Stream<Cut.Trench> slots(Part into, Part housed) {
    return into.cuts(Cut.Trench.class).stream()
        .filter(slot -> slot.takesIn() && slot.isFor(housed.name()));
  }

  /** Whether a slot opens at an end of its part and runs on past what lies in it. */
  private static boolean isOpen(Cut.Trench slot, Part housed, Part into, Axis axis) {
    Range cut = slot.removed().on(axis);
    Range own = housed.box().on(axis);
    Range whole = into.box().on(axis);
    boolean stopsLow = isPast(cut.from(), whole.from()) && !isPast(own.from(), cut.from());
    boolean stopsHigh = isPast(whole.to(), cut.to()) && !isPast(cut.to(), own.to());
    return !stopsLow && !stopsHigh;
  }

  private static boolean isPast(Length far, Length near) {
    return far.isLongerThan(near);
  }

  /** Whether an end or edge of the part is let into something that way. */
  private boolean isHeld(Part housed, Axis axis) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(housed.name()))
        .filter(joint -> joint.firstFace().axis() == axis)
        .anyMatch(joint -> slots(piece.part(joint.second()), housed).findAny().isPresent());
  }
}
