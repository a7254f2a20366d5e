package storyrod.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The holes for pulls and knobs that go through a drawer's front and on through its box. On the
 * bench only the front is bored: it is shifted on shims when its box hangs, and then the front's
 * holes guide the drill through the box (common practice), so that they always meet.
 */
public final class FrontHoles {
  private static final List<ItemKind> HANDLES = List.of(ItemKind.PULL, ItemKind.KNOB);

  private final Piece piece;
  private final Nesting nesting;
  private final Map<String, String> drawers;

  public FrontHoles(Piece piece) {
    this.piece = piece;
    this.nesting = Nesting.of(piece);
    this.drawers = Fronts.byDrawer(piece, nesting);
  }

  /** Whether a cut is a hole for a pull or a knob. */
  public boolean isForHandle(Cut cut) {
    return isForHandle(piece, cut);
  }

  static boolean isForHandle(Piece piece, Cut cut) {
    return cut instanceof Cut.Holes
        && cut.forWhat().flatMap(piece::item).filter(i -> HANDLES.contains(i.kind())).isPresent();
  }

  /**
   * The part of a front through whose holes a box's are drilled, if they are drilled so.
   *
   * @param cut a cut of the part, in the frame of the piece or turned for a drawing
   */
  public Optional<Part> guide(Part part, Cut cut) {
    return isForHandle(cut)
        ? fronts(part).filter(front -> isInLine(part, front, cut)).findFirst()
        : Optional.empty();
  }

  /** What is drilled through the holes of a unit when it is fixed, if that is a drawer's front. */
  List<Cut> throughHolesOf(Unit unit) {
    return Optional.ofNullable(drawers.get(unit.name())).stream()
        .flatMap(drawer -> nesting.parts(drawer).stream())
        .flatMap(part -> part.cuts().stream().filter(cut -> isThrough(unit, part, cut)))
        .toList();
  }

  private boolean isThrough(Unit unit, Part part, Cut cut) {
    return guide(part, cut).filter(unit.parts()::contains).isPresent();
  }

  /** The parts of the fronts of the drawer to whose box a part belongs. */
  private Stream<Part> fronts(Part part) {
    return drawers.entrySet().stream()
        .filter(each -> nesting.isIn(part.name(), each.getValue()))
        .filter(each -> !nesting.isIn(part.name(), each.getKey()))
        .flatMap(each -> nesting.parts(each.getKey()).stream());
  }

  private boolean isInLine(Part part, Part front, Cut cut) {
    return part.thickness() == front.thickness()
        && alike(part, cut).anyMatch(one -> alike(front, cut).anyMatch(o -> meet(part, one, o)));
  }

  /** The holes of a part for the same item; of its own, those of the same entry. */
  private static Stream<Cut.Holes> alike(Part part, Cut cut) {
    List<Cut.Holes> all =
        part.cuts(Cut.Holes.class).stream()
            .filter(hole -> hole.forWhat().equals(cut.forWhat()))
            .toList();
    List<Cut.Holes> same = all.stream().filter(hole -> hole.at().equals(cut.at())).toList();
    return same.isEmpty() ? all.stream() : same.stream();
  }

  private static boolean meet(Part part, Cut.Holes one, Cut.Holes other) {
    Axis through = part.thickness();
    return other.through()
        && one.from().axis() == through
        && across(one, through).equals(across(other, through));
  }

  private static List<Point> across(Cut.Holes holes, Axis through) {
    return holes.centres().stream().map(centre -> centre.with(through, Length.ZERO)).toList();
  }
}
