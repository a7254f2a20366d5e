package storyrod.piece;

import java.util.List;
import java.util.Optional;
import storyrod.description.Span;
import storyrod.description.StockEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Pose;
import storyrod.geometry.Solid;
import storyrod.measure.Length;

/**
 * A part as it is made: its stock, the box it is cut to (joints included), its cuts and its solid.
 *
 * @param name the full name, such as {@code drawer.front}
 * @param title the name for a reader
 * @param mark the letter of its drawing; equal parts and handed pairs share it
 * @param mirrored whether it is the mirror image of the part that its mark's drawing shows
 * @param assembly the sub-assembly it is built into first
 * @param shoulder the box as described, before joints lengthened it
 * @param box the box it is cut to
 * @param length the axis of its length, along the grain
 * @param thickness the axis of its thickness
 * @param solid what is left of the box after the cuts, in the frame in which it is made
 * @param stance how it stands in the piece
 */
public record Part(
    String name,
    String title,
    String mark,
    boolean mirrored,
    Optional<String> assembly,
    StockEntry stock,
    Box shoulder,
    Box box,
    Axis length,
    Axis thickness,
    List<Cut> cuts,
    Solid solid,
    Stance stance,
    Optional<String> say,
    Span at) {
  public Part {
    cuts = List.copyOf(cuts);
  }

  /** A part that stands as it is described, not turned. */
  public Part(
      String name,
      String title,
      String mark,
      boolean mirrored,
      Optional<String> assembly,
      StockEntry stock,
      Box shoulder,
      Box box,
      Axis length,
      Axis thickness,
      List<Cut> cuts,
      Solid solid,
      Optional<String> say,
      Span at) {
    this(
        name,
        title,
        mark,
        mirrored,
        assembly,
        stock,
        shoulder,
        box,
        length,
        thickness,
        cuts,
        solid,
        Stance.of(Pose.NONE, solid, box),
        say,
        at);
  }

  /** Its cuts of one kind, in their order. */
  public <C extends Cut> List<C> cuts(Class<C> kind) {
    return Cut.only(kind, cuts);
  }

  /** How it is turned out of its own frame; box, cuts and solid are those before the turn. */
  public Pose pose() {
    return stance.pose();
  }

  /** The solid where it stands in the piece. */
  public Solid placed() {
    return stance.placed();
  }

  /** The box round it where it stands in the piece. */
  public Box bounds() {
    return stance.bounds();
  }

  public Axis width() {
    return Axis.other(length, thickness);
  }

  public Length finishedLength() {
    return box.size(length);
  }

  public Length finishedWidth() {
    return box.size(width());
  }

  public Length finishedThickness() {
    return box.size(thickness);
  }

  Part marked(String newMark, boolean isMirrored) {
    return new Part(
        name,
        title,
        newMark,
        isMirrored,
        assembly,
        stock,
        shoulder,
        box,
        length,
        thickness,
        cuts,
        solid,
        stance,
        say,
        at);
  }
}
