package storyrod.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.geometry.Lazy;
import storyrod.geometry.Parallel;
import storyrod.piece.Piece;

/** Draws each kind of joint once: at the left taken apart, at the right put together and sawn. */
final class JointSheets {
  private static final double APART_SHARE = 0.44;
  private static final double EDGE_MM = 1;

  /** What a ringed mark takes beside a picture. */
  private static final double MARK_MM = 9;

  private static final double CAPTION_MM = 4.5;

  /** What is finer than full size shows is enlarged (ISO 5455). */
  private static final List<Scale> FINER = List.of(new Scale(5, 1), new Scale(2, 1));

  private static final int MOST_TRIES = 5;

  /** A section larger than this can be read well; what is missing counts as dimensions do. */
  private static final double READABLE_MM = 20;

  private static final double MM_PER_DIMENSION = 5;

  /** In a smaller scale than 1:5 a screw or dowel is a mere dash, whatever dimensions it saves. */
  private static final double LEAST_FACTOR = 0.2;

  private static final double UNREADABLE = 100;

  private final Shown shown;
  private final Notation notation;
  private final Size room;

  private JointSheets(Shown shown, Notation notation, Size room) {
    this.shown = shown;
    this.notation = notation;
    this.room = room;
  }

  /** A kind of joint as it is seen apart and sawn, and its figures: the same in any room. */
  private record Shown(JointKind kind, JointApart apart, JointSection sawn, List<Wanted> wanted) {
    static Shown of(JointKind kind, List<Hardware> hardware, Notation notation) {
      return new Shown(
          kind,
          JointApart.of(kind.shown()),
          JointSection.of(kind.shown(), hardware, FINER.getFirst()),
          JointFigures.of(kind.shown(), notation));
    }
  }

  /** What draws those of a piece for some rooms; what it sees of them is worked out once. */
  static Function<Rooms, List<JointSheet>> of(Piece piece, List<Hardware> hardware) {
    Notation notation = Notation.of(piece);
    List<Lazy<Shown>> all =
        JointKind.of(piece).stream()
            .map(kind -> new Lazy<>(() -> Shown.of(kind, hardware, notation)))
            .toList();
    return rooms -> numbered(alike(sheets(all, notation, rooms.joint())));
  }

  private static List<JointSheet> sheets(List<Lazy<Shown>> all, Notation notation, Size room) {
    return Parallel.map(all, shown -> new JointSheets(shown.get(), notation, room).sheet());
  }

  /**
   * Joints that differ in a place alone, for which the section had no room, look alike: where each
   * lies is told in the part drawings, so one drawing does.
   */
  private static Collection<JointSheet> alike(List<JointSheet> all) {
    Map<JointKind.Likeness, JointSheet> alike = new LinkedHashMap<>();
    for (JointSheet sheet : all) {
      alike.merge(
          sheet.kind().likeness().showing(figures(sheet.drawing())),
          sheet,
          (first, next) -> new JointSheet(first.kind().and(next.kind()), first.drawing()));
    }
    return alike.values();
  }

  private static List<String> figures(Drawing drawing) {
    return drawing.elements().stream()
        .flatMap(each -> each instanceof Dimension one ? Stream.of(one.text()) : Stream.empty())
        .sorted()
        .toList();
  }

  private static List<JointSheet> numbered(Collection<JointSheet> sheets) {
    List<JointSheet> numbered = new ArrayList<>();
    for (JointSheet sheet : sheets) {
      Drawing drawing = sheet.drawing().named("joint-" + (numbered.size() + 1));
      numbered.add(new JointSheet(sheet.kind(), drawing));
    }
    return List.copyOf(numbered);
  }

  private JointSheet sheet() {
    return new JointSheet(shown.kind, drawn("joint"));
  }

  private Drawing drawn(String name) {
    Paper paper = new Paper();
    double middle = room.widthMm() * APART_SHARE;
    Bounds left = new Bounds(EDGE_MM, EDGE_MM, middle, room.heightMm() - EDGE_MM);
    Bounds beside =
        new Bounds(left.left() + MARK_MM, left.top() + EDGE_MM, left.right(), left.bottom());
    List<JointMark> apart = shown.apart.addTo(paper, beside);
    Bounds right =
        new Bounds(middle + EDGE_MM, EDGE_MM, room.widthMm() - EDGE_MM, room.heightMm() - EDGE_MM);
    List<JointMark> sawn = addSection(paper, right);
    JointMarks marks = new JointMarks(paper, left.with(right));
    marks.add(apart, left);
    marks.add(sawn, right);
    marks.place();
    return trimmed(name, paper);
  }

