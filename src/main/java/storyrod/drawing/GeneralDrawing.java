package storyrod.drawing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * Views of several parts together, third angle: the view from the right stands on the right, the
 * one from above on top, or that from the front below it. It is as large as the standard scales and
 * its room allow.
 */
final class GeneralDrawing {
  private static final double BETWEEN_VIEWS = 8;
  private static final double LEAST_BESIDE = 13;
  static final double MARGIN = 1;

  /** Nearer to a letter a name is read together with it. */
  private static final double CAPTION_BESIDE = 4;

  private static final double CAPTION_BELOW = 3.5;
  private static final double CAPTION_ABOVE = 2;
  private static final int MOST_TRIES = 4;

  /** One inner dimension of so many may be left out where it finds no room. */
  private static final int MOST_LEFT_OUT = 5;

  private final Plan plan;
  private final Size area;
  private final List<Wanted> overall;

  /**
   * What a drawing shows.
   *
   * @param views in the order in which they are placed, the first of them at the bottom left
   * @param captions what stands below each view
   * @param balloons marks and where they may point
   */
  record Plan(
      String name,
      List<Elevation> views,
      Map<Face, String> captions,
      List<Wanted> wanted,
      List<CutNote> notes,
      Optional<CuttingPlane> plane,
      Optional<Section> section,
      List<Pointer> balloons) {
    Plan {
      views = List.copyOf(views);
      wanted = List.copyOf(wanted);
      notes = List.copyOf(notes);
      balloons = List.copyOf(balloons);
    }

    /** Those dimensions that run over a whole view. */
    List<Wanted> overall() {
      return wanted.stream()
          .filter(
              each ->
                  views.stream()
                      .anyMatch(
                          view ->
                              view.face() == each.view()
                                  && view.box().on(each.axis()).equals(each.range())))
          .toList();
    }
  }

  /** A mark, and the point of a view at full size to which its leader runs. */
  record Pointer(String mark, Face view, At at) {}

  private GeneralDrawing(Plan plan, Size area) {
    this.plan = plan;
    this.area = area;
    this.overall = plan.overall();
  }

  /** The largest drawing that an area holds, or nothing where no scale leaves room for it. */
  static Optional<Drawing> fitting(Plan plan, List<Scale> scales, Size area) {
    GeneralDrawing drawing = new GeneralDrawing(plan, area);
    int tries = 0;
    for (Scale scale : scales) {
      if (drawing.mayFit(scale) && tries++ < MOST_TRIES) {
        Optional<Drawing> drawn = drawing.new Attempt(scale).drawn();
        if (drawn.isPresent()) {
          return drawn;
        }
      }
    }
    return Optional.empty();
  }

  static boolean mayFit(Plan plan, Scale scale, Size area) {
    return new GeneralDrawing(plan, area).mayFit(scale);
  }

  private boolean mayFit(Scale scale) {
    return size(Axis.X, scale) + LEAST_BESIDE <= area.widthMm()
        && size(Axis.Z, scale) + LEAST_BESIDE <= area.heightMm();
  }

  /** The views at one scale with all that stands beside them, or nothing where they do not fit. */
  static Optional<Laid> laid(Plan plan, Scale scale, Size area) {
    GeneralDrawing drawing = new GeneralDrawing(plan, area);
    return drawing.mayFit(scale) ? drawing.new Attempt(scale).laid() : Optional.empty();
  }

  /**
   * Views laid out, not yet brought onto their sheet.
   *
   * @param floor the y on paper of the first view's lower edge
   */
  record Laid(List<Element> elements, Bounds bounds, double floor) {
    List<Element> moved(double dx, double dy) {
      return elements.stream().map(each -> Moved.by(each, dx, dy)).toList();
    }
  }

  /** What the views take across the paper, or down it for any other axis. */
  private double size(Axis axis, Scale scale) {
    double size = 0;
    for (Elevation view : plan.views()) {
      boolean first = view == plan.views().getFirst();
      boolean counts = first || (axis == Axis.X) == (view.face().axis() == Axis.X);
      Axis own = axis == Axis.X ? view.across() : view.up();
      size += counts ? view.box().size(own).toMm() * scale.factor() : 0;
    }
    return size;
  }

  /** One try at one scale. */
  private final class Attempt {
    private final Scale scale;
    private final Paper paper = new Paper();
    private final Map<Face, GeneralView> placed = new EnumMap<>(Face.class);
    private int leftOut;

