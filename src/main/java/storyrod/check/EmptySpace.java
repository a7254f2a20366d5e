package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.geometry.Voids;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A closed-off space that is large enough for a drawer or a shelf. */
final class EmptySpace implements Check {
  /** What a hand is taken to need, and the least side of a space that is of use. */
  private static final Length HAND = Length.mm(60);

  private static final Length LEAST = Length.mm(75);
  private static final double LEAST_LITRES = 8;

  @Override
  public String code() {
    return "empty-space";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Looks for spaces of 75 mm (3 in) or more each way and 8 litres or more that a fist, 60"
            + " mm wide, cannot reach: a drawer, a shelf or a lid could make use of them. Doors and"
            + " lids count as open, a drawer as full, the floor as closed.",
        "Our own thresholds.",
        "It sees parts as the boxes round them, and tells one large box of each space; a wall"
            + " behind a piece without a back counts as open.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    if (piece.parts().isEmpty()) {
      return List.of();
    }
    return Voids.among(solids(piece), HAND).stream()
        .filter(EmptySpace::isOfUse)
        .map(space -> finding(piece, space))
        .toList();
  }

  private static boolean isOfUse(Box space) {
    boolean isWide = Stream.of(Axis.values()).noneMatch(a -> space.size(a).isShorterThan(LEAST));
    return isWide && space.volumeMm3() / 1e6 >= LEAST_LITRES;
  }

  /** What closes a space: the parts that stand still, drawers as blocks, the floor. */
  private static List<Box> solids(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    Set<String> drawers = hung(piece, nesting, true);
    Set<String> doors = hung(piece, nesting, false);
    List<Box> solids = new ArrayList<>();
    for (Part part : piece.parts()) {
      boolean isHung = nesting.around(part.name()).stream().anyMatch(drawers::contains);
      boolean opens = nesting.around(part.name()).stream().anyMatch(doors::contains);
      if (!isHung && !opens) {
        solids.add(part.bounds());
      }
    }
    drawers.forEach(drawer -> solids.add(around(nesting.parts(drawer))));
    solids.add(floor(around(piece.parts())));
    return solids;
  }

  /** The units that slides, or hinges, hang. */
  private static Set<String> hung(Piece piece, Nesting nesting, boolean slides) {
    return piece.description().hardware().stream()
        .filter(
            entry -> {
              var kind = piece.description().items().get(entry.item().value()).kind();
              return slides ? kind.isSlide() : kind.isHinge();
            })
        .flatMap(
            entry -> nesting.hungBy(entry.parts().stream().map(Located::value).toList()).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Box around(List<Part> parts) {
    return parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
  }

  private static Box floor(Box piece) {
    return piece.with(Axis.Z, new Range(piece.at(Face.BOTTOM).minus(HAND), piece.at(Face.BOTTOM)));
  }

  private Diagnostic finding(Piece piece, Box space) {
    return Diagnostic.advice(
            code(),
            piece.description().about().project().at(),
            "a space of %s x %s x %s (wide, deep, high) is closed off: %s from the left, %s from the front, %s above the floor"
                .formatted(
                    print(piece, space.size(Axis.X)),
                    print(piece, space.size(Axis.Y)),
                    print(piece, space.size(Axis.Z)),
                    away(piece, space, Axis.X),
                    away(piece, space, Axis.Y),
                    away(piece, space, Axis.Z)))
        .hint("a drawer, a shelf behind a door or a lid could use it")
        .hint(
            "in the description it is `x: %s`, `y: %s`, `z: %s`"
                .formatted(
                    printed(piece, space.x()),
                    printed(piece, space.y()),
                    printed(piece, space.z())));
  }

  /** How far a space begins and ends from the outside of the piece. */
  private static String away(Piece piece, Box space, Axis axis) {
    Length outside = around(piece.parts()).on(axis).from();
    Range range = space.on(axis);
    return printed(piece, new Range(range.from().minus(outside), range.to().minus(outside)));
  }

  private static String printed(Piece piece, Range range) {
    LengthFormat format = piece.description().format();
    return format.format(range.from()) + " to " + format.format(range.to());
  }

  private static String print(Piece piece, Length length) {
    return piece.description().format().formatWithUnit(length);
  }
}
