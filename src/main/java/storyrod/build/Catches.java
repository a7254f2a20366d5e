package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Where the catches of doors sit: on what stands in the case beside the free edge, near the upper
 * end of the door, or near the lower one where something is in the way (common practice, memory).
 */
public record Catches(Piece piece) {
  /** What stands further off takes no catch. */
  private static final Length NEAR = Length.mm(15);

  /** What is kept free behind the door. */
  static final Length DEEP = Length.mm(14);

  static final Length LONG = Length.mm(46);
  static final Length WIDE = Length.mm(15);

  /** An end of a door near which a catch sits, by its distance from there to the catch's middle. */
  public record End(Part door, Face face, Length distance) {
    Length height() {
      return door.bounds().at(face).minus(distance.times(face.sign()));
    }
  }

  /** The full names of the parts that a step's catches are screwed to besides the doors. */
  public List<String> posts(Step step) {
    List<String> mounted =
        step.operations().stream()
            .filter(each -> each.verb() == Verb.MOUNT)
            .map(Operation::target)
            .toList();
    return posts(
        piece.description().hardware().stream()
            .filter(entry -> mounted.contains(entry.item().value()))
            .toList());
  }

  /** What stands beside the free edges of the doors that have catches, and back of them. */
  public List<String> posts(List<HardwareEntry> entries) {
    return entries.stream()
        .filter(this::isCatch)
        .flatMap(entry -> entry.parts().stream())
        .flatMap(name -> post(piece.part(name.value())).stream())
        .map(Part::name)
        .toList();
  }

  private boolean isCatch(HardwareEntry entry) {
    return piece.kind(entry.item().value()) == ItemKind.CATCH;
  }

  Optional<Part> post(Part door) {
    return piece.parts().stream()
        .filter(part -> !part.assembly().equals(door.assembly()))
        .filter(part -> !part.bounds().y().from().isShorterThan(door.bounds().y().from()))
        .filter(part -> part.bounds().z().overlaps(door.bounds().z()))
        .filter(part -> !apart(part, door).isLongerThan(NEAR) && !apart(part, door).isNegative())
        .min(
            Comparator.comparing((Part part) -> apart(part, door))
                .thenComparing(part -> part.bounds().y().from(), Comparator.reverseOrder()));
  }

  /** How far apart two parts stand from left to right; negative where they do not. */
  private static Length apart(Part one, Part other) {
    Range first = one.bounds().x();
    Range second = other.bounds().x();
    return first.from().minus(second.to()).max(second.from().minus(first.to()));
  }

  /**
   * The door that has the catches of an entry: the first of its parts beside whose edge a post
   * stands.
   */
  Optional<Part> door(HardwareEntry entry) {
    return entry.parts().stream()
        .map(Located::value)
        .map(piece::part)
        .filter(part -> !part.pose().isTurned() && post(part).isPresent())
        .findFirst();
  }

  /** The ends near which the catches of an entry sit, as far as they have a post. */
  public List<End> ends(HardwareEntry entry) {
    return isCatch(entry)
        ? door(entry).stream().flatMap(door -> ends(door).limit(entry.count())).toList()
        : List.of();
  }

  /** Both ends, one with nothing in the way before the other. */
  private Stream<End> ends(Part door) {
    boolean isInch = piece.description().format().unit() == Unit.INCH;
    Length distance = isInch ? Length.inches(3) : Length.mm(75);
    return Stream.of(Face.TOP, Face.BOTTOM)
        .map(face -> new End(door, face, distance))
        .sorted(Comparator.comparing(end -> !isFree(end)));
  }

  private boolean isFree(End end) {
    Part post = post(end.door()).orElseThrow();
    Box room = room(end, post);
    return piece.parts().stream()
        .filter(part -> !part.equals(post) && !part.equals(end.door()))
        .noneMatch(part -> part.bounds().overlaps(room));
  }

  /** Behind the door, beside its free edge. */
  private static Box room(End end, Part post) {
    Box door = end.door().bounds();
    Face out = MountSites.towards(post, door, Axis.X);
    Length edge = door.at(out.opposite());
    Length inner = edge.plus(LONG.times(out.sign()));
    Length back = door.at(Face.BACK);
    return new Box(
        new Range(edge.min(inner), edge.max(inner)),
        new Range(back, back.plus(DEEP)),
        around(end.height(), WIDE));
  }

  static Range around(Length middle, Length size) {
    Range about = HardwareShapes.about(size);
    return new Range(middle.plus(about.from()), middle.plus(about.to()));
  }
}