  /** As high as what is on it: rows of low pictures stand closer together. */
  private Drawing trimmed(String name, Paper paper) {
    Bounds used = paper.bounds();
    double height = Math.min(room.heightMm(), used.height() + 2 * EDGE_MM);
    List<Element> moved =
        paper.elements().stream()
            .map(each -> Moved.by(each, 0, Math.min(0, EDGE_MM - used.top())))
            .toList();
    return new Drawing(name, room.widthMm(), height, Optional.empty(), moved);
  }

  /** A section with the dimensions that found room, and how many did not. */
  private record Laid(JointSection section, Paper paper, int left) {
    boolean fits(Size size) {
      Bounds bounds = paper.bounds();
      return bounds.width() <= size.widthMm() && bounds.height() <= size.heightMm();
    }

    /** A section too small to be read is as bad as some dimensions that are told in words only. */
    double cost() {
      Bounds bounds = section.bounds();
      double side = Math.max(bounds.width(), bounds.height());
      double small = Math.max(0, (READABLE_MM - side) / MM_PER_DIMENSION);
      double tiny = section.scale().factor() < LEAST_FACTOR ? UNREADABLE : 0;
      return left + covered() * MOST_TRIES + small + tiny;
    }

    /** How many parts have figures where their marks have to point. */
    private long covered() {
      return section.sawn().keySet().stream()
          .flatMap(part -> section.mark(part).stream())
          .filter(mark -> !paper.missesTexts(new Paper.Stretch(mark.tip(), mark.tip())))
          .count();
    }
  }

  private List<JointMark> addSection(Paper paper, Bounds place) {
    Size size = new Size(place.width() - MARK_MM, place.height() - CAPTION_MM);
    Laid laid = laid(size);
    Bounds own = laid.paper.bounds();
    double dx = place.right() - (size.widthMm() - own.width()) / 2 - own.right();
    double dy = place.top() + (size.heightMm() - own.height()) / 2 - own.top();
    laid.paper.elements().forEach(each -> paper.add(Moved.by(each, dx, dy)));
    At at = new At(place.right(), own.bottom() + dy + CAPTION_MM - EDGE_MM);
    paper.add(new Text(TextStyle.SMALL, at, Anchor.END, true, caption(laid.section.scale())));
    return shown.kind.shown().parts().stream()
        .flatMap(each -> laid.section.mark(each.part()).stream())
        .map(mark -> new JointMark(mark.mark(), mark.tip().plus(dx, dy)))
        .toList();
  }

  private String caption(Scale scale) {
    return notation.words().say("joinery.section", scale.toString());
  }

  /** The largest in which all dimensions find room, else one in which most of them do. */
  private Laid laid(Size size) {
    List<Scale> scales = new ArrayList<>(FINER);
    scales.addAll(Scales.in(notation.format().unit()));
    return scales.stream()
        .map(shown.sawn::to)
        .filter(section -> isIn(section, size))
        .limit(MOST_TRIES)
        .map(section -> laid(section, size))
        .min(Comparator.comparingDouble(Laid::cost))
        .orElseGet(() -> bare(shown.sawn.to(scales.getLast())));
  }

  private static boolean isIn(JointSection section, Size size) {
    Bounds bounds = section.bounds().widened(JointSection.OVER);
    return bounds.width() <= size.widthMm() && bounds.height() <= size.heightMm();
  }

  /** With as many dimensions, from the first, as the room holds beside the marks. */
  private Laid laid(JointSection section, Size size) {
    List<Wanted> wanted = shown.wanted;
    return IntStream.rangeClosed(1, wanted.size())
        .map(less -> wanted.size() - less + 1)
        .mapToObj(count -> laid(section, wanted, count))
        .filter(laid -> laid.fits(size) && laid.covered() == 0)
        .findFirst()
        .orElseGet(() -> laid(section, wanted, 0));
  }

  private static Laid laid(JointSection section, List<Wanted> wanted, int count) {
    Paper paper = new Paper();
    section.elements().forEach(paper::add);
    int left = Tiers.placeMost(paper, section, wanted.subList(0, count)).size();
    return new Laid(section, paper, wanted.size() - count + left);
  }

  private static Laid bare(JointSection section) {
    return laid(section, List.of(), 0);
  }
}
