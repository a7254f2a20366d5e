package storyrod.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.check.Hollow.Use;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Drilling;
import storyrod.piece.InPlace;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;

/**
 * The ways that pocket screws and brads take in the part in which they end, where nothing is
 * drilled.
 */
record DrivenWays(Piece piece) {
  /** A way is never shorter, so that it has a direction. */
  private static final Length LEAST = Length.inch(1, 64);

  List<Hollow> into(Part part) {
    return piece.joints().stream()
        .filter(joint -> joint.second().equals(part.name()))
        .flatMap(joint -> Stream.concat(pocketScrews(joint, part), brads(joint, part)))
        .toList();
  }

  /** The ways that pocket screws make for themselves in the part they are driven into. */
  private Stream<Hollow> pocketScrews(Joint joint, Part into) {
    Part first = piece.part(joint.first());
    if (!first.pose().equals(into.pose())) {
      return Stream.empty();
    }
    return first.cuts(PocketHoles.class).stream()
        .filter(pockets -> pockets.at().equals(joint.at()))
        .flatMap(pockets -> way(pockets, into).stream());
  }

  private Optional<Hollow> way(PocketHoles pockets, Part into) {
    return pockets
        .forWhat()
        .flatMap(piece::item)
        .filter(screw -> screw.length().isPresent())
        .map(screw -> way(pockets, screw, into));
  }

  private Hollow way(PocketHoles pockets, ItemEntry screw, Part into) {
    List<Cylinder> ways = Drilling.beyond(pockets, screw.length().orElseThrow());
    String name = "the way of " + screw.name();
    return new Hollow(
        into,
        pockets,
        Use.THREAD,
        name,
        Hollows.mates(piece, into, pockets),
        HollowForms.rods(ways));
  }

  /** The ways of brads, spread evenly along the middle of where the parts meet. */
  private Stream<Hollow> brads(Joint joint, Part into) {
    Part first = piece.part(joint.first());
    if (first.pose().isTurned() || into.pose().isTurned()) {
      return Stream.empty();
    }
    return joint.fasteners().stream()
        .flatMap(
            each ->
                piece.item(each.item()).stream()
                    .filter(item -> item.kind() == ItemKind.BRAD && item.length().isPresent())
                    .map(item -> brads(joint, into, new Row(item, each.count()))));
  }

  private record Row(ItemEntry brad, int count) {}

  private Hollow brads(Joint joint, Part into, Row row) {
    Length bite = bite(joint, row.brad());
    Length thick = row.brad().diameter().orElse(Length.inch(3, 64));
    List<InPlace.Bore> ways =
        mouths(joint, row.count()).stream()
            .map(at -> new InPlace.Bore(at, inwards(joint, at, bite)))
            .toList();
    InPlace cut =
        new InPlace(
            "brad",
            joint.entry().opposite(),
            ways,
            thick,
            bite,
            joint.first(),
            Optional.of(row.brad().name()),
            joint.at());
    String name = "the way of " + row.brad().name();
    return new Hollow(
        into,
        cut,
        Use.BRAD,
        name,
        Hollows.mates(piece, into, cut),
        HollowForms.rods(Drilling.of(cut)));
  }

  private Length bite(Joint joint, ItemEntry brad) {
    Length passed = piece.part(joint.first()).box().size(joint.entry().axis());
    return brad.length().orElseThrow().minus(passed).max(LEAST);
  }

  private static Point inwards(Joint joint, Point mouth, Length bite) {
    return mouth.moved(joint.entry().axis(), bite.times(joint.entry().sign()));
  }

  private static List<Point> mouths(Joint joint, int count) {
    Axis along =
        Stream.of(Axis.values())
            .filter(axis -> axis != joint.entry().axis())
            .max(Comparator.comparing(joint.contact()::size))
            .orElseThrow();
    Length from = joint.contact().on(along).from();
    Length share = new Length(joint.contact().size(along).ticks() / (2L * count));
    return IntStream.range(0, count)
        .mapToObj(i -> joint.contact().middle().with(along, from.plus(share.times(2L * i + 1))))
        .toList();
  }
}
