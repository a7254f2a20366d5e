package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.Slides.Row;
import storyrod.description.ItemKind;
import storyrod.drawing.Drawing.Element;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * A wall of a case as one sees it from inside, what it is measured from cut through: the members of
 * its slides, the outlines of the drawers' sides before them, and of each line how high it lies and
 * how far its member is set back. The front of the case is at the left; a deep wall is broken off.
 */
final class SlideWall {
  static final Face SEEN_FROM = Face.RIGHT;
  private final Part wall;
  private final List<Row> rows;
  private final List<Hardware> members;
  private final boolean isSetBack;
  private final Notation notation;
  private final List<Part> parts;
  private final Section section;
  private final Elevation view;

  /**
   * A wall to be drawn.
   *
   * @param rows those that are set out on it, from below, at least one
   * @param members the slides' members on it
   */
  SlideWall(Piece piece, List<Row> rows, List<Hardware> members) {
    this.wall = rows.getFirst().wall();
    this.rows = List.copyOf(rows);
    this.members = List.copyOf(members);
    this.isSetBack = members.stream().noneMatch(each -> isUnder(piece, each));
    this.notation = Notation.of(piece);
    Length cut = rows.getFirst().side().box().at(Face.LEFT);
    this.parts = parts(piece, cut);
    this.section = Section.through(parts, cut);
    this.view = Elevation.of(section, members, SEEN_FROM);
  }

  /** How far back a slide below a drawer goes is said by its maker. */
  private static boolean isUnder(Piece piece, Hardware member) {
    return piece.kind(member.placed().item()) == ItemKind.UNDER_SLIDE;
  }

  /** The wall, what its figures are measured from, and what stands up before that at the front. */
  private List<Part> parts(Piece piece, Length cut) {
    List<Part> measured =
        rows.stream()
            .flatMap(row -> Stream.concat(row.floor().stream(), Stream.of(row.front())))
            .toList();
    Stream<Part> sills =
        piece.parts().stream()
            .filter(part -> rows.stream().anyMatch(row -> isSill(part, row)))
            .filter(part -> part.box().x().contains(cut));
    return Stream.of(Stream.of(wall), measured.stream(), sills)
        .flatMap(each -> each)
        .distinct()
        .toList();
  }

  /** Whether a part of a row's front, as a bottom rail, hides the edge of the row's floor. */
  private static boolean isSill(Part part, Row row) {
    Part front = row.front();
    return front.assembly().isPresent()
        && front.assembly().equals(part.assembly())
        && front.box().y().equals(part.box().y())
        && row.floor().filter(floor -> floor.box().z().overlaps(part.box().z())).isPresent();
  }

  /** Whether the wall of a row is the left one of two that face each other. */
  static boolean isFacingRight(Row row) {
    return row.wall().thickness() == Axis.X
        && !row.side().box().x().from().isShorterThan(row.wall().box().x().to());
  }

  /** A wall on paper, from the top of its own room. */
  record Laid(List<Element> elements, double heightMm, Scale scale) {}

  /** At the largest scale at which it has room. */
  Optional<Laid> laid(Size area) {
    return Scales.in(notation.format().unit()).stream()
        .map(scale -> new SlideWallView(this, scale, area))
        .filter(SlideWallView::hasRoom)
        .flatMap(paper -> paper.laid().stream())
        .findFirst();
  }

  Part wall() {
    return wall;
  }

  List<Row> rows() {
    return rows;
  }

  Notation notation() {
    return notation;
  }

  Section section() {
    return section;
  }

  /** What is seen of it. */
  Elevation view() {
    return view;
  }

  /** Whether its slides have a set-back of their own. */
  boolean isSetBack() {
    return isSetBack;
  }

  /** The wall and all that its figures are measured from. */
  List<Part> shown() {
    return parts;
  }

  /** How far the highest of its slides' members reaches above its middle, in mm. */
  double halfMm() {
    return members.stream().mapToDouble(SlideWall::halfMm).max().orElse(0);
  }

  private static double halfMm(Hardware member) {
    return member.placed().solid().bounds().orElseThrow().size(Axis.Z).toMm() / 2;
  }

  /** From where the height of a row's line is measured. */
  static Length floor(Row row) {
    return row.floor()
        .map(part -> part.box().at(Face.TOP))
        .orElse(row.wall().shoulder().at(Face.BOTTOM));
  }

  static Length line(Row row) {
    return floor(row).plus(row.onWall());
  }

  /** Where the front end of a row's member lies: as far back as its drawer's side. */
  static Length end(Row row) {
    return row.side().box().at(Face.FRONT);
  }

  static Length front(Row row) {
    return end(row).minus(row.behind());
  }
}
