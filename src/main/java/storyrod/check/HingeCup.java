package storyrod.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The holes for the cups of concealed hinges: their size, their depth, their distance to edges. */
final class HingeCup implements Check {
  private static final Length LEAST_FLOOR = Length.mm(3);
  private static final Length LEAST_EDGE = Length.mm(3);
  private static final Length MOST_EDGE = Length.mm(8);
  private static final Length GIVE = Length.mm(1);

  @Override
  public String code() {
    return "hinge-cup";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The cup of a concealed hinge has a hole of its own diameter and depth, 3 mm or"
            + " more of wood below it, and its rim 3 to 8 mm from the door's edge, or what "
            + "the hinge says within 1 mm.",
        "Common practice, from memory; the hinge's maker says what holds.",
        "It does not work out how far the door swings past its neighbour.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream()
        .flatMap(
            part ->
                part.cuts(Cut.Holes.class).stream().flatMap(holes -> findings(piece, part, holes)))
        .toList();
  }

  private Stream<Diagnostic> findings(Piece piece, Part part, Cut.Holes holes) {
    Optional<ItemEntry> hinge =
        holes
            .forWhat()
            .flatMap(piece::item)
            .filter(item -> item.kind() == ItemKind.CONCEALED_HINGE);
    return hinge.stream()
        .flatMap(
            item ->
                Stream.of(
                        bore(piece, item, holes),
                        depth(piece, part, item, holes),
                        rim(piece, part, item, holes))
                    .flatMap(Optional::stream));
  }

  private Optional<Diagnostic> bore(Piece piece, ItemEntry item, Cut.Holes holes) {
    return item.sizes()
        .cupDiameter()
        .filter(cup -> !cup.equals(holes.diameter()))
        .map(
            cup ->
                Diagnostic.error(
                        code(),
                        holes.at(),
                        "the cup of %s is %s wide, but its hole is %s"
                            .formatted(
                                item.name(), print(piece, cup), print(piece, holes.diameter())))
                    .also(item.at(), item.name() + " is defined here")
                    .hint("give the hole the diameter of the cup"));
  }

  private Optional<Diagnostic> depth(Piece piece, Part part, ItemEntry item, Cut.Holes holes) {
    Length thick = part.box().size(holes.from().axis());
    Length deep = holes.through() ? thick : holes.depth();
    boolean isShallow = item.sizes().cupDepth().filter(deep::isShorterThan).isPresent();
    if (isShallow) {
      return Optional.of(
          Diagnostic.error(
                  code(),
                  holes.at(),
                  "the cup of %s is %s deep, but its hole in %s only %s"
                      .formatted(
                          item.name(),
                          print(piece, item.sizes().cupDepth().get()),
                          part.name(),
                          print(piece, deep)))
              .hint("drill as deep as the cup"));
    }
    Length left = thick.minus(deep);
    return left.isShorterThan(LEAST_FLOOR)
        ? Optional.of(
            Diagnostic.warning(
                    code(),
                    holes.at(),
                    "a hole for %s leaves only %s of wood in %s, which is %s thick"
                        .formatted(
                            item.name(), print(piece, left), part.name(), print(piece, thick)))
                .also(part.at(), part.name() + " is defined here")
                .hint("make the door thicker, or take a hinge with a shallower cup"))
        : Optional.empty();
  }

  private Optional<Diagnostic> rim(Piece piece, Part part, ItemEntry item, Cut.Holes holes) {
    Length rim =
        holes.centres().stream()
            .map(centre -> toEdge(part, holes, centre))
            .min(Length::compareTo)
            .map(least -> least.minus(new Length(holes.diameter().ticks() / 2)))
            .orElseThrow();
    Length least = item.sizes().cupEdge().map(edge -> edge.minus(GIVE)).orElse(LEAST_EDGE);
    Length most = item.sizes().cupEdge().map(edge -> edge.plus(GIVE)).orElse(MOST_EDGE);
    if (!rim.isShorterThan(least) && !rim.isLongerThan(most)) {
      return Optional.empty();
    }
    return Optional.of(
        Diagnostic.warning(
                code(),
                holes.at(),
                "the rim of the hole for %s is %s from the edge of %s"
                    .formatted(item.name(), print(piece, rim), part.name()))
            .also(part.at(), part.name() + " is defined here")
            .hint(
                "set it %s to %s from the edge: nearer the edge breaks out, further in the door"
                        .formatted(print(piece, least.max(Length.ZERO)), print(piece, most))
                    + " does not open"));
  }

  /** From a centre to the nearest edge of the part, in the face of the holes. */
  private static Length toEdge(Part part, Cut.Holes holes, Point centre) {
    return Arrays.stream(Axis.values())
        .filter(axis -> axis != holes.from().axis())
        .flatMap(
            axis ->
                Stream.of(
                    centre.on(axis).minus(part.box().on(axis).from()),
                    part.box().on(axis).to().minus(centre.on(axis))))
        .min(Length::compareTo)
        .orElseThrow();
  }

  private static String print(Piece piece, Length length) {
    return piece.description().format().formatWithUnit(length);
  }
}
