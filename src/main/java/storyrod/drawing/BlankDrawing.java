package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.StockKind;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.KeptBoard;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** A blank to scale with the cuts that free its kept pieces, numbered in their order. */
final class BlankDrawing {
  private static final double MARGIN = 1;
  private static final double RING_ROOM = 5;
  private static final double DIGIT = 0.9;
  private static final double GRAIN_MM = 8;

  private final Mark mark;
  private final Piece piece;
  private final KeptBoard board;
  private final BlankPlan plan;
  private final LengthFormat format;
  private final Words words;
  private final double factor;
  private final Paper paper = new Paper();

  private BlankDrawing(Mark mark, Piece piece, Scale scale) {
    this.mark = mark;
    this.piece = piece;
    this.board = piece.keptBoard(mark.shown().name()).orElseThrow();
    this.plan = BlankPlan.of(board);
    this.format = piece.description().printed();
    this.words = piece.description().words();
    this.factor = scale.factor();
  }

  /** The largest drawing of the blank of a mark's part that an area holds, as high as it needs. */
  static Drawing draw(Mark mark, Piece piece, Size area) {
    List<Scale> scales = Scales.in(piece.description().printed().unit());
    return fitting(mark, piece, area)
        .orElseGet(() -> new BlankDrawing(mark, piece, scales.getLast()).drawn(scales.getLast()));
  }

  /** The largest drawing that an area holds, or nothing where no scale fits. */
  static Optional<Drawing> fitting(Mark mark, Piece piece, Size area) {
    return Scales.in(piece.description().printed().unit()).stream()
        .filter(scale -> mark.shown().finishedLength().toMm() * scale.factor() < area.widthMm())
        .map(scale -> new BlankDrawing(mark, piece, scale).drawn(scale))
        .filter(drawing -> drawing.widthMm() <= area.widthMm())
        .filter(drawing -> drawing.heightMm() <= area.heightMm())
        .map(drawing -> centred(drawing, area.widthMm()))
        .findFirst();
  }

  /** Where the wood lies in a drawing that was made here: its one thick line runs round it. */
  static Bounds wood(List<Element> drawing) {
    return drawing.stream()
        .flatMap(each -> each instanceof Group group ? group.elements().stream() : Stream.empty())
        .flatMap(each -> each instanceof Line line ? Stream.of(line) : Stream.empty())
        .filter(line -> line.role() == Role.VISIBLE)
        .map(line -> Bounds.around(line.points()))
        .findFirst()
        .orElseThrow();
  }

  private static Drawing centred(Drawing drawing, double widthMm) {
    double dx = (widthMm - drawing.widthMm()) / 2;
    List<Element> moved = drawing.elements().stream().map(each -> Moved.by(each, dx, 0)).toList();
    return new Drawing(drawing.name(), widthMm, drawing.heightMm(), drawing.scale(), moved);
  }

  private Drawing drawn(Scale scale) {
    plan.pieces().forEach(this::add);
    outline(bounds(all(plan.length()), all(plan.width())), Role.VISIBLE);
    addNumbers();
    addDimensions();
    labelPieces();
    Bounds bounds = paper.bounds();
    List<Element> moved = new ArrayList<>();
    double dx = MARGIN - bounds.left();
    double dy = MARGIN - bounds.top();
    paper.elements().forEach(element -> moved.add(Moved.by(element, dx, dy)));
    return new Drawing(
        "blank-" + mark.mark(),
        bounds.width() + 2 * MARGIN,
        bounds.height() + 2 * MARGIN,
        Optional.of(scale),
        List.of(new Group("blank-" + mark.mark(), mark.mark(), mark.title(), moved)));
  }

  private static Range all(Length size) {
    return new Range(Length.ZERO, size);
  }

  private double mm(Length length) {
    return length.toMm() * factor;
  }

  private Bounds bounds(Range x, Range y) {
    return new Bounds(mm(x.from()), mm(y.from()), mm(x.to()), mm(y.to()));
  }

  private void outline(Bounds bounds, Role role) {
    paper.add(new Line(role, bounds.outline()));
  }

  private void add(BlankPlan.Block block) {
    Bounds bounds = bounds(block.x(), block.y());
    Tone tone = block.kept().isPresent() ? Tone.PALE : Tone.WHITE;
    paper.add(new Drawing.Area(tone, List.of(bounds.corners())));
    outline(bounds, Role.THIN);
  }

  /** A ringed number where each cut leaves the wood, with what the tool takes. */
  private void addNumbers() {
    CutNumbers numbers =
        new CutNumbers(
            paper,
            new Bounds(0, 0, mm(plan.length()) + 2 * RING_ROOM, mm(plan.width()) + RING_ROOM));
    plan.cuts().forEach(cut -> number(cut, numbers));
  }

