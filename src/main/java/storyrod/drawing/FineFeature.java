package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Slanted;
import storyrod.piece.SplineSlot;

/**
 * A joint's own outline in the view that shows it best: a trench where it runs out, else the view
 * in which it is dimensioned.
 *
 * @param face the view
 * @param box the outline, in the frame of the flat part
 * @param least the least distance of two of its lines in that view or where it is dimensioned
 */
record FineFeature(FlatPart flat, Cut cut, Face face, Box box, Length least) {
  /** The joints of a part, those with the finest lines first; of equal ones only one. */
  static List<FineFeature> of(FlatPart flat, Set<Face> views) {
    List<FineFeature> features = new ArrayList<>();
    for (Cut cut : flat.cuts()) {
      feature(flat, cut, views)
          .filter(each -> features.stream().noneMatch(each::isLike))
          .ifPresent(features::add);
    }
    features.sort(Comparator.comparing(FineFeature::least));
    return features;
  }

  private static Optional<FineFeature> feature(FlatPart flat, Cut cut, Set<Face> views) {
    Face home = PlacedView.home(flat, cut);
    if (cut instanceof Dovetails row) {
      DovetailDetail detail = new DovetailDetail(row);
      return Optional.of(new FineFeature(flat, cut, home, detail.box(), detail.least()));
    }
    return box(flat, cut)
        .flatMap(
            box -> {
              Face face = profile(flat, cut, views).orElse(home);
              return Stream.concat(
                      Stream.of(face, home).flatMap(view -> distances(flat, box, view)),
                      slanted(cut))
                  .filter(Length::isPositive)
                  .min(Comparator.naturalOrder())
                  .map(least -> new FineFeature(flat, cut, face, box, least));
            });
  }

  /** The outline of a joint; fingers, holes and plunged slots are told by other means. */
  private static Optional<Box> box(FlatPart flat, Cut cut) {
    return switch (cut) {
      case Cut.Trench trench -> Optional.of(trench.removed());
      case Cut.Tenon tenon -> Optional.of(tenon.tenon());
      case Slanted.Housing housing -> Optional.of(housing.removed());
      case SplineSlot slot -> around(slot).shared(flat.box());
      default -> Optional.empty();
    };
  }

  /** The box around a slot, whose walls stand square to the face in a frame's mitre only. */
  private static Box around(SplineSlot slot) {
    Box box = new Box(slot.run(), slot.run(), slot.run());
    for (Axis axis : slot.profile().axes()) {
      box = box.with(axis, slot.profile().extent(axis));
    }
    return box;
  }

  /** The shown view in which a trench runs out. */
  private static Optional<Face> profile(FlatPart flat, Cut cut, Set<Face> views) {
    if (!(cut instanceof Cut.Trench trench)) {
      return Optional.empty();
    }
    Box removed = trench.removed();
    return views.stream()
        .filter(face -> face != Face.FRONT && face.axis() == run(trench))
        .filter(face -> removed.at(face).equals(flat.box().at(face)))
        .findFirst();
  }

  private static Axis run(Cut.Trench trench) {
    return DimensionSides.inPlane(trench.from()).stream()
        .max(Comparator.comparing(axis -> trench.removed().size(axis)))
        .orElseThrow();
  }

  /** What lies slantwise in its view: the width of a slot in a case's mitre. */
  private static Stream<Length> slanted(Cut cut) {
    return cut instanceof SplineSlot slot ? Stream.of(slot.thickness()) : Stream.empty();
  }

  /** The sizes of the outline in a view and its distances from the part's own outline. */
  private static Stream<Length> distances(FlatPart flat, Box box, Face view) {
    return DimensionSides.inPlane(view).stream()
        .filter(axis -> !flat.full(box.on(axis), axis))
        .flatMap(
            axis -> {
              Range range = box.on(axis);
              return Stream.of(range.length(), range.from(), flat.size(axis).minus(range.to()));
            });
  }

  /** Whether another is the same but for its place on the part. */
  private boolean isLike(FineFeature other) {
    return face.axis() == other.face.axis()
        && cut.term().equals(other.cut.term())
        && cut.from().axis() == other.cut.from().axis()
        && DimensionSides.inPlane(face).stream()
            .allMatch(axis -> box.size(axis).equals(other.box.size(axis)))
        && (isRow() ? isRowLike(other) : fromEdges().equals(other.fromEdges()));
  }

  private boolean isRow() {
    return cut instanceof Dovetails;
  }

  /** Both rows are set out from the same edge, whichever end they are at. */
  private boolean isRowLike(FineFeature other) {
    return cut instanceof Dovetails row
        && other.cut instanceof Dovetails too
        && new DovetailDetail(row).isLike(new DovetailDetail(too));
  }

  /**
   * Whether a drawing should show it larger if lines have to be so far apart on the paper: a row is
   * always shown, as it is laid out by more figures than find room beside the whole part.
   */
  boolean isTooFine(double factor, double leastMm) {
    return drawnMm(factor) < leastMm || isRow() && factor < 1;
  }

  /** How far it lies from the nearer edges of the part in its view. */
  private List<Length> fromEdges() {
    return DimensionSides.inPlane(face).stream()
        .map(axis -> box.on(axis).from().min(flat.size(axis).minus(box.on(axis).to())))
        .toList();
  }

  /** Whether it can be read: of a row, whose lines are slanted, the narrowest pin by itself. */
  boolean isClear(double factor) {
    return drawnMm(factor) >= (isRow() ? 2 : 1) * Details.WISH_MM;
  }

  /** The distance of its nearest lines on the paper, in mm. */
  double drawnMm(double factor) {
    return least.toMm() * factor;
  }
}
