package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.words.Words;

/**
 * The drawing from which a part is made: its face and the edges it needs, to scale, with every
 * dimension and a note on every cut.
 */
final class PartDrawing {
  private static final double BETWEEN_VIEWS = 7;
  private static final double THIN_VIEW = 16;
  private static final double BROKEN_VIEW = 32;
  private static final double SHORTEST_VIEW = 40;
  private static final double LEAST_BESIDE = 14;
  private static final double BREAK_STEP = 4;
  private static final double MARGIN = 1;

  private final FlatPart flat;
  private final Mark mark;
  private final Size area;
  private final Map<Face, Shown> shown;
  private final TreeSet<Length> features;
  private final List<Wanted> wanted;
  private final List<CutNote> notes;
  private final Details details;
  private final Words words;

  private PartDrawing(Mark mark, Piece piece, Size area) {
    this.words = piece.description().words();
    this.mark = mark;
    this.area = area;
    this.flat = FlatPart.of(mark.shown());
    this.shown = projections(flat);
    this.features = Features.of(flat);
    this.wanted = Measures.of(flat, piece.description().printed(), words);
    this.notes = CutNotes.of(flat, piece, words);
    this.details = new Details(flat, shown, Notation.of(piece));
  }

  /** Which details a drawing shows: all, those without which it cannot be read, or none. */
  private enum Depth {
    ALL,
    NEEDED,
    NONE
  }

  /** The largest drawing of a mark's part that an area holds; it is as high as it needs to be. */
  public static Drawing draw(Mark mark, Piece piece, Size area) {
    return new PartDrawing(mark, piece, area).draw(Scales.in(piece.description().printed().unit()));
  }

  /**
   * The largest drawing that an area holds, or nothing where no scale leaves room for all of it, or
   * only one at which the rows at its ends cannot be read.
   */
  static Optional<Drawing> fitting(Mark mark, Piece piece, Size area) {
    PartDrawing drawing = new PartDrawing(mark, piece, area);
    List<Scale> scales = Scales.in(piece.description().printed().unit());
    double enough = EndRows.enough(drawing.flat, scales);
    return drawing.fitting(scales.stream().filter(each -> each.factor() >= enough).toList());
  }

  private Drawing draw(List<Scale> scales) {
    return fitting(scales)
        .or(() -> fitting(scales, List.of(Depth.NONE)))
        .orElseGet(() -> forced(scales));
  }

  private Optional<Drawing> fitting(List<Scale> scales) {
    return fitting(scales, List.of(Depth.ALL, Depth.NEEDED));
  }

  private Optional<Drawing> fitting(List<Scale> scales, List<Depth> depths) {
    Optional<Drawing> whole = Optional.empty();
    for (Scale scale : scales) {
      if (whole.isEmpty() && lengthAt(scale) >= SHORTEST_VIEW) {
        whole = drawn(scale, Ruler.unbroken(scale.factor()), depths);
      }
    }
    double enough = EndRows.enough(flat, scales);
    boolean clear =
        whole.flatMap(Drawing::scale).stream()
            .anyMatch(scale -> heightAt(scale) >= THIN_VIEW && scale.factor() >= enough);
    return clear ? whole : broken(scales, depths, whole);
  }

  private double lengthAt(Scale scale) {
    return scale.paper() == scale.real()
        ? SHORTEST_VIEW
        : flat.size(Axis.X).toMm() * scale.factor();
  }

  private double heightAt(Scale scale) {
    return flat.size(Axis.Z).toMm() * scale.factor();
  }

  /** A long thin part, or one with fine rows at its ends, reads better larger and broken. */
  private Optional<Drawing> broken(
      List<Scale> scales, List<Depth> depths, Optional<Drawing> whole) {
    double enough = EndRows.enough(flat, scales);
    for (Scale scale : scales) {
      boolean larger =
          whole.flatMap(Drawing::scale).stream().noneMatch(each -> each.factor() >= scale.factor());
      boolean helps = heightAt(scale) <= BROKEN_VIEW || scale.factor() <= enough;
      if (larger && helps && lengthAt(scale) >= SHORTEST_VIEW) {
        Optional<Drawing> drawing =
            depths.stream().flatMap(depth -> broken(scale, depth).stream()).findFirst();
        if (drawing.isPresent()) {
          return drawing;
        }
      }
    }
    return whole;
  }

  /** With the most details that find room. */
  private Optional<Drawing> drawn(Scale scale, Ruler ruler, List<Depth> depths) {
    return depths.stream()
        .flatMap(depth -> new Attempt(ruler, depth).drawn(scale).stream())
        .findFirst();
  }

  private Optional<Drawing> broken(Scale scale, Depth depth) {
    double width = area.widthMm() - LEAST_BESIDE;
    while (width > SHORTEST_VIEW) {
      Attempt attempt = new Attempt(Ruler.broken(scale.factor(), features, width), depth);
      Optional<Drawing> drawing = attempt.drawn(scale);
      if (drawing.isPresent()) {
        return drawing;
      }
      width -= Math.max(BREAK_STEP, attempt.tooWide());
    }
    return Optional.empty();
  }

  /** Where no scale leaves room for all, the paper grows downwards and tiers are spent freely. */
  private Drawing forced(List<Scale> scales) {
    Scale scale =
        scales.stream()
            .filter(each -> flat.size(Axis.X).toMm() * each.factor() < area.widthMm() / 2)
            .findFirst()
            .orElse(scales.getLast());
    Paper paper = new Paper();
    Map<Face, PlacedView> views = new LinkedHashMap<>();
    for (Face face : shown.keySet()) {
      PlacedView view = placed(face, Ruler.unbroken(scale.factor()), paper);
      views.put(face, view);
      view.elements(shown.get(face)).forEach(paper::add);
      Tiers.force(paper, view, wanted);
    }
    Bounds taken = paper.bounds();
    double width = Math.max(area.widthMm(), taken.width() + 2 * MARGIN);
    Size room = new Size(width, 3 * taken.height() + area.heightMm());
    annotate(paper, views, new Asked(room, notes));
    return finished(paper, scale, width);
  }