    Attempt(Scale scale) {
      this.scale = scale;
    }

    Optional<Drawing> drawn() {
      return laid().map(this::finished);
    }

    Optional<Laid> laid() {
      for (Elevation view : plan.views()) {
        if (!place(view)) {
          return Optional.empty();
        }
      }
      double floor = placed.get(plan.views().getFirst().face()).bounds().bottom();
      return plan.views().stream().allMatch(this::caption)
              && annotate()
              && fits()
              && leftOut <= plan.wanted().size() / MOST_LEFT_OUT
          ? Optional.of(new Laid(paper.elements(), paper.bounds(), floor))
          : Optional.empty();
    }

    private boolean place(Elevation view) {
      GeneralView there = GeneralView.at(view, scale.factor(), corner(view));
      placed.put(view.face(), there);
      view.elements(there.fit()).forEach(paper::add);
      plan.section()
          .ifPresent(section -> new CutFaces(section, there.fit()).elements().forEach(paper::add));
      if (view.face() == Face.FRONT) {
        plan.plane().ifPresent(plane -> plane.addTo(paper, there));
      }
      List<Wanted> left = Tiers.placeMost(paper, there, plan.wanted());
      leftOut += left.size();
      return left.stream().noneMatch(overall::contains) && fits();
    }

    private At corner(Elevation view) {
      if (placed.isEmpty()) {
        return new At(0, 0);
      }
      Bounds first = placed.get(plan.views().getFirst().face()).bounds();
      if (view.face().axis() == Axis.X) {
        double right = paper.boundsWithin(false, first.top(), first.bottom()).right();
        return new At(right + BETWEEN_VIEWS, first.top());
      }
      Bounds column = paper.boundsWithin(true, first.left(), first.right());
      if (view.face() == Face.FRONT) {
        return new At(first.left(), column.bottom() + BETWEEN_VIEWS);
      }
      double high = view.box().size(view.up()).toMm() * scale.factor();
      return new At(first.left(), column.top() - BETWEEN_VIEWS - high);
    }

    private boolean caption(Elevation view) {
      String words = plan.captions().get(view.face());
      Bounds bounds = placed.get(view.face()).bounds();
      double size = TextStyle.NOTE.sizeMm();
      double width = TextSetting.of(TextStyle.NOTE, words).width();
      double middle = (bounds.left() + bounds.right() - width) / 2;
      At wished =
          view.face() == Face.TOP
              ? new At(bounds.left(), bounds.top() - CAPTION_ABOVE - size)
              : new At(middle, bounds.bottom() + CAPTION_BELOW);
      Optional<At> corner =
          new FreePlace(paper, area)
              .near(wished.plus(-CAPTION_BESIDE, 0), width + 2 * CAPTION_BESIDE, size);
      corner
          .map(at -> at.plus(CAPTION_BESIDE, size * TextSetting.ASCENT))
          .ifPresent(at -> paper.add(new Text(TextStyle.NOTE, at, Anchor.START, true, words)));
      return corner.isPresent();
    }

    private boolean annotate() {
      BalloonPlacer balloons = new BalloonPlacer(paper, area);
      for (Pointer pointer : plan.balloons()) {
        At tip = placed.get(pointer.view()).fit().on(pointer.at());
        if (!balloons.place(pointer.mark(), tip)) {
          return false;
        }
      }
      NotePlacer notes = new NotePlacer(paper, area);
      notes.keepOff(balloons.leaders());
      return new AllNotes(paper, notes, placed).place(plan.notes(), () -> true);
    }

    private boolean fits() {
      Bounds bounds = paper.bounds();
      return bounds.width() <= area.widthMm() - 2 * MARGIN
          && bounds.height() <= area.heightMm() - 2 * MARGIN;
    }

    private Drawing finished(Laid laid) {
      Bounds bounds = laid.bounds();
      double dx = (area.widthMm() - bounds.width()) / 2 - bounds.left();
      return new Drawing(
          plan.name(),
          area.widthMm(),
          bounds.height() + 2 * MARGIN,
          Optional.of(scale),
          laid.moved(dx, MARGIN - bounds.top()));
    }
  }

  /** The faces that a plan's views show. */
  static Set<Face> faces(List<Elevation> views) {
    Set<Face> faces = new TreeSet<>();
    views.forEach(view -> faces.add(view.face()));
    return faces;
  }
}
