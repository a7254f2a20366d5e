package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.PartDrawing.Depth;
import storyrod.drawing.PartDrawing.Laying;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Dovetails;

/** Looks for the largest drawing of a part that an area holds. */
final class PartFitting {
  private static final double MARGIN = LaidViews.MARGIN;
  private static final double THIN_VIEW = 16;
  private static final double BROKEN_VIEW = 32;
  private static final double SHORTEST_VIEW = 40;
  private static final double LEAST_BESIDE = 14;
  private static final double BREAK_STEP = 4;

  private final PartDrawing part;
  private final FlatPart flat;
  private final Size area;

  /** What failed, and how much too wide it was, in mm. */
  private final Map<Laying, Double> failed = new LinkedHashMap<>();

  PartFitting(PartDrawing part, Size area) {
    this.part = part;
    this.flat = part.flat();
    this.area = area;
  }

  /** The largest drawing; where no scale leaves room for all, the paper grows downwards. */
  Drawing draw() {
    return fitting(part.scales())
        .or(() -> fitting(part.scales(), List.of(Depth.NONE)))
        .orElseGet(() -> forced(part.scales()));
  }

  /** The largest drawing to one of some scales, the largest of which comes first. */
  Optional<Drawing> fitting(List<Scale> scales) {
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
    return depths.stream().flatMap(depth -> drawn(scale, ruler, depth).stream()).findFirst();
  }

  private Optional<Drawing> broken(Scale scale, Depth depth) {
    double width = area.widthMm() - LEAST_BESIDE;
    while (width > SHORTEST_VIEW) {
      Ruler ruler = Ruler.broken(scale.factor(), part.features(), width);
      Optional<Drawing> drawing = drawn(scale, ruler, depth);
      if (drawing.isPresent()) {
        return drawing;
      }
      width -= Math.max(BREAK_STEP, failed.get(part.laying(ruler, depth)));
    }
    return Optional.empty();
  }

  /** Tries no ruler twice: where nothing can be broken off, all widths come to the same. */
  private Optional<Drawing> drawn(Scale scale, Ruler ruler, Depth depth) {
    Laying laying = part.laying(ruler, depth);
    if (failed.containsKey(laying)) {
      return Optional.empty();
    }
    Attempt attempt = new Attempt(laying);
    Optional<Drawing> drawing = attempt.drawn(scale);
    if (drawing.isEmpty()) {
      failed.put(laying, attempt.tooWide());
    }
    return drawing;
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
    for (Face face : part.shown().keySet()) {
      PlacedView view = LaidViews.placed(flat, face, Ruler.unbroken(scale.factor()), paper);
      views.put(face, view);
      view.elements(part.shown().get(face)).forEach(paper::add);
      Tiers.force(paper, view, part.wanted());
    }
    Bounds taken = paper.bounds();
    double width = Math.max(area.widthMm(), taken.width() + 2 * MARGIN);
    Size room = new Size(width, 3 * taken.height() + area.heightMm());
    annotate(paper, views, new Asked(room, part.notes()));
    return finished(paper, scale, width);
  }

  /** One try at one scale. */
  private final class Attempt {
    private final Ruler ruler;
    private final LaidViews laid;
    private final Paper paper;
    private final List<Detail> enlarged;
    private Bounds taken = Bounds.NONE;

    Attempt(Laying laying) {
      this.ruler = laying.ruler();
      this.laid = part.laid(laying);
      this.paper = laid.paper();
      this.enlarged = part.enlarged(ruler.factor(), laying.depth());
    }

    Optional<Drawing> drawn(Scale scale) {
      if (isHopeless(scale)) {
        return Optional.empty();
      }
      boolean fits = laid.fit(area);
      boolean done = fits && complete();
      taken = fits ? paper.bounds() : laid.asFarAs(area);
      return done ? Optional.of(finished(paper, scale, area.widthMm())) : Optional.empty();
    }

    private boolean isHopeless(Scale scale) {
      return ruler.mm(flat.size(Axis.X)) + LEAST_BESIDE > area.widthMm()
          || heightAt(scale) + LEAST_BESIDE > area.heightMm();
    }

    private boolean complete() {
      boolean hasRows = !flat.cuts(Dovetails.class).isEmpty();
      return haveRoomAlone() && (notesFirst() || hasRows && detailsFirst());
    }

    private boolean notesFirst() {
      Paper.State before = paper.state();
      boolean done = annotated() && placeDetails();
      if (!done) {
        paper.backTo(before);
      }
      return done;
    }

    /** Where the high details of rows leave room for notes, but not the other way round. */
    private boolean detailsFirst() {
      return placeDetails() && annotated() && LaidViews.fits(paper.bounds(), area);
    }

    private boolean annotated() {
      return annotate(paper, laid.views(), new Asked(area, references()))
          && (enlarged.isEmpty() || !part.details().crossesDimensions(paper));
    }

    private boolean placeDetails() {
      return part.details().place(enlarged, paper, new Details.Room(area, bounds()))
          && LaidViews.fits(paper.bounds(), area);
    }

    /** Whether the details find room where no note stands yet; else no place of notes helps. */
    private boolean haveRoomAlone() {
      Paper.State before = paper.state();
      boolean room = enlarged.isEmpty() || placeDetails();
      paper.backTo(before);
      return room;
    }

    private List<CutNote> references() {
      List<CutNote> all = new ArrayList<>(part.notes());
      enlarged.forEach(each -> all.add(each.reference(ruler.factor(), part.words())));
      return all;
    }

    private List<Bounds> bounds() {
      return laid.views().values().stream().map(PlacedView::bounds).toList();
    }

    double tooWide() {
      return taken.equals(Bounds.NONE) ? 0 : taken.width() + 2 * MARGIN - area.widthMm();
    }
  }

  /** Notes, and the room for them. */
  private record Asked(Size room, List<CutNote> notes) {}

  private boolean annotate(Paper paper, Map<Face, PlacedView> views, Asked asked) {
    FaceLabels labels = new FaceLabels(paper, views.get(Face.FRONT), asked.room);
    return labels.place(flat.part(), part.mark().mark(), part.words())
        && new AllNotes(paper, new NotePlacer(paper, asked.room), views)
            .place(asked.notes, () -> labels.name(flat, part.words()));
  }

  private Drawing finished(Paper paper, Scale scale, double widthMm) {
    Bounds bounds = paper.bounds();
    double dx = (widthMm - bounds.width()) / 2 - bounds.left();
    double dy = MARGIN - bounds.top();
    List<Element> moved = new ArrayList<>();
    paper.elements().forEach(element -> moved.add(Moved.by(element, dx, dy)));
    return new Drawing(
        "part-" + part.mark().mark(),
        widthMm,
        bounds.height() + 2 * MARGIN,
        Optional.of(scale),
        List.of(
            new Group(
                "part-" + part.mark().mark(), part.mark().mark(), part.mark().title(), moved)));
  }
}
