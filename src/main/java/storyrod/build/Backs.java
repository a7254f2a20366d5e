package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Finds backs that are fastened on from outside: thin upright parts without glue, with screws or
 * brads through their outer face into three parts or more, that close the whole space between them.
 * One that lies in grooves is none of them.
 */
final class Backs {
  /** A back of this thickness and less is no wall that carries (our own limit). */
  private static final Length THIN = Length.mm(13);

  private static final int FEWEST = 3;

  /** How much of each of its extents lies between its outermost fastenings. */
  private static final double WHOLE = 0.9;

  private Backs() {}

  static Set<String> of(Piece piece) {
    Set<String> backs = new TreeSet<>();
    piece.parts().stream()
        .filter(part -> part.thickness() != Axis.Z && !part.pose().isTurned())
        .filter(part -> !part.finishedThickness().isLongerThan(THIN))
        .filter(part -> isFastenedOn(part, joints(piece, part)))
        .map(Part::name)
        .forEach(backs::add);
    return backs;
  }

  /**
   * Those that are taken off again and screwed on last: screws alone hold them, there is a finish
   * or hardware to wait for, and nothing hangs on one line of glue until they are on.
   */
  static Set<String> removable(Piece piece) {
    boolean hasWork =
        piece.description().finish().isPresent() || !piece.description().hardware().isEmpty();
    Set<String> backs = hasWork ? of(piece) : new TreeSet<>();
    backs.removeIf(back -> !isScrewed(piece, back) || stiffens(piece, back));
    return backs;
  }

  private static boolean isScrewed(Piece piece, String back) {
    return joints(piece, piece.part(back)).stream()
        .flatMap(joint -> joint.fasteners().stream())
        .map(each -> piece.kind(each.item()))
        .allMatch(kind -> kind == ItemKind.WOOD_SCREW || kind == ItemKind.WASHER);
  }

  /** Whether something becomes firm with the back alone, if that comes after all other parts. */
  private static boolean stiffens(Piece piece, String back) {
    List<Part> parts = new ArrayList<>(piece.parts());
    parts.removeIf(part -> part.name().equals(back));
    parts.add(piece.part(back));
    List<WeakUnits.Fitted> order = new ArrayList<>();
    Set<String> there = new TreeSet<>();
    for (Part part : parts) {
      List<Joint> closes =
          joints(piece, part).stream().filter(each -> there.contains(other(each, part))).toList();
      order.add(new WeakUnits.Fitted(List.of(part.name()), closes));
      there.add(part.name());
    }
    return new WeakUnits(piece).in(order).stream().anyMatch(w -> w.until() == order.size() - 1);
  }

  private static List<Joint> joints(Piece piece, Part part) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part.name()) || joint.second().equals(part.name()))
        .toList();
  }

  private static boolean isFastenedOn(Part part, List<Joint> joints) {
    List<Joint> driven = joints.stream().filter(joint -> isDrivenFrom(part, joint)).toList();
    return joints.stream().noneMatch(Joint::glued)
        && joints.stream().allMatch(joint -> joint.entry().axis() == part.thickness())
        && driven.stream().map(joint -> other(joint, part)).distinct().count() >= FEWEST
        && isClosed(part, driven.stream().map(Joint::contact).reduce(Box::around).orElseThrow());
  }

  private static boolean isDrivenFrom(Part part, Joint joint) {
    return joint
        .driven()
        .filter(driven -> driven.part().equals(part.name()))
        .filter(driven -> driven.face().axis() == part.thickness())
        .isPresent();
  }

  private static String other(Joint joint, Part part) {
    return joint.first().equals(part.name()) ? joint.second() : joint.first();
  }

  private static boolean isClosed(Part part, Box held) {
    return List.of(part.length(), part.width()).stream()
        .allMatch(axis -> held.size(axis).toMm() >= WHOLE * part.bounds().size(axis).toMm());
  }
}
