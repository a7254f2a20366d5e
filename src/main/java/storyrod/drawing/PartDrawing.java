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
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.geometry.Segment;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;
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
  private static final Length UNBROKEN = Length.mm(10);

  private final FlatPart flat;
  private final Mark mark;
  private final Size area;
  private final Map<Face, Shown> shown;
  private final TreeSet<Length> features;
  private final List<Wanted> wanted;
  private final List<CutNote> notes;
  private final Words words;

  private PartDrawing(Mark mark, Piece piece, Size area) {
    this.words = Words.ENGLISH;
    this.mark = mark;
    this.area = area;
    this.flat = FlatPart.of(mark.shown());
    this.shown = projections(flat);
    this.features = features();
    this.wanted = Measures.of(flat, piece.description().format(), words);
    this.notes = CutNotes.of(flat, piece, words);
  }

  /** The largest drawing of a mark's part that an area holds; it is as high as it needs to be. */
  public static Drawing draw(Mark mark, Piece piece, Size area) {
    return new PartDrawing(mark, piece, area).draw(Scales.in(piece.description().format().unit()));
  }

  /**
   * The largest drawing that an area holds, or nothing where no scale leaves room for all of it.
   */
  static Optional<Drawing> fitting(Mark mark, Piece piece, Size area) {
    return new PartDrawing(mark, piece, area)
        .fitting(Scales.in(piece.description().format().unit()));
  }

  private Drawing draw(List<Scale> scales) {
    return fitting(scales).orElseGet(() -> forced(scales));
  }

  private Optional<Drawing> fitting(List<Scale> scales) {
    Optional<Drawing> whole = Optional.empty();
    for (Scale scale : scales) {
      if (whole.isEmpty() && lengthAt(scale) >= SHORTEST_VIEW) {
        whole = new Attempt(Ruler.unbroken(scale.factor())).drawn(scale);
      }
    }
    boolean thin =
        whole.flatMap(Drawing::scale).stream().noneMatch(scale -> heightAt(scale) >= THIN_VIEW);
    return thin ? broken(scales, whole) : whole;
  }

  private double lengthAt(Scale scale) {
    return scale.paper() == scale.real()
        ? SHORTEST_VIEW
        : flat.size(Axis.X).toMm() * scale.factor();
  }

  private double heightAt(Scale scale) {
    return flat.size(Axis.Z).toMm() * scale.factor();
  }

  /** A long thin part reads better larger, with plain stretches left out. */
  private Optional<Drawing> broken(List<Scale> scales, Optional<Drawing> whole) {
    for (Scale scale : scales) {
      boolean larger =
          whole.flatMap(Drawing::scale).stream().noneMatch(each -> each.factor() >= scale.factor());
      if (larger && heightAt(scale) <= BROKEN_VIEW && lengthAt(scale) >= SHORTEST_VIEW) {
        Optional<Drawing> drawing = broken(scale);
        if (drawing.isPresent()) {
          return drawing;
        }
      }
    }
    return whole;
  }

  private Optional<Drawing> broken(Scale scale) {
    double width = area.widthMm() - LEAST_BESIDE;
    while (width > area.widthMm() / 2) {
      Attempt attempt = new Attempt(Ruler.broken(scale.factor(), features, width));
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
    annotate(paper, views, new Size(width, 3 * taken.height() + area.heightMm()));
    return finished(paper, scale, width);
  }

  private TreeSet<Length> features() {
    TreeSet<Length> features = new TreeSet<>(List.of(Length.ZERO, flat.size(Axis.X)));
    for (Cut cut : flat.cuts()) {
      switch (cut) {
        case Cut.Trench t -> addEnds(t.removed(), features);
        case Slanted.Slope s -> addStretch(s.first().x(), s.second().x(), features);
        case Slanted.Housing h -> addEnds(h.removed(), features);
        case Slots s -> s.centres().forEach(centre -> addEnds(s.around(centre), features));
        case Dovetails d -> addStretch(d.end().x().from(), d.end().x().to(), features);
        case SplineSlot s -> {
          Range reach = s.along() == Axis.X ? s.run() : s.profile().extent(Axis.X);
          addStretch(reach.from(), reach.to(), features);
        }
        case InPlace i -> i.bores().forEach(bore -> features.add(bore.mouth().x()));
        case Cut.Shaped s -> addShape(s.contour(), features);
        case Cut.Roundover r -> {}
        case Cut.Tenon t -> {
          addEnds(t.tenon(), features);
          t.haunch().ifPresent(haunch -> addEnds(haunch.box(), features));
        }
        case Comb c -> c.boxes().forEach(each -> addEnds(each, features));
        case Cut.Holes h -> h.centres().forEach(centre -> features.add(centre.x()));
        case PocketHoles p ->
            p.centres()
                .forEach(
                    centre -> {
                      features.add(Bores.mouth(flat, p, centre).x());
                      features.add(centre.x());
                    });
      }
    }
    return features;
  }

  private static void addEnds(Box box, TreeSet<Length> features) {
    features.addAll(List.of(box.x().from(), box.x().to()));
  }

  private void addShape(Contour contour, TreeSet<Length> features) {
    Curves.places(contour).forEach(features::add);
    for (Segment segment : contour.segments()) {
      if (segment instanceof Segment.Arc arc) {
        addStretch(arc.from().x(), arc.through().x(), features);
        addStretch(arc.through().x(), arc.to().x(), features);
      } else if (!segment.from().z().equals(segment.to().z())) {
        addStretch(segment.from().x(), segment.to().x(), features);
      }
    }
  }

  /** A slanted or curved line must not be broken, so it is a feature all along. */
  private void addStretch(Length one, Length other, TreeSet<Length> features) {
    Length to = one.max(other);
    for (Length at = one.min(other); at.isShorterThan(to); at = at.plus(UNBROKEN)) {
      features.add(at);
    }
    features.add(to);
  }

  /** One try at one scale. */
  private final class Attempt {
    private final Ruler ruler;
    private final Paper paper = new Paper();
    private final Map<Face, PlacedView> views = new LinkedHashMap<>();

    Attempt(Ruler ruler) {
      this.ruler = ruler;
    }

    Optional<Drawing> drawn(Scale scale) {
      boolean hopeless =
          ruler.mm(flat.size(Axis.X)) + LEAST_BESIDE > area.widthMm()
              || heightAt(scale) + LEAST_BESIDE > area.heightMm();
      return !hopeless
              && shown.keySet().stream().allMatch(this::place)
              && annotate(paper, views, area)
              && fits(paper)
          ? Optional.of(finished(paper, scale, area.widthMm()))
          : Optional.empty();
    }

    private boolean place(Face face) {
      PlacedView view = placed(face, ruler, paper);
      views.put(face, view);
      view.elements(shown.get(face)).forEach(paper::add);
      return Tiers.place(paper, view, wanted) && fits(paper);
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

  private boolean annotate(Paper paper, Map<Face, PlacedView> views, Size room) {
    FaceLabels labels = new FaceLabels(paper, views.get(Face.FRONT), room);
    NotePlacer placer = new NotePlacer(paper, room);
    return labels.place(flat.part(), mark.mark(), words)
        && notes.stream().allMatch(note -> placer.place(note, views.get(note.view())))
        && labels.name(flat, words);
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
        List.of(new Group("part-" + mark.mark(), mark.title(), moved)));
  }
}
