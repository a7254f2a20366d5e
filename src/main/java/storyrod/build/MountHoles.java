package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.description.Description.ItemKind;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.ScrewHoles;

/** Pilot holes for the screws of hardware, which stand in no part's drawing. */
record MountHoles(Piece piece) {
  /** What a screw passes through of a slide or a fastener at least (common practice). */
  private static final Length METAL = Length.inch(1, 16);

  /** What has to stay of a part behind a pilot hole. */
  private static final Length LEFT = Length.inch(1, 8);

  /** The bit and the depth for each part that an entry's hardware is screwed to. */
  List<Setting> of(HardwareEntry entry) {
    return entry.screw().flatMap(piece::item).stream()
        .flatMap(
            screw ->
                entry.parts().stream()
                    .flatMap(name -> pilot(screw, piece.part(name.value())).stream()))
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

  private List<Setting> pilot(ItemEntry screw, Part part) {
    if (screw.length().isEmpty() || screw.diameter().isEmpty()) {
      return List.of();
    }
    Optional<String> shown = Optional.of(piece.mark(part.mark()).shown().name());
    Length bit = ScrewHoles.forShank(screw.diameter().get()).pilot(part.stock());
    Length depth = screw.length().get().minus(METAL).min(part.finishedThickness().minus(LEFT));
    Setting diameter = new Setting("pilot-diameter", shown, bit);
    return depth.isPositive()
        ? List.of(diameter, new Setting("pilot-depth", shown, depth))
        : List.of(diameter);
  }

  private boolean is(String item, ItemKind kind) {
    return piece.item(item).filter(entry -> entry.kind() == kind).isPresent();
  }
}
