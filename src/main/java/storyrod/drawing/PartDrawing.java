package storyrod.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Lazy;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.words.Words;

/**
 * The drawing from which a part is made: its face and the edges it needs, to scale, with every
 * dimension and a note on every cut. What is the same in any room is made once: views with their
 * dimensions and details. Not for several threads at once.
 */
final class PartDrawing {
  private final FlatPart flat;
  private final Mark mark;
  private final Map<Face, Shown> shown;
  private final TreeSet<Length> features;
  private final List<Wanted> wanted;
  private final List<CutNote> notes;
  private final Details details;
  private final Words words;
  private final List<Scale> scales;
  private final Map<Enlarging, List<Detail>> enlarged = new LinkedHashMap<>();
  private final Map<Enlarging, Boolean> sameAsAll = new LinkedHashMap<>();
  private final Map<Laying, LaidViews> laid = new LinkedHashMap<>();

  private PartDrawing(Mark mark, Piece piece) {
    this.words = piece.description().words();
    this.mark = mark;
    this.flat = FlatPart.of(mark.shown());
    this.shown = projections(flat);
    this.features = Features.of(flat);
    this.wanted = Measures.of(flat, piece.description().printed(), words);
    this.notes = CutNotes.of(flat, piece, words);
    this.details = new Details(flat, shown, Notation.of(piece));
    this.scales = Scales.in(piece.description().printed().unit());
  }

  /** Which details a drawing shows: all, those without which it cannot be read, or none. */
  enum Depth {
    ALL,
    NEEDED,
    NONE
  }

  private record Enlarging(double factor, Depth depth) {}

  /** A ruler and details by which views are laid out. */
  record Laying(Ruler ruler, Depth depth) {}

  static PartDrawing of(Mark mark, Piece piece) {
    return new PartDrawing(mark, piece);
  }

  /** The largest drawing of a mark's part that an area holds; it is as high as it needs to be. */
  public static Drawing draw(Mark mark, Piece piece, Size area) {
    return of(mark, piece).draw(area);
  }

  /** The largest drawing that an area holds; it is as high as it needs to be. */
  Drawing draw(Size area) {
    return new PartFitting(this, area).draw();
  }

  /**
   * The largest drawing that an area holds, or nothing where no scale leaves room for all of it, or
   * only one at which the rows at its ends cannot be read or a slim part is hardly a line.
   */
  Optional<Drawing> fitting(Size area) {
    double enough = Math.max(EndRows.enough(flat, scales), SlimPart.enough(flat, scales));
    List<Scale> clear = scales.stream().filter(each -> each.factor() >= enough).toList();
    return new PartFitting(this, area).fitting(clear);
  }

  private static Map<Face, Shown> projections(FlatPart flat) {
    Set<Face> views = PartViews.of(flat);
    List<Box> removed = flat.removed();
    Lazy<Solid> solid = new Lazy<>(() -> SolidView.solid(flat));
    boolean shaped = flat.isSlanted() || !flat.cuts(Cut.Shaped.class).isEmpty();
    Map<Face, Shown> shown = new LinkedHashMap<>();
    List.of(Face.FRONT, Face.BOTTOM, Face.TOP, Face.RIGHT, Face.LEFT).stream()
        .filter(views::contains)
        .forEach(
            face ->
                shown.put(
                    face,
                    shaped
                        ? new SolidView(flat, solid.get(), face)
                        : new Projection(flat.box(), removed, face)));
    return shown;
  }

  FlatPart flat() {
    return flat;
  }

  Mark mark() {
    return mark;
  }

  Map<Face, Shown> shown() {
    return shown;
  }

  /** Where something is to be seen along the part, with both its ends. */
  TreeSet<Length> features() {
    return features;
  }

  List<Wanted> wanted() {
    return wanted;
  }

  List<CutNote> notes() {
    return notes;
  }

  Details details() {
    return details;
  }

  Words words() {
    return words;
  }

  List<Scale> scales() {
    return scales;
  }

  /** The details of a drawing to some scale. */
  List<Detail> enlarged(double factor, Depth depth) {
    return enlarged.computeIfAbsent(new Enlarging(factor, depth), this::enlarged);
  }

  private List<Detail> enlarged(Enlarging asked) {
    return switch (asked.depth) {
      case ALL -> details.of(mark.mark(), asked.factor, wanted);
      case NEEDED -> details.needed(mark.mark(), asked.factor, wanted);
      case NONE -> List.of();
    };
  }

  /** How views are laid out; depths that come to the same details come to the same. */
  Laying laying(Ruler ruler, Depth depth) {
    boolean same = sameAsAll.computeIfAbsent(new Enlarging(ruler.factor(), depth), this::isAll);
    return new Laying(ruler, same ? Depth.ALL : depth);
  }

  private boolean isAll(Enlarging asked) {
    return enlarged(asked.factor, asked.depth).equals(enlarged(asked.factor, Depth.ALL));
  }

  /** The views to some ruler, with the dimensions that no detail shows. */
  LaidViews laid(Laying laying) {
    return laid.computeIfAbsent(laying, this::views);
  }

  private LaidViews views(Laying laying) {
    List<Detail> shown = enlarged(laying.ruler.factor(), laying.depth);
    return new LaidViews(this, laying.ruler, shown);
  }
}
