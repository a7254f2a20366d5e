package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import storyrod.check.Standing.Worst;
import storyrod.description.Diagnostic;
import storyrod.measure.Unit;
import storyrod.piece.Piece;

/** A piece that its open drawers and doors, or a child on one of them, tip forwards. */
final class StaticBalance implements Check {
  private static final double LB_PER_KG = 1 / 0.45359237;

  /** Where ballast can lie: its middle so far before the back of the piece. */
  private static final double BALLAST_FROM_BACK_MM = 50;

  @Override
  public String code() {
    return "static-balance";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A piece with drawers on slides or hinged doors that nothing ties to the wall stands with"
            + " all of them open and empty; from 27 in (686 mm) of height on it also stands with"
            + " one open and 60 lb (27.2 kg) on its front edge. The moments of all masses behind"
            + " the line of its front feet, divided by those before it, make 1 or it tips, and 1.2"
            + " with a margin.",
        "Statics. 60 lb and 27 in are figures of ASTM F2057-23, which 16 CFR 1261 makes law in the"
            + " US for clothing storage: free standing, 27 in or higher, 30 lb or heavier, 3.2 ft3"
            + " or more closed off, with drawers or hinged doors. Bookcases, dining, office and"
            + " built-in furniture are outside it; check the current text. The margin is our own.",
        "It is no test after that standard, which adds carpet, filled drawers and a pull. Slides"
            + " are taken to open by their whole length, doors by 90 degrees; drawers that run"
            + " without slides, hardware, contents and feet that are no parts are left out, as is a"
            + " piece of which a density is unknown. Each part's mass lies at the middle of its"
            + " box.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    if (TippingOver.isTied(piece) || TippingOver.hangsOnTheWall(piece)) {
      return List.of();
    }
    return Standing.of(piece).map(standing -> findings(piece, standing)).orElse(List.of());
  }

  private List<Diagnostic> findings(Piece piece, Standing standing) {
    List<Diagnostic> found = new ArrayList<>();
    judged(piece, standing, standing.allOpen(), "with all drawers and doors open and empty")
        .ifPresent(found::add);
    if (TippingOver.isAsHighAsTheRuleSays(piece)) {
      Worst worst = standing.childOnOne();
      judged(
              piece,
              standing,
              worst.balance(),
              "with %s on the front edge of `%s` when it is open"
                  .formatted(mass(piece, Standing.CHILD_KG), worst.opening().hung().unit()))
          .map(
              finding ->
                  finding.also(
                      worst.opening().hung().parts().getFirst().at(), "this is part of it"))
          .ifPresent(found::add);
    }
    return found;
  }

  private Optional<Diagnostic> judged(
      Piece piece, Standing standing, Balance balance, String when) {
    if (balance.ratio() >= Standing.MARGIN) {
      return Optional.empty();
    }
    boolean tips = balance.ratio() < 1;
    var at = piece.description().about().project().at();
    String ratio = String.format(Locale.ROOT, "%.2f", Math.floor(balance.ratio() * 100) / 100);
    String message =
        "the piece %s %s: what holds it down is %s of what tips it"
            .formatted(tips ? "tips" : "hardly stands", when, ratio);
    Diagnostic finding =
        tips ? Diagnostic.warning(code(), at, message) : Diagnostic.advice(code(), at, message);
    return Optional.of(
        finding
            .hint(wayOut(piece, standing, balance))
            .hint(
                "add an item of kind `anti-tip-strap` and name under `hardware:` the part it holds"));
  }

  private static String wayOut(Piece piece, Standing standing, Balance balance) {
    String anchor = "tie it to the wall";
    double behind = standing.backMm() - BALLAST_FROM_BACK_MM;
    if (behind <= 0) {
      return anchor + "; no ballast can hold it, for it has no depth behind its front feet";
    }
    return "%s; %s of ballast low at its back would bring that to 1.2"
        .formatted(anchor, mass(piece, balance.ballast(Standing.MARGIN, behind)));
  }

  /** A mass as the project's unit goes with it, rounded up. */
  private static String mass(Piece piece, double kg) {
    boolean inInches = piece.description().format().unit() == Unit.INCH;
    return inInches
        ? Math.round(Math.ceil(kg * LB_PER_KG - 0.01)) + " lb"
        : String.format(Locale.ROOT, "%.1f kg", Math.ceil(kg * 10 - 0.2) / 10);
  }
}
