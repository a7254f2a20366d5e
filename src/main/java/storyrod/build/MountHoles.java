package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.ScrewHoles;

/** Pilot holes for the screws of hardware, which stand in no part's drawing. */
public record MountHoles(Piece piece) {
  /** What a screw passes through of a slide or a fastener at least (common practice). */
  static final Length METAL = Length.inch(1, 16);

  /** What has to stay of a part behind a pilot hole. */
  private static final Length LEFT = Length.inch(1, 8);

  /**
   * The bit and the depth for each part that an entry's hardware is screwed to.
   *
   * @param drilled the parts in which the holes are there already
   */
  List<Setting> of(HardwareEntry entry, Set<String> drilled) {
    return entry.screw().flatMap(piece::item).stream()
        .flatMap(
            screw ->
                entry.parts().stream()
                    .map(Located::value)
                    .filter(name -> !drilled.contains(name))
                    .flatMap(name -> pilot(screw, piece.part(name)).stream()))
        .toList();
  }

  /** The parts in which the pilot holes of an entry are drilled while they lie on the bench. */
  public static Set<String> drilledEarly(Stream<Operation> operations, HardwareEntry entry) {
    return operations
        .filter(operation -> operation.verb() == Verb.DRILL)
        .filter(operation -> operation.cuts().stream().anyMatch(cut -> isFor(entry, cut)))
        .map(Operation::target)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean isFor(HardwareEntry entry, Cut cut) {
    return cut.term().equals(MountLines.PILOT) && entry.at().equals(cut.at());
  }

  /** How slides lie on a part for which a cut's holes are, measured while it is on the bench. */
  public List<Slides.Row> onBench(Part part, Cut cut) {
    return piece.description().hardware().stream()
        .filter(entry -> isFor(entry, cut))
        .flatMap(entry -> Slides.of(piece, entry).stream())
        .filter(row -> row.wall().name().equals(part.name()))
        .map(Slides.Row::onBench)
        .toList();
  }

  /** The bit and the depth for the fasteners of a top. */
  List<Setting> of(Joint joint) {
    if (joint.fasteners().stream()
        .flatMap(each -> piece.item(each.item()).stream())
        .noneMatch(item -> item.kind().isTopFastener())) {
      return List.of();
    }
    return joint.fasteners().stream()
        .filter(each -> is(each.item(), ItemKind.WOOD_SCREW))
        .flatMap(each -> piece.item(each.item()).stream())
        .flatMap(screw -> taking(joint).flatMap(part -> pilot(screw, part).stream()))
        .toList();
  }

  private Stream<Part> taking(Joint joint) {
    return Stream.of(joint.first(), joint.second())
        .filter(name -> joint.driven().filter(d -> d.part().equals(name)).isEmpty())
        .limit(1)
        .map(piece::part);
  }

  /** A pilot hole; it has no depth where its part is too thin for a stop. */
  record Pilot(Length bit, Optional<Length> depth) {}

  /** The pilot hole in a part for an entry's screws, if the entry names them. */
  Optional<Pilot> pilot(HardwareEntry entry, Part part) {
    return entry.screw().flatMap(piece::item).flatMap(screw -> hole(screw, part));
  }

  private static Optional<Pilot> hole(ItemEntry screw, Part part) {
    if (screw.length().isEmpty() || screw.diameter().isEmpty()) {
      return Optional.empty();
    }
    Length bit = ScrewHoles.forShank(screw.diameter().get()).pilot(part.stock());
    Length depth = screw.length().get().minus(METAL).min(part.finishedThickness().minus(LEFT));
    return Optional.of(new Pilot(bit, Optional.of(depth).filter(Length::isPositive)));
  }

  private List<Setting> pilot(ItemEntry screw, Part part) {
    Optional<String> shown = Optional.of(piece.mark(part.mark()).shown().name());
    return hole(screw, part).stream()
        .flatMap(
            pilot ->
                Stream.concat(
                    Stream.of(new Setting("pilot-diameter", shown, pilot.bit())),
                    pilot.depth().map(deep -> new Setting("pilot-depth", shown, deep)).stream()))
        .toList();
  }

  private boolean is(String item, ItemKind kind) {
    return piece.item(item).filter(entry -> entry.kind() == kind).isPresent();
  }
}
