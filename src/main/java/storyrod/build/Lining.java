package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * A sheet, as of felt, that is cut to lie loose on a bottom between its walls.
 *
 * @param host the bottom on which it lies
 * @param across what it covers from left to right
 * @param along what it covers from front to back
 * @param thick how thick it is
 */
public record Lining(Part host, Range across, Range along, Length thick) {
  /** What is left free at each wall, so that it lies flat (common practice). */
  public static final Length FREE = Length.inch(1, 32);

  /** The one that an entry asks for; empty if its item is no sheet or has not room for it. */
  public static Optional<Lining> of(Piece piece, HardwareEntry entry) {
    return piece
        .item(entry.item().value())
        .filter(item -> item.kind() == ItemKind.OTHER && !Sticking.is(item))
        .filter(item -> entry.count() == 1 && !entry.parts().isEmpty())
        .flatMap(item -> of(piece, piece.part(entry.parts().getFirst().value()), item));
  }

  private static Optional<Lining> of(Piece piece, Part host, ItemEntry item) {
    if (item.length().isEmpty() || item.sizes().width().isEmpty() || host.pose().isTurned()) {
      return Optional.empty();
    }
    return item.sizes()
        .thickness()
        .map(
            thick ->
                new Lining(host, between(piece, host, Axis.X), between(piece, host, Axis.Y), thick))
        .filter(lining -> lining.isCutFrom(item));
  }

  private boolean isCutFrom(ItemEntry sheet) {
    Length longer = across.length().max(along.length());
    Length shorter = across.length().min(along.length());
    return !longer.isLongerThan(sheet.length().orElseThrow())
        && !shorter.isLongerThan(sheet.sizes().width().orElseThrow())
        && shorter.isPositive();
  }

  /** Between the walls that stand on both sides of the bottom's middle. */
  private static Range between(Piece piece, Part host, Axis axis) {
    Box box = host.bounds();
    List<Range> walls =
        walls(piece, host).filter(wall -> isBeside(wall, box, axis)).map(on(axis)).toList();
    Length middle = box.on(axis).middle();
    Length from =
        reduced(
                walls.stream().filter(wall -> wall.to().isShorterThan(middle)).map(Range::to),
                Length::max)
            .orElse(box.on(axis).from());
    Length to =
        reduced(
                walls.stream().filter(wall -> wall.from().isLongerThan(middle)).map(Range::from),
                Length::min)
            .orElse(box.on(axis).to());
    return new Range(from.plus(FREE), to.minus(FREE));
  }

  private static Function<Box, Range> on(Axis axis) {
    return box -> box.on(axis);
  }

  private static Optional<Length> reduced(Stream<Length> all, BinaryOperator<Length> to) {
    return all.reduce(to);
  }

  /** Whether a wall crosses the line through the bottom's middle. */
  private static boolean isBeside(Box wall, Box bottom, Axis axis) {
    Axis other = Axis.other(Axis.Z, axis);
    return wall.on(other).contains(bottom.on(other).middle());
  }

  /** What the bottom is joined to and what stands higher. */
  private static Stream<Box> walls(Piece piece, Part host) {
    Length top = host.bounds().at(Face.TOP);
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(host.name()) || joint.second().equals(host.name()))
        .flatMap(joint -> Stream.of(joint.first(), joint.second()))
        .filter(name -> !name.equals(host.name()))
        .distinct()
        .map(name -> piece.part(name).bounds())
        .filter(wall -> wall.at(Face.TOP).isLongerThan(top));
  }
}
