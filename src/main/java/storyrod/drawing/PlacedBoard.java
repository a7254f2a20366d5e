package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * A figure of a board at a place of the paper.
 *
 * @param origin its left top corner
 * @param factor mm on the paper for one of the board
 */
record PlacedBoard(BoardFigure figure, At origin, double factor, Paper paper) {
  static final double ARROW_MM = 3;
  static final double OFF_MM = 0.8;
  private static final double EDGE_MM = 1;

  /** The triangle that keeps the boards in order: its height and base as shares of the board. */
  private static final double APEX = 0.1;

  private static final double BASE = 0.3;
  private static final double MIDDLE = 0.82;
  private static final double GRAIN = 0.3;
  private static final double SHORTEST_GRAIN_MM = 7;

  /** A shorter arrow is but its two heads. */
  private static final double LEAST_ARROW_MM = 5;

  /** In a thinner one the heads of an arrow would stand on the glue lines. */
  private static final double LEAST_LAYER_MM = 2.2;

  PlacedBoard(BoardFigure figure, At origin, double factor) {
    this(figure, origin, factor, new Paper());
  }

  private BoardPlan plan() {
    return figure.plan();
  }

  private Bounds all() {
    Range length = new Range(Length.ZERO, plan().length());
    Range width = new Range(Length.ZERO, plan().width());
    return bounds(new BoardPlan.Block(length, width));
  }

  private Bounds bounds(BoardPlan.Block block) {
    Range level = figure.isUpright() ? block.y() : block.x();
    Range down = figure.isUpright() ? block.x() : block.y();
    return Bounds.of(
        origin.plus(mm(level.from()), mm(down.from())), origin.plus(mm(level.to()), mm(down.to())));
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
    return List.of(group, balloon);
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
    TieredDimensions dimensions = new TieredDimensions(paper, all(), figure.notation().format());
    double bottom = all().bottom();
    for (Range size : figure.level()) {
      At from = new At(origin.x() + mm(size.from()), bottom);
      At to = new At(origin.x() + mm(size.to()), bottom);
      dimensions.place(new Paper.Stretch(from, to), size.length(), 1);
    }
    for (Range size : figure.down()) {
      At from = new At(all().right(), origin.y() + mm(size.to()));
      At to = new At(all().right(), origin.y() + mm(size.from()));
      dimensions.place(new Paper.Stretch(from, to), size.length(), 1);
    }
  }

  /** The arrow along the grain where a board begins, with its word where that has room. */
  private List<Element> grain(Balloon balloon) {
    Paper.State before = paper.state();
    paper.add(balloon);
    List<Element> grain = freeGrain();
    paper.backTo(before);
    return grain;
  }

  private List<Element> freeGrain() {
    String word = figure.notation().words().say("grain");
    List<Label> labels = List.of(Label.of(TextStyle.SMALL, word));
    return plan().blocks().stream()
        .map(this::bounds)
        .map(this::start)
        .map(room -> Label.place(labels, room, Optional.of(!figure.isUpright())))
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
    return figure.isUpright() ? upright(block) : level(block);
  }

  private List<Element> level(Bounds block) {
    double offTip = block.left() + 4 * EDGE_MM;
    double x = Math.max(start(block).right() - SHORTEST_GRAIN_MM, offTip);
    double to = Math.min(x + SHORTEST_GRAIN_MM, block.right() - EDGE_MM);
    double y = block.middle().y();
    return to - x < LEAST_ARROW_MM
        ? List.of()
        : List.of(new Arrow(new At(x, y), new At(to, y), true));
  }

  /** Below the tip of the leader, which ends where the board begins; none on thin layers. */
  private List<Element> upright(Bounds block) {
    double y = Math.max(start(block).bottom() - SHORTEST_GRAIN_MM, tip().y() + 2 * EDGE_MM);
    double to = Math.min(y + SHORTEST_GRAIN_MM, block.bottom() - EDGE_MM);
    double x = block.middle().x();
    return to - y < LEAST_ARROW_MM || block.width() < LEAST_LAYER_MM
        ? List.of()
        : List.of(new Arrow(new At(x, y), new At(x, to), true));
  }

  /** The left of a board, the upper part of one that stands upright. */
  private Bounds start(Bounds block) {
    double along = figure.isUpright() ? block.height() : block.width();
    double run = Math.max(GRAIN * along, SHORTEST_GRAIN_MM + EDGE_MM);
    return figure.isUpright()
        ? new Bounds(block.left(), block.top(), block.right(), block.top() + run)
        : new Bounds(block.left(), block.top(), block.left() + run, block.bottom());
  }

  private At tip() {
    Bounds first = bounds(plan().blocks().getFirst());
    double in = Math.min(2 * EDGE_MM, first.width() / 2);
    double down = (first.top() + first.bottom()) / 2;
    double y = figure.isUpright() ? Math.min(down, origin.y() + Lowering.BALLOON_RADIUS) : down;
    return new At(first.left() + in, y);
  }

  private Balloon balloon(Bounds cell) {
    double radius = Lowering.BALLOON_RADIUS;
    double y = Math.max(tip().y(), cell.top() + radius + EDGE_MM);
    return new Balloon(new At(cell.left() + radius + EDGE_MM, y), tip(), plan().part().mark());
  }
}
