package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * A board that is glued up or sawn apart, seen on its face: its staves or strips with the glue
 * lines between them, an arrow where each clamp presses, what comes off toned, and its sizes.
 *
 * @param marks of all parts for which it stands
 * @param largest the most mm on the paper for one of the board
 */
record BoardFigure(
    BoardPlan plan, Notation notation, List<String> captions, List<String> marks, double largest)
    implements StripCell {
  /** What its balloon takes at the left. */
  private static final double BALLOON_MM = 13;

  private static final double EDGE_MM = 1;
  private static final double ARROW_MM = 3;
  private static final double OFF_MM = 0.8;

  /** The board's own height at least, and where its width is dimensioned. */
  private static final double LEAST_MM = 6.5;

  private static final double DIMENSIONED_MM = 15;

  /** The triangle that keeps the boards in order: its height and base as shares of the board. */
  private static final double APEX = 0.1;

  private static final double BASE = 0.3;
  private static final double MIDDLE = 0.82;
  private static final double GRAIN = 0.3;
  private static final double SHORTEST_GRAIN_MM = 7;

  /** A shorter arrow is but its two heads. */
  private static final double LEAST_ARROW_MM = 5;

  /** As large as its cell has room. */
  static BoardFigure of(BoardPlan plan, Notation notation, List<String> captions, List<Part> same) {
    List<String> marks = same.stream().map(Part::mark).distinct().toList();
    return new BoardFigure(plan, notation, captions, marks, Double.POSITIVE_INFINITY);
  }

  BoardFigure atMost(double factor) {
    return new BoardFigure(plan, notation, captions, marks, factor);
  }

  private double lengthMm() {
    return plan.length().toMm();
  }

  private double widthMm() {
    return plan.width().toMm();
  }

  private double above() {
    return EDGE_MM + (plan.clampsMm().isEmpty() ? 0 : ARROW_MM + OFF_MM);
  }

  private double below() {
    double arrows = plan.clampsMm().isEmpty() ? 0 : ARROW_MM + OFF_MM;
    return Math.max(arrows, tiers(plan.along())) + EDGE_MM + captions.size() * SmallLines.LINE_MM;
  }

  private double right() {
    return tiers(plan.across()) + EDGE_MM;
  }

  private static double tiers(List<Range> sizes) {
    return sizes.isEmpty()
        ? 0
        : TieredDimensions.FIRST_MM + (sizes.size() - 1) * TieredDimensions.NEXT_MM + EDGE_MM;
  }

  @Override
  public String mark() {
    return plan.part().mark();
  }

  @Override
  public double shape() {
    return lengthMm() / widthMm();
  }

  @Override
  public double heightMm(double cellMm) {
    double wide = (cellMm - BALLOON_MM - right()) / shape();
    return Math.min(wide, largest * widthMm()) + above() + below();
  }

  @Override
  public double leastMm() {
    return above() + (plan.across().isEmpty() ? LEAST_MM : DIMENSIONED_MM) + below();
  }

  @Override
  public List<Element> in(Bounds cell) {
    boolean isTooSlim =
        Strips.isNarrow(cell.width())
            && plan.across().stream().anyMatch(size -> beyond(size, factor(cell)) > 0);
    BoardFigure shown =
        isTooSlim
            ? new BoardFigure(plan.withoutWidths(), notation, captions, marks, largest)
            : this;
    At origin = new At(cell.left() + BALLOON_MM, cell.top() + above());
    return new Placed(shown, origin, shown.factor(cell)).elements(cell);
  }

  /** Smaller where figures that a short size has no room for would stand out of the cell. */
  private double factor(Bounds cell) {
    double factor = factor(cell, right());
    return factor(cell, Math.max(right(), figuresMm(factor)));
  }

  private double factor(Bounds cell, double rightMm) {
    double fitting =
        Math.min(
            (cell.width() - BALLOON_MM - rightMm) / lengthMm(),
            (cell.height() - above() - below()) / widthMm());
    return Math.min(fitting, largest);
  }

  /** How far the figures of sizes along a board of a scale run out at its right end. */
  private double figuresMm(double factor) {
    return plan.along().stream()
        .mapToDouble(
            size -> beyond(size, factor) - (plan.length().minus(size.to()).toMm()) * factor)
        .map(run -> run + EDGE_MM)
        .max()
        .orElse(0);
  }

  private double beyond(Range size, double factor) {
    At to = new At(size.length().toMm() * factor, 0);
    String figures = notation.format().format(size.length());
    return DimensionLayout.of(new Dimension(new At(0, 0), to, true, 0, figures, size.length()))
        .beyond();
  }

  /** The figure at a place of the paper, so large. */
  private record Placed(BoardFigure figure, At origin, double factor, Paper paper) {
    Placed(BoardFigure figure, At origin, double factor) {
      this(figure, origin, factor, new Paper());
    }

    private BoardPlan plan() {
      return figure.plan;
    }

    private Bounds all() {
      return Bounds.of(origin, origin.plus(figure.lengthMm() * factor, figure.widthMm() * factor));
    }

    private Bounds bounds(BoardPlan.Block block) {
      return Bounds.of(
          origin.plus(mm(block.x().from()), mm(block.y().from())),
          origin.plus(mm(block.x().to()), mm(block.y().to())));
    }

    private double mm(Length length) {
      return length.toMm() * factor;
    }

    List<Element> elements(Bounds cell) {
      if (plan().isWaste()) {
        paper.add(new Area(Tone.SIDE, List.of(all().corners())));
      }
      plan().blocks().forEach(this::add);
      paper.add(new Line(Role.VISIBLE, all().outline()));
      if (plan().clampsMm().size() > 0) {
        triangle();
        plan().clampsMm().forEach(this::clamp);
      }
      dimensions();
      Balloon balloon = balloon(cell);
      grain(balloon).forEach(paper::add);
      Group group =
          new Group(
              Ink.id(plan().part()), plan().part().mark(), plan().part().title(), paper.elements());
      return Stream.concat(Stream.of(group, balloon), figure.captions(cell).stream()).toList();
    }

    private void add(BoardPlan.Block block) {
      Bounds bounds = bounds(block);
      paper.add(new Area(Tone.TOP, List.of(bounds.corners())));
      paper.add(new Line(Role.THIN, bounds.outline()));
    }

    private void triangle() {
      Bounds all = all();
      double middle = all.left() + MIDDLE * all.width();
      double half = Math.min(BASE * all.width(), all.height()) / 2;
      At apex = new At(middle, all.top() + APEX * all.height());
      double base = all.bottom() - APEX * all.height();
      At right = new At(middle + half, base);
      paper.add(new Line(Role.THIN, List.of(apex, right, new At(middle - half, base), apex)));
    }

    private void clamp(double atMm) {
      double x = origin.x() + atMm * factor;
      double top = origin.y() - OFF_MM;
      double bottom = all().bottom() + OFF_MM;
      paper.add(new Arrow(new At(x, top - ARROW_MM), new At(x, top), false));
      paper.add(new Arrow(new At(x, bottom + ARROW_MM), new At(x, bottom), false));
    }

    private void dimensions() {
      TieredDimensions dimensions = new TieredDimensions(paper, all(), figure.notation.format());
      double bottom = all().bottom();
      for (Range size : plan().along()) {
        At from = new At(origin.x() + mm(size.from()), bottom);
        At to = new At(origin.x() + mm(size.to()), bottom);
        dimensions.place(new Paper.Stretch(from, to), size.length(), 1);
      }
      for (Range size : plan().across()) {
        At from = new At(all().right(), origin.y() + mm(size.to()));
        At to = new At(all().right(), origin.y() + mm(size.from()));
        dimensions.place(new Paper.Stretch(from, to), size.length(), 1);
      }
    }

    /** The arrow along the grain at the left of a board, with its word where that has room. */
    private List<Element> grain(Balloon balloon) {
      Paper.State before = paper.state();
      paper.add(balloon);
      List<Element> grain = freeGrain();
      paper.backTo(before);
      return grain;
    }

    private List<Element> freeGrain() {
      String word = figure.notation.words().say("grain");
      List<Label> labels = List.of(Label.of(TextStyle.SMALL, word));
      return plan().blocks().stream()
          .map(this::bounds)
          .map(Placed::atTheLeft)
          .map(room -> Label.place(labels, room, Optional.of(true)))
          .filter(found -> found.size() > 1 && found.stream().allMatch(this::isLevelAndFree))
          .findFirst()
          .orElseGet(this::bareGrain);
    }

    private boolean isLevelAndFree(Element element) {
      return paper.hasRoomFor(element) && (!(element instanceof Text text) || text.upright());
    }

    /** None on a board that is too short for an arrow beside the tip of its leader. */
    private List<Element> bareGrain() {
      Bounds block = bounds(plan().blocks().getLast());
      double offTip = block.left() + 4 * EDGE_MM;
      double x = Math.max(atTheLeft(block).right() - SHORTEST_GRAIN_MM, offTip);
      double to = Math.min(x + SHORTEST_GRAIN_MM, block.right() - EDGE_MM);
      double y = block.middle().y();
      return to - x < LEAST_ARROW_MM
          ? List.of()
          : List.of(new Arrow(new At(x, y), new At(to, y), true));
    }

    private static Bounds atTheLeft(Bounds block) {
      double right = block.left() + Math.max(GRAIN * block.width(), SHORTEST_GRAIN_MM + EDGE_MM);
      return new Bounds(block.left(), block.top(), right, block.bottom());
    }

    private Balloon balloon(Bounds cell) {
      double radius = Lowering.BALLOON_RADIUS;
      Bounds first = bounds(plan().blocks().getFirst());
      At tip = new At(first.left() + 2 * EDGE_MM, (first.top() + first.bottom()) / 2);
      double y = Math.max(tip.y(), cell.top() + radius + EDGE_MM);
      return new Balloon(new At(cell.left() + radius + EDGE_MM, y), tip, plan().part().mark());
    }
  }

  private List<Element> captions(Bounds cell) {
    return SmallLines.endingAt(new At(cell.left() + EDGE_MM, cell.bottom() - EDGE_MM), captions);
  }
}
