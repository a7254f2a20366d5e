package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.PlacedItem.Makeup;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The members of slides where they are screwed on: beside a drawer one on the case and one on the
 * drawer, which together fill its clearance; below a drawer the case's only, for what is on the
 * drawer is a catch at its front.
 */
record SlideItems(Piece piece, Nesting nesting, HardwareShapes shapes) {
  /** The height of a side-mounted slide (usual for ball bearings, from memory). */
  private static final Length HEIGHT = Length.mm(45);

  /** What the member of the drawer is less high, for it runs in the other (from memory). */
  private static final Length LOWER = Length.mm(20);

  private static final Length THICK = Length.inch(1, 2);

  /** How broad an under-mounted slide is, from the drawer's side inwards (from memory). */
  private static final Length UNDER_WIDTH = Length.mm(40);

  private static final int A_PAIR = 2;

  /**
   * One member on its face.
   *
   * @param at the middle of it on that face
   */
  record Member(HardwareEntry entry, Part host, Face out, Point at, Axis run, Length length) {}

  List<PlacedItem> of(HardwareEntry entry) {
    List<Slides.Beside> beside = Slides.beside(piece, nesting, entry);
    return isUnder(entry)
        ? beside.stream().map(each -> under(entry, each)).toList()
        : Stream.concat(
                beside.stream().map(each -> member(entry, each, Sort.CASE)),
                beside.stream().map(each -> member(entry, each, Sort.DRAWER)))
            .toList();
  }

  private enum Sort {
    CASE,
    DRAWER
  }

  /** The members of an entry, those of the case first. */
  List<Member> members(HardwareEntry entry) {
    List<Slides.Beside> beside = Slides.beside(piece, nesting, entry);
    Stream<Member> walls = beside.stream().map(each -> onWall(entry, each));
    return isUnder(entry)
        ? walls.toList()
        : Stream.concat(walls, beside.stream().map(each -> onDrawer(entry, each))).toList();
  }

  private boolean isUnder(HardwareEntry entry) {
    return piece.kind(entry.item().value()) == ItemKind.UNDER_SLIDE;
  }

  private ItemEntry item(HardwareEntry entry) {
    return piece.item(entry.item().value()).orElseThrow();
  }

  private Member onDrawer(HardwareEntry entry, Slides.Beside beside) {
    Part side = beside.side();
    Face out = MountSites.towards(side, beside.wall().bounds(), side.thickness());
    return member(entry, side, out, beside);
  }

  private Member onWall(HardwareEntry entry, Slides.Beside beside) {
    Axis across = beside.side().thickness();
    Face out = MountSites.towards(beside.wall(), beside.side().bounds(), across);
    return member(entry, beside.wall(), out, beside);
  }

  /** As high as the middle of the drawer's side, from its front backwards. */
  private Member member(HardwareEntry entry, Part host, Face out, Slides.Beside beside) {
    Box side = beside.side().bounds();
    Axis run = Axis.other(out.axis(), Axis.Z);
    Length length = item(entry).length().orElse(side.size(run));
    Length half = Length.nearest(length.toMm() / 2);
    Point at =
        side.middle()
            .with(out.axis(), host.bounds().at(out))
            .with(run, side.on(run).from().plus(half));
    return new Member(entry, host, out, at, run, length);
  }

  private PlacedItem member(HardwareEntry entry, Slides.Beside beside, Sort sort) {
    Length whole = item(entry).sideClearance().orElse(THICK);
    Length half = Length.nearest(whole.toMm() / 2);
    return sort == Sort.CASE
        ? placed(onWall(entry, beside), whole.minus(half), HEIGHT, sort)
        : placed(onDrawer(entry, beside), half, HEIGHT.minus(LOWER), sort);
  }

  private PlacedItem placed(Member member, Length thick, Length high, Sort sort) {
    Box box =
        HardwareShapes.box(
            member.out(), new Range(Length.ZERO, thick), member.run(), member.length(), high);
    return placed(member, box, new Makeup(A_PAIR, sort.ordinal(), A_PAIR), sort);
  }

  private PlacedItem under(HardwareEntry entry, Slides.Beside beside) {
    Member member = onWall(entry, beside);
    Box side = beside.side().bounds();
    Length gap = side.at(member.out().opposite()).minus(member.host().bounds().at(member.out()));
    Length deep = item(entry).sizes().bottomClearance().orElse(THICK);
    Range across = new Range(Length.ZERO, gap.abs().plus(UNDER_WIDTH));
    Box box =
        HardwareShapes.box(member.out(), across, member.run(), member.length(), deep)
            .with(Axis.Z, new Range(deep.negated(), Length.ZERO));
    Point at = member.at().with(Axis.Z, side.at(Face.BOTTOM));
    Member below =
        new Member(entry, member.host(), member.out(), at, member.run(), member.length());
    return placed(below, box, new Makeup(A_PAIR, 0, 1), Sort.CASE);
  }

  private PlacedItem placed(Member member, Box box, Makeup makeup, Sort sort) {
    return new PlacedItem(
        member.entry().item().value(),
        Origin.of(member.entry(), parts(member.entry(), sort), makeup),
        member.host().name(),
        member.at().toMm(),
        member.out().normal(),
        shapes.boxes(Pose.NONE, box));
  }

  /** The full names of what takes one sort of an entry's members. */
  private List<String> parts(HardwareEntry entry, Sort sort) {
    return Slides.beside(piece, nesting, entry).stream()
        .map(each -> sort == Sort.CASE ? each.wall() : each.side())
        .map(Part::name)
        .distinct()
        .toList();
  }
}
