package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A slide that is longer than the drawer side it is screwed to. */
final class SlideLength implements Check {
  @Override
  public String code() {
    return "slide-length";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A slide is at most as long as the drawer's side is deep, from front to back.",
        "Common practice.",
        "The space behind the drawer is not looked at.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    List<Diagnostic> found = new ArrayList<>();
    for (HardwareEntry entry : piece.description().hardware()) {
      ItemEntry item = piece.description().items().get(entry.item().value());
      if (item.kind().isSlide() && item.length().isPresent()) {
        HungParts.of(piece, nesting, entry).hung().stream()
            .filter(side -> side.thickness() == Axis.X)
            .filter(side -> item.length().get().isLongerThan(side.box().size(Axis.Y)))
            .forEach(side -> found.add(finding(piece, entry, side)));
      }
    }
    return found;
  }

  private Diagnostic finding(Piece piece, HardwareEntry entry, Part side) {
    LengthFormat format = piece.description().format();
    ItemEntry item = piece.description().items().get(entry.item().value());
    Length depth = side.box().size(Axis.Y);
    return Diagnostic.error(
            code(),
            entry.item().at(),
            "%s is %s long, but %s is only %s deep"
                .formatted(
                    item.name(),
                    format.formatWithUnit(item.length().orElseThrow()),
                    side.name(),
                    format.formatWithUnit(depth)))
        .also(item.at(), item.name() + " is defined here")
        .also(side.at(), side.name() + " is defined here")
        .hint("take a shorter slide, or make the drawer deeper");
  }
}