  private void number(BlankPlan.Cut cut, CutNumbers numbers) {
    Bounds kerf = bounds(cut.x(), cut.y());
    double x = (kerf.left() + kerf.right()) / 2;
    double y = (kerf.top() + kerf.bottom()) / 2;
    Paper.Stretch stretch =
        cut.isRip()
            ? new Paper.Stretch(new At(kerf.left(), y), new At(kerf.right(), y))
            : new Paper.Stretch(new At(x, kerf.top()), new At(x, kerf.bottom()));
    boolean leaves = cut.isRip() && board.isSawn();
    numbers.place(cut.number(), stretch, leaves);
    if (leaves) {
      remark(new At(kerf.right() + RING_ROOM, y + DIGIT));
    }
  }

  private void remark(At at) {
    String said = words.say("part.blank-kerf", format.format(board.kerf()));
    Text text = new Text(TextStyle.SMALL, at, Anchor.START, true, said);
    if (paper.hasRoomFor(text)) {
      paper.add(text);
    }
  }

  private void addDimensions() {
    double bottom = mm(plan.width());
    for (Range size : inOrder(plan.across())) {
      place(false, size, 0, -1);
    }
    place(false, all(plan.width()), 0, -1);
    for (BlankPlan.Along strip : plan.along()) {
      boolean above = plan.along().indexOf(strip) == 0;
      double edge = mm(above ? strip.strip().from() : strip.strip().to());
      for (Range size : inOrder(strip.sizes())) {
        place(true, size, edge, above ? -1 : 1);
      }
    }
    place(true, all(plan.length()), bottom, 1);
  }

  private static List<Range> inOrder(List<Range> ranges) {
    return ranges.stream().sorted(Comparator.comparing(Range::from)).toList();
  }

  /**
   * Adds a dimension.
   *
   * @param start where the measured points lie across the measured direction
   * @param side below zero for a line above or left of the blank, above zero for one below it
   */
  private void place(boolean alongX, Range size, double start, int side) {
    At from = alongX ? new At(mm(size.from()), start) : new At(start, mm(size.to()));
    At to = alongX ? new At(mm(size.to()), start) : new At(start, mm(size.from()));
    new TieredDimensions(paper, bounds(all(plan.length()), all(plan.width())), format)
        .place(new Paper.Stretch(from, to), size.length(), side);
  }

  private void labelPieces() {
    plan.pieces().stream().filter(each -> each.kept().isPresent()).forEach(this::label);
    plan.pieces().stream()
        .filter(each -> each.kept().isEmpty())
        .map(this::grain)
        .filter(arrow -> !arrow.isEmpty())
        .findFirst()
        .ifPresent(arrow -> arrow.forEach(paper::add));
  }

  private List<Element> grain(BlankPlan.Block block) {
    boolean grained =
        board.board().stock().kind() == StockKind.SOLID || board.board().stock().grained();
    if (!grained) {
      return List.of();
    }
    Bounds room = bounds(block.x(), block.y());
    List<Label> word = List.of(Label.of(TextStyle.SMALL, words.say("grain")));
    return Stream.of(Label.place(word, room, Optional.of(true)), bareGrain(room))
        .filter(found -> found.stream().anyMatch(Arrow.class::isInstance))
        .filter(found -> found.stream().allMatch(paper::hasRoomFor))
        .findFirst()
        .orElse(List.of());
  }

  /** The arrow alone, where there is no room for its word as well. */
  private static List<Element> bareGrain(Bounds room) {
    At middle = room.middle();
    double half = GRAIN_MM / 2;
    return room.width() > 2 * GRAIN_MM
        ? List.of(new Arrow(middle.plus(-half, 0), middle.plus(half, 0), true))
        : List.of();
  }

  private void label(BlankPlan.Block block) {
    Part part = piece.part(block.kept().orElseThrow());
    String size =
        words.say(
            "layout.size", format.format(block.x().length()), format.format(block.y().length()));
    Label letter = Label.of(TextStyle.TITLE, part.mark());
    List<Label> labels =
        List.of(
            letter.and(TextStyle.NOTE, words.say("part.blank-kept", size)),
            letter.and(TextStyle.SMALL, size),
            letter,
            Label.of(TextStyle.SMALL, part.mark()));
    free(block, labels).forEach(paper::add);
  }

  /** The label where it touches neither a number nor a line, the grain arrow with it. */
  private List<Element> free(BlankPlan.Block block, List<Label> labels) {
    Bounds room = bounds(block.x(), block.y());
    for (Label label : labels) {
      for (Optional<Boolean> grain : List.of(Optional.of(true), Optional.<Boolean>empty())) {
        List<Element> elements = Label.place(List.of(label), room, grain);
        if (!elements.isEmpty() && elements.stream().allMatch(paper::hasRoomFor)) {
          return elements;
        }
      }
    }
    return List.of();
  }
}
