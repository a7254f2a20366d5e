package storyrod.build;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.KeptCutout;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The gaps round doors and the fronts of drawers, to be checked when they are fitted or hung. */
final class Reveals {
  /** What is further away is no neighbour but an opening. */
  private static final Length WIDEST = Length.mm(15);

  private static final Set<ItemKind> HANGERS =
      EnumSet.of(
          ItemKind.SLIDE, ItemKind.UNDER_SLIDE, ItemKind.CONCEALED_HINGE, ItemKind.BUTT_HINGE);

  private final Piece piece;
  private final Nesting nesting;
  private final Trials trials;
  private final Map<String, String> drawers;
  private final Set<String> hung;
  private final Set<String> tops;

  Reveals(Piece piece) {
    this.piece = piece;
    this.nesting = Nesting.of(piece);
    this.trials = new Trials(piece);
    this.drawers = Fronts.byDrawer(piece, nesting);
    this.tops = Late.tops(piece, nesting);
    this.hung =
        piece.description().hardware().stream()
            .map(entry -> entry.item().value())
            .filter(item -> HANGERS.contains(piece.kind(item)))
            .distinct()
            .flatMap(item -> trials.hung(item).stream())
            .collect(Collectors.toUnmodifiableSet());
  }

  List<Setting> of(Operation operation) {
    Set<Setting> settings = new LinkedHashSet<>();
    List<Part> round = round(operation);
    units(operation).forEach(unit -> settings.addAll(of(nesting.parts(unit), round)));
    return List.copyOf(settings);
  }

  /** All that can stand round it: on trial, a top that waits for the finish is not on yet. */
  private List<Part> round(Operation operation) {
    if (operation.verb() != Verb.TRIAL_FIT) {
      return piece.parts();
    }
    return piece.parts().stream()
        .filter(part -> tops.stream().noneMatch(top -> nesting.isIn(part.name(), top)))
        .toList();
  }

  private Stream<String> units(Operation operation) {
    return switch (operation.verb()) {
      case FIT ->
          Stream.of(operation.target())
              .filter(unit -> drawers.containsKey(unit) || hung.contains(unit) && !hasFront(unit));
      case TRIAL_FIT -> trials.hung(operation.target()).stream();
      default -> Stream.empty();
    };
  }

  /** Whether a front is fixed to it later, with its own gaps. */
  private boolean hasFront(String unit) {
    return drawers.containsValue(unit);
  }

  private List<Setting> of(List<Part> unit, List<Part> round) {
    Length foremost =
        unit.stream().map(p -> p.bounds().y().from()).reduce(Length::min).orElseThrow();
    List<Part> front =
        unit.stream().filter(part -> part.bounds().y().from().equals(foremost)).toList();
    Box box = around(front);
    List<Part> others = round.stream().filter(part -> !unit.contains(part)).toList();
    Optional<Box> opening = opening(front);
    Map<Face, Length> gaps = new LinkedHashMap<>();
    for (Face face : List.of(Face.LEFT, Face.RIGHT, Face.BOTTOM, Face.TOP)) {
      opening
          .map(hole -> hole.at(face).minus(box.at(face)).times(face.sign()))
          .or(() -> gap(box, face, others))
          .ifPresent(gap -> gaps.put(face, gap));
    }
    Optional<String> shown = Optional.of(piece.mark(front.getFirst().mark()).shown().name());
    if (gaps.size() == 4 && gaps.values().stream().distinct().count() == 1) {
      return List.of(new Setting("gap-all", shown, gaps.get(Face.TOP)));
    }
    return Stream.concat(
            settings(gaps, List.of(Face.LEFT, Face.RIGHT), shown),
            settings(gaps, List.of(Face.BOTTOM, Face.TOP), shown))
        .toList();
  }

  /** The gaps at two opposite sides, as one where they are equal. */
  private static Stream<Setting> settings(
      Map<Face, Length> gaps, List<Face> sides, Optional<String> shown) {
    List<Face> there = sides.stream().filter(gaps::containsKey).toList();
    if (there.size() == 2 && there.stream().map(gaps::get).distinct().count() == 1) {
      String both = "gap-" + there.getFirst().word() + "-" + there.getLast().word();
      return Stream.of(new Setting(both, shown, gaps.get(there.getFirst())));
    }
    return there.stream().map(face -> new Setting("gap-" + face.word(), shown, gaps.get(face)));
  }

  /** The opening that a front was cut out of and comes back into. */
  private Optional<Box> opening(List<Part> front) {
    return front.stream()
        .flatMap(part -> piece.keptAs(part.name()).stream())
        .map(KeptCutout::opening)
        .findFirst();
  }

  private static Box around(List<Part> parts) {
    return parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
  }

  /** How far the nearest part lies beyond a face, of those that stand beside it. */
  private Optional<Length> gap(Box front, Face face, List<Part> others) {
    return others.stream()
        .map(Part::bounds)
        .filter(other -> isBeside(front, other, face.axis()))
        .map(other -> other.at(face.opposite()).minus(front.at(face)).times(face.sign()))
        .filter(gap -> gap.isPositive() && !gap.isLongerThan(WIDEST))
        .min(Comparator.naturalOrder());
  }

  private static boolean isBeside(Box front, Box other, Axis apart) {
    return Arrays.stream(Axis.values())
        .filter(axis -> axis != apart)
        .allMatch(axis -> front.on(axis).overlaps(other.on(axis)));
  }
}
