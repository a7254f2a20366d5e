package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.HardwareEntry;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What carries the catch of a door: the part beside the door that its line of the list names, or
 * else what stands in the case beside an edge on which the door does not hang (common practice,
 * memory).
 */
record CatchPosts(Piece piece, Nesting nesting) {
  /** What stands further off takes no catch. */
  private static final Length NEAR = Length.mm(15);

  CatchPosts(Piece piece) {
    this(piece, Nesting.of(piece));
  }

  /** Of each door that an entry serves the part that has a post, or the first. */
  List<Part> doors(HardwareEntry entry) {
    return served(entry)
        .flatMap(part -> unit(part).stream())
        .distinct()
        .flatMap(unit -> door(entry, unit).stream())
        .toList();
  }

  private Optional<Part> door(HardwareEntry entry, String unit) {
    return served(entry)
        .filter(part -> nesting.isIn(part.name(), unit))
        .min(Comparator.comparing(part -> of(entry, part).isEmpty()));
  }

  private Stream<Part> served(HardwareEntry entry) {
    return entry.parts().stream().map(Located::value).map(piece::part);
  }

  private Optional<String> unit(Part part) {
    return nesting.looseUnit(part.name());
  }

  /** What carries the catch of one of an entry's doors; a named part wherever it stands. */
  Optional<Part> of(HardwareEntry entry, Part door) {
    List<Part> named = served(entry).filter(part -> unit(part).isEmpty()).toList();
    return named.isEmpty()
        ? beside(door)
        : named.stream()
            .min(
                Comparator.comparing((Part part) -> !isBeside(part, door))
                    .thenComparing(part -> isHinged(part, door))
                    .thenComparing(part -> apart(part, door).abs()));
  }

  private Optional<Part> beside(Part door) {
    return piece.parts().stream()
        .filter(part -> unit(part).isEmpty() && isAtFreeEdge(part, door))
        .filter(part -> !part.bounds().y().from().isShorterThan(door.bounds().y().from()))
        .filter(part -> !apart(part, door).isNegative())
        .min(
            Comparator.comparing((Part part) -> apart(part, door))
                .thenComparing(part -> part.bounds().y().from(), Comparator.reverseOrder()));
  }

  /** Whether a part stands at an edge of a door on which that does not hang. */
  boolean isAtFreeEdge(Part part, Part door) {
    return isBeside(part, door) && !isHinged(part, door);
  }

  /** At the left or right edge, also where that laps over it. */
  private static boolean isBeside(Part part, Part door) {
    return !part.pose().isTurned()
        && !door.pose().isTurned()
        && part.bounds().z().overlaps(door.bounds().z())
        && !part.bounds().x().contains(door.bounds().x().middle())
        && !apart(part, door).isLongerThan(NEAR);
  }

  /** How far apart two parts stand from left to right; negative where they do not. */
  private static Length apart(Part one, Part other) {
    Range first = one.bounds().x();
    Range second = other.bounds().x();
    return first.from().minus(second.to()).max(second.from().minus(first.to()));
  }

  /** Whether a part stands at the edge on which a door hangs. */
  private boolean isHinged(Part part, Part door) {
    return unit(door).map(this::hung).orElse(List.of()).contains(edge(part, door.bounds()));
  }

  /** The edges of a door beside what its hinges are screwed to, if that is upright. */
  private List<Face> hung(String unit) {
    Box door = nesting.parts(unit).stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    return piece.description().hardware().stream()
        .filter(entry -> piece.kind(entry.item().value()).isHinge())
        .filter(entry -> served(entry).anyMatch(part -> nesting.isIn(part.name(), unit)))
        .flatMap(entry -> served(entry).filter(part -> unit(part).isEmpty()))
        .filter(post -> post.bounds().size(Axis.Z).isLongerThan(post.bounds().size(Axis.X)))
        .map(post -> edge(post, door))
        .toList();
  }

  /** The edge of a door that looks at a part. */
  private static Face edge(Part part, Box door) {
    return MountSites.towards(part, door, Axis.X).opposite();
  }
}
