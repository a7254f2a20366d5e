package storyrod.check;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.description.Span;
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

  private static final String TIE = "tie it to the wall: children climb on drawers";
  private static final String STRAP =
      "add an item of kind `anti-tip-strap` and name under `hardware:` the part it holds";
  private static final String HUNG =
      "what hangs on the wall is described there: let its `z` begin at its height over the floor";
  private static final String WHILE_EMPTY =
      "it stands by its own weight while it is empty; tie it to the wall all the same where children"
          + " may be";

  @Override
  public String code() {
    return "tipping-over";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A piece with drawers or doors that is 27 in (686 mm) or higher, or one over 1 "
            + "m that is three times as high as deep, is tied to the wall: open drawers and a"
            + " climbing child tip it. It is no more than advice where the static balance"
            + " holds, and silent where that is found wanting.",
        "The height is from ASTM F2057-23, which 16 CFR 1261 makes law for clothing "
            + "storage in the US; the rest is our own, from memory.",
        "It is no test after that standard, and a piece that it lets pass can still " + "tip.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    if (piece.parts().isEmpty() || hangsOnTheWall(piece) || isTied(piece)) {
      return List.of();
    }
    Optional<Standing> standing = Standing.of(piece);
    if (standing.isPresent() && !standing.get().stands()) {
      return List.of();
    }
    Length height = size(piece, Axis.Z);
    boolean isTall =
        height.isLongerThan(TALL) && !height.isShorterThan(size(piece, Axis.Y).times(SHALLOW));
    return (opens(piece) && isAsHighAsTheRuleSays(piece)) || isTall
        ? List.of(finding(piece, height, standing.isPresent()))
        : List.of();
  }

  /** Whether a piece is so high that the rule for clothing storage may hold for it. */
  static boolean isAsHighAsTheRuleSays(Piece piece) {
    return !size(piece, Axis.Z).isShorterThan(STORAGE);
  }

  /** Whether anything ties it to the wall. */
  static boolean isTied(Piece piece) {
    return piece.description().hardware().stream()
        .anyMatch(entry -> kind(piece, entry) == ItemKind.ANTI_TIP_STRAP);
  }

  private static boolean opens(Piece piece) {
    return piece.description().hardware().stream()
        .map(entry -> kind(piece, entry))
        .anyMatch(kind -> kind.isSlide() || kind.isHinge());
  }

  private Diagnostic finding(Piece piece, Length height, boolean stands) {
    boolean opens = opens(piece);
    String why = opens ? "has drawers or doors" : "is three times as high as deep or more";
    String message =
        "the piece is %s high and %s, but nothing ties it to the wall"
            .formatted(piece.description().format().formatWithUnit(height), why);
    Span at = piece.description().about().project().at();
    return opens && stands
        ? Diagnostic.advice(code(), at, message).hint(WHILE_EMPTY).hint(STRAP)
        : Diagnostic.warning(code(), at, message).hint(TIE).hint(STRAP).hint(HUNG);
  }

  private static ItemKind kind(Piece piece, HardwareEntry entry) {
    return piece.kind(entry.item().value());
  }

  /** Its lowest part is above the floor, which is at 0. */
  static boolean hangsOnTheWall(Piece piece) {
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
