package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Side-mounted slides that get more or less room beside the drawer than they need. */
final class SlideClearance implements Check {
  private static final Length GIVE = Length.inch(1, 32);

  /** The drawer side for which the clearance of an under-mounted slide holds (common practice). */
  private static final Length UNDER_SIDE = Length.mm(16);

  @Override
  public String code() {
    return "slide-clearance";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A side-mounted slide has its own thickness beside the drawer, usually 1/2 in "
            + "(13 mm) a side; an under-mounted one what its maker says for sides of 16 mm, "
            + "and more for thinner ones; each within 1/32 in.",
        "Common practice; the slide's maker says what holds.",
        "It measures between the drawer's sides and the nearest part beside them.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    List<Diagnostic> found = new ArrayList<>();
    for (HardwareEntry entry : piece.description().hardware()) {
      ItemEntry item = piece.description().items().get(entry.item().value());
      if (item.kind().isSlide() && item.sideClearance().isPresent()) {
        found.addAll(findings(piece, entry, HungParts.of(piece, nesting, entry)));
      }
    }
    return found;
  }

  private List<Diagnostic> findings(Piece piece, HardwareEntry entry, HungParts hung) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part side : hung.hung()) {
      Length needed = needed(piece, entry, side);
      for (Part post : hung.others()) {
        gap(side, post, hung.all())
            .filter(gap -> gap.minus(needed).abs().isLongerThan(GIVE))
            .ifPresent(gap -> found.add(finding(piece, entry, new Sides(side, post), gap)));
      }
    }
    return found;
  }

  /** An under-mounted slide reaches from the case to the inside of the drawer's side. */
  private static Length needed(Piece piece, HardwareEntry entry, Part side) {
    ItemEntry item = piece.description().items().get(entry.item().value());
    Length clearance = item.sideClearance().orElseThrow();
    return item.kind() == ItemKind.UNDER_SLIDE
        ? clearance.plus(UNDER_SIDE).minus(side.finishedThickness())
        : clearance;
  }

  private record Sides(Part drawer, Part carcase) {}

  /** The room between two parts on x, if no other of the parts stands between them. */
  private static Optional<Length> gap(Part side, Part post, List<Part> parts) {
    Range inner = side.box().on(Axis.X);
    Range outer = post.box().on(Axis.X);
    Length gap = inner.from().minus(outer.to()).max(outer.from().minus(inner.to()));
    boolean nearest =
        !gap.isNegative()
            && side.box().z().overlaps(post.box().z())
            && parts.stream()
                .filter(part -> part.box().z().overlaps(side.box().z()))
                .map(part -> part.box().on(Axis.X))
                .noneMatch(
                    other ->
                        !other.equals(inner)
                            && !other.equals(outer)
                            && between(other, inner, outer));
    return nearest ? Optional.of(gap) : Optional.empty();
  }

  private static boolean between(Range other, Range one, Range two) {
    return other.from().isLongerThan(one.from().min(two.from()))
        && other.to().isShorterThan(one.to().max(two.to()));
  }

  private Diagnostic finding(Piece piece, HardwareEntry entry, Sides sides, Length gap) {
    LengthFormat format = piece.description().format();
    ItemEntry item = piece.description().items().get(entry.item().value());
    return Diagnostic.error(
            code(),
            entry.item().at(),
            "%s needs %s between %s and %s, but there is %s"
                .formatted(
                    item.name(),
                    format.formatWithUnit(needed(piece, entry, sides.drawer())),
                    sides.drawer().name(),
                    sides.carcase().name(),
                    format.formatWithUnit(gap)))
        .also(sides.drawer().at(), sides.drawer().name() + " is defined here")
        .hint("make the drawer wider or narrower by the difference on each side");
  }
}
