package storyrod.check;

import java.util.List;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemKind;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A piece that can be pulled over and has nothing to tie it to the wall. */
final class TippingOver implements Check {
  /** From this height on the rule for clothing storage holds: 27 in, ASTM F2057-23. */
  private static final Length STORAGE = Length.inches(27);

  /** From here on a shallow piece without drawers tips as well (our own threshold). */
  private static final Length TALL = Length.mm(1000);

  private static final int SHALLOW = 3;

  @Override
  public String code() {
    return "tipping-over";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A piece with drawers or doors that is 27 in (686 mm) or higher, or one over 1 "
            + "m that is three times as high as deep, is tied to the wall: open drawers and a"
            + " climbing child tip it.",
        "The height is from ASTM F2057-23, which 16 CFR 1261 makes law for clothing "
            + "storage in the US; the rest is our own, from memory.",
        "It is no test after that standard, and a piece that it lets pass can still " + "tip.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    if (piece.parts().isEmpty() || hangsOnTheWall(piece) || has(piece, ItemKind.ANTI_TIP_STRAP)) {
      return List.of();
    }
    Length height = size(piece, Axis.Z);
    boolean opens = piece.description().hardware().stream().anyMatch(e -> opens(piece, e));
    boolean isTall =
        height.isLongerThan(TALL) && !height.isShorterThan(size(piece, Axis.Y).times(SHALLOW));
    return (opens && !height.isShorterThan(STORAGE)) || isTall
        ? List.of(finding(piece, height, opens))
        : List.of();
  }

  private Diagnostic finding(Piece piece, Length height, boolean opens) {
    String why = opens ? "has drawers or doors" : "is three times as high as deep or more";
    return Diagnostic.warning(
            code(),
            piece.description().about().project().at(),
            "the piece is %s high and %s, but nothing ties it to the wall"
                .formatted(piece.description().format().formatWithUnit(height), why))
        .hint("tie it to the wall: children climb on drawers")
        .hint("add an item of kind `anti-tip-strap` and name under `hardware:` the part it holds")
        .hint(
            "what hangs on the wall is described there: let its `z` begin at its height over the floor");
  }

  private static boolean opens(Piece piece, HardwareEntry entry) {
    ItemKind kind = kind(piece, entry);
    return kind.isSlide() || kind.isHinge();
  }

  private static boolean has(Piece piece, ItemKind kind) {
    return piece.description().hardware().stream().anyMatch(e -> kind(piece, e) == kind);
  }

  private static ItemKind kind(Piece piece, HardwareEntry entry) {
    return piece.kind(entry.item().value());
  }

  /** Its lowest part is above the floor, which is at 0. */
  private static boolean hangsOnTheWall(Piece piece) {
    return low(piece, Axis.Z).isPositive();
  }

  private static Length size(Piece piece, Axis axis) {
    Length to =
        piece.parts().stream()
            .map(Part::box)
            .map(box -> box.on(axis).to())
            .reduce(Length::max)
            .orElseThrow();
    return to.minus(low(piece, axis));
  }

  private static Length low(Piece piece, Axis axis) {
    return piece.parts().stream()
        .map(Part::box)
        .map(box -> box.on(axis).from())
        .reduce(Length::min)
        .orElseThrow();
  }
}
