package storyrod.drawing;

import java.util.Arrays;
import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/**
 * A part turned, never mirrored, so that its length runs to the right and the face with most cuts
 * looks to the front: x along the length, z along the width, y into the wood, each from 0.
 *
 * @param shown the face of the part, in the frame of the piece, that looks to the front
 * @param up the face of the part, in the frame of the piece, that lies at the top of the paper
 * @param cuts the part's cuts in the turned frame
 */
record FlatPart(Part part, Face shown, Face up, Box box, List<Cut> cuts) {
  FlatPart {
    cuts = List.copyOf(cuts);
  }

  static FlatPart of(Part part) {
    return of(part, turn(part));
  }

  /** The same part with another face to the front, not an end. */
  static FlatPart showing(Part part, Face shown) {
    return of(part, Turn.with(part.box(), of(part).right(), shown));
  }

  private static FlatPart of(Part part, Turn turn) {
    Box box =
        new Box(
            new Range(Length.ZERO, part.finishedLength()),
            new Range(Length.ZERO, part.box().size(turn.back().axis())),
            new Range(Length.ZERO, part.box().size(turn.up().axis())));
    return new FlatPart(
        part, turn.back().opposite(), turn.up(), box, new TurnedCuts(turn).of(part.cuts()));
  }

  /** The cuts of one kind; with {@code Cut.Shaped}, the part's own outline first if it has one. */
  <C extends Cut> List<C> cuts(Class<C> kind) {
    return Cut.only(kind, cuts);
  }

  /** The same part as if it had no other cuts than these. */
  FlatPart with(List<Cut> some) {
    return new FlatPart(part, shown, up, box, some);
  }

  /** The face of the part, in the frame of the piece, that lies at the right of the paper. */
  Face right() {
    Face right = Face.of(part.length(), 1);
    return Turn.with(part.box(), right, shown).up() == up ? right : right.opposite();
  }

  /** A face of the flat part, as it is called in the frame of the piece. */
  Face original(Face flat) {
    Face positive =
        switch (flat.axis()) {
          case X -> right();
          case Y -> shown.opposite();
          case Z -> up;
        };
    return flat.sign() > 0 ? positive : positive.opposite();
  }

  /** The face of the flat part that a face in the frame of the piece is. */
  Face turned(Face original) {
    return Arrays.stream(Face.values())
        .filter(face -> original(face) == original)
        .findFirst()
        .orElseThrow();
  }

  List<Cut.Trench> trenches() {
    return cuts(Cut.Trench.class);
  }

  /** Whether it has cuts that a body of boxes does not show. */
  boolean isSlanted() {
    return cuts.stream().anyMatch(cut -> cut instanceof Slanted);
  }

  /** All boxes that are cut away. */
  List<Box> removed() {
    return cuts.stream().flatMap(cut -> cut.boxes().stream()).toList();
  }

  Length size(Axis axis) {
    return box.size(axis);
  }

  /** Whether a stretch runs over the whole of an axis. */
  boolean full(Range range, Axis axis) {
    return range.equals(box.on(axis));
  }

  private static Turn turn(Part part) {
    Face usual = part.thickness() == Axis.Y ? Face.FRONT : Face.of(part.thickness(), 1);
    boolean other = cutsFrom(part, usual.opposite()) > cutsFrom(part, usual);
    Face shown = other ? usual.opposite() : usual;
    Turn plain = Turn.with(part.box(), Face.of(part.length(), 1), shown);
    boolean headDown = plain.up() == Face.BOTTOM;
    return headDown ? Turn.with(part.box(), Face.of(part.length(), -1), shown) : plain;
  }

  /** How much there is to see on a face; through holes are seen from either. */
  private static int cutsFrom(Part part, Face face) {
    return part.cuts().stream().filter(cut -> cut.from() == face).mapToInt(FlatPart::weight).sum();
  }

  private static int weight(Cut cut) {
    return switch (cut) {
      case Cut.Trench trench -> 4;
      case Cut.Shaped shaped -> 0;
      case Cut.Roundover roundover -> roundover.edges().size();
      case Cut.Tenon tenon -> 0;
      case Comb comb -> 0;
      case Cut.Holes holes -> holes.count() * (holes.through() ? 1 : 2);
      case PocketHoles pockets -> pockets.centres().size() * 2;
      case Slanted.Slope slope -> 1;
      case Slanted.Housing housing -> 4;
      case Slots slots -> slots.count() * (slots.through() ? 1 : 3);
      case Dovetails dovetails -> 0;
      case SplineSlot slot -> 0;
      case InPlace inPlace -> 0;
    };
  }
}
