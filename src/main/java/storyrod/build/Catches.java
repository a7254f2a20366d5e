package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Where the catches of doors sit: on what carries them at the free edge ({@link CatchPosts}), near
 * the upper end of the door, or near the lower one where something is in the way (common practice,
 * memory).
 */
public final class Catches {
  /** What is kept free behind the door. */
  static final Length DEEP = Length.mm(14);

  static final Length LONG = Length.mm(46);
  static final Length WIDE = Length.mm(15);

  private final Piece piece;
  private final CatchPosts posts;

  public Catches(Piece piece) {
    this.piece = piece;
    this.posts = new CatchPosts(piece);
  }

  /**
   * An end of a door near which a catch sits, by its distance from there to the catch's middle.
   *
   * @param post what carries the catch
   */
  public record End(Part door, Part post, Face face, Length distance) {
    Length height() {
      return door.bounds().at(face).minus(distance.times(face.sign()));
    }

    /** From the post to the door. */
    Face out() {
      return MountSites.towards(post, door.bounds(), Axis.X);
    }

    /** The door's edge, or the post's flank where the door laps over it. */
    Length edge() {
      Length door = door().bounds().at(out().opposite());
      Length flank = post.bounds().at(out());
      return out().sign() > 0 ? door.max(flank) : door.min(flank);
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

  /** What carries the catches of entries; of one that is no catch nothing. */
  public List<String> posts(List<HardwareEntry> entries) {
    return entries.stream()
        .filter(this::isCatch)
        .flatMap(
            entry -> posts.doors(entry).stream().flatMap(door -> posts.of(entry, door).stream()))
        .map(Part::name)
        .distinct()
        .toList();
  }

  /** The full names of the parts of doors that take the strikes of entries' catches. */
  public List<String> doors(List<HardwareEntry> entries) {
    return entries.stream()
        .filter(this::isCatch)
        .flatMap(entry -> posts.doors(entry).stream())
        .map(Part::name)
        .distinct()
        .toList();
  }

  private boolean isCatch(HardwareEntry entry) {
    return piece.kind(entry.item().value()) == ItemKind.CATCH;
  }

  /**
   * The ends near which the catches of an entry sit, as far as they have a post beside the door.
   * Each of its doors has its share of them, at most two.
   */
  public List<End> ends(HardwareEntry entry) {
    List<Part> doors = isCatch(entry) ? posts.doors(entry) : List.of();
    return IntStream.range(0, doors.size())
        .boxed()
        .flatMap(i -> ends(entry, doors.get(i)).limit(share(entry.count(), doors.size(), i)))
        .toList();
  }

  /** How many of a count the thing at a place gets; the first get what does not come out even. */
  private static int share(int count, int things, int place) {
    return count / things + (place < count % things ? 1 : 0);
  }

  /** Both ends, one with nothing in the way before the other. */
  private Stream<End> ends(HardwareEntry entry, Part door) {
    boolean isInch = piece.description().format().unit() == Unit.INCH;
    Length distance = isInch ? Length.inches(3) : Length.mm(75);
    return posts.of(entry, door).filter(post -> posts.isAtFreeEdge(post, door)).stream()
        .flatMap(
            post ->
                Stream.of(Face.TOP, Face.BOTTOM).map(face -> new End(door, post, face, distance)))
        .sorted(Comparator.comparing(end -> !isFree(end)));
  }

  private boolean isFree(End end) {
    Box room = room(end);
    return piece.parts().stream()
        .filter(part -> !part.equals(end.post()) && !part.equals(end.door()))
        .noneMatch(part -> part.bounds().overlaps(room));
  }

  /** Behind the door, beside its free edge. */
  private static Box room(End end) {
    Length edge = end.edge();
    Length inner = edge.plus(LONG.times(end.out().sign()));
    Length back = end.door().bounds().at(Face.BACK);
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