  /** One try at one scale. */
  private final class Attempt {
    private final Ruler ruler;
    private final Paper paper = new Paper();
    private final Map<Face, PlacedView> views = new LinkedHashMap<>();
    private final List<Detail> enlarged;
    private final List<Wanted> own = new ArrayList<>(wanted);

    Attempt(Ruler ruler, Depth depth) {
      this.ruler = ruler;
      this.enlarged = enlarged(ruler.factor(), depth);
      enlarged.forEach(each -> each.moved().forEach(moves -> own.remove(moves.before())));
    }

    Optional<Drawing> drawn(Scale scale) {
      boolean hopeless =
          ruler.mm(flat.size(Axis.X)) + LEAST_BESIDE > area.widthMm()
              || heightAt(scale) + LEAST_BESIDE > area.heightMm();
      return !hopeless
              && shown.keySet().stream().allMatch(this::place)
              && haveRoomAlone()
              && annotate(paper, views, new Asked(area, references()))
              && (enlarged.isEmpty() || !details.crossesDimensions(paper))
              && placeDetails()
          ? Optional.of(finished(paper, scale, area.widthMm()))
          : Optional.empty();
    }

    private boolean place(Face face) {
      PlacedView view = placed(face, ruler, paper);
      views.put(face, view);
      view.elements(shown.get(face)).forEach(paper::add);
      enlarged.stream()
          .filter(each -> each.view().face() == face)
          .forEach(each -> paper.add(each.ring(view)));
      return Tiers.place(paper, view, own) && fits(paper);
    }

    private boolean placeDetails() {
      return details.place(enlarged, paper, new Details.Room(area, bounds())) && fits(paper);
    }

    /** Whether the details find room where no note stands yet; else no place of notes helps. */
    private boolean haveRoomAlone() {
      Paper.State before = paper.state();
      boolean room = enlarged.isEmpty() || placeDetails();
      paper.backTo(before);
      return room;
    }

    private List<CutNote> references() {
      List<CutNote> all = new ArrayList<>(notes);
      enlarged.forEach(each -> all.add(each.reference(ruler.factor(), words)));
      return all;
    }

    private List<Bounds> bounds() {
      return views.values().stream().map(PlacedView::bounds).toList();
    }

    double tooWide() {
      return paper.elements().isEmpty() ? 0 : paper.bounds().width() + 2 * MARGIN - area.widthMm();
    }
  }

  private static Map<Face, Shown> projections(FlatPart flat) {
    Set<Face> views = PartViews.of(flat);
    List<Box> removed = flat.removed();
    boolean shaped = flat.isSlanted() || !flat.cuts(Cut.Shaped.class).isEmpty();
    Map<Face, Shown> shown = new LinkedHashMap<>();
    List.of(Face.FRONT, Face.BOTTOM, Face.TOP, Face.RIGHT, Face.LEFT).stream()
        .filter(views::contains)
        .forEach(
            face ->
                shown.put(
                    face,
                    shaped
                        ? new SolidView(flat, face)
                        : new Projection(flat.box(), removed, face)));
    return shown;
  }

  private PlacedView placed(Face face, Ruler ruler, Paper paper) {
    double right = ruler.mm(flat.size(Axis.X));
    double bottom = flat.size(Axis.Z).toMm() * ruler.factor();
    double taken =
        switch (face) {
          case RIGHT -> paper.boundsWithin(false, 0, bottom).right() - right;
          case LEFT -> -paper.boundsWithin(false, 0, bottom).left();
          case TOP -> -paper.boundsWithin(true, 0, right).top();
          case BOTTOM -> paper.boundsWithin(true, 0, right).bottom() - bottom;
          case FRONT, BACK -> -BETWEEN_VIEWS;
        };
    return new PlacedView(flat, face, ruler, taken + BETWEEN_VIEWS);
  }

  /** Notes, and the room for them. */
  private record Asked(Size room, List<CutNote> notes) {}

  private boolean annotate(Paper paper, Map<Face, PlacedView> views, Asked asked) {
    FaceLabels labels = new FaceLabels(paper, views.get(Face.FRONT), asked.room);
    return labels.place(flat.part(), mark.mark(), words)
        && new AllNotes(paper, new NotePlacer(paper, asked.room), views)
            .place(asked.notes, () -> labels.name(flat, words));
  }

  private List<Detail> enlarged(double factor, Depth depth) {
    return switch (depth) {
      case ALL -> details.of(mark.mark(), factor, wanted);
      case NEEDED -> details.needed(mark.mark(), factor, wanted);
      case NONE -> List.of();
    };
  }

  private boolean fits(Paper paper) {
    Bounds bounds = paper.bounds();
    return bounds.width() <= area.widthMm() - 2 * MARGIN
        && bounds.height() <= area.heightMm() - 2 * MARGIN;
  }

  private Drawing finished(Paper paper, Scale scale, double widthMm) {
    Bounds bounds = paper.bounds();
    double dx = (widthMm - bounds.width()) / 2 - bounds.left();
    double dy = MARGIN - bounds.top();
    List<Element> moved = new ArrayList<>();
    paper.elements().forEach(element -> moved.add(Moved.by(element, dx, dy)));
    return new Drawing(
        "part-" + mark.mark(),
        widthMm,
        bounds.height() + 2 * MARGIN,
        Optional.of(scale),
        List.of(new Group("part-" + mark.mark(), mark.mark(), mark.title(), moved)));
  }
}
