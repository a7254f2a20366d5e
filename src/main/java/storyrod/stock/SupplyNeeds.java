package storyrod.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.description.FinishEntry;
import storyrod.description.GlueEntry;
import storyrod.description.Supply;
import storyrod.measure.Coverage;
import storyrod.measure.Rational;
import storyrod.piece.Piece;
import storyrod.stock.SupplyNeed.Abrasive;
import storyrod.stock.SupplyNeed.Abrasive.Packs;
import storyrod.stock.SupplyNeed.Litres;
import storyrod.stock.SupplyNeed.Use;
import storyrod.wood.Coverages;

/** Adds up the glue, the finish and the sandpaper that a piece takes. */
final class SupplyNeeds {
  /** Through these wood is sanded, one after the other (common practice). */
  private static final int[] GRITS = {120, 150, 180, 220, 320, 400};

  /** What a sheet of 9 × 11 in sands before it is dull (common practice, from memory), in mm². */
  private static final double PER_SHEET_MM2 = 1e6;

  private final Piece piece;
  private final Surfaces surfaces;

  private SupplyNeeds(Piece piece) {
    this.piece = piece;
    this.surfaces = Surfaces.of(piece);
  }

  static SupplyPlan of(Piece piece) {
    SupplyNeeds needs = new SupplyNeeds(piece);
    return new SupplyPlan(needs.surfaces, needs.supplies(), needs.abrasives());
  }

  private List<SupplyNeed> supplies() {
    List<SupplyNeed> needs = new ArrayList<>();
    piece
        .description()
        .glue()
        .filter(glue -> surfaces.gluedMm2() > 0)
        .map(this::need)
        .ifPresent(needs::add);
    piece.description().finish().stream()
        .flatMap(finish -> finish.products().stream())
        .map(this::need)
        .forEach(needs::add);
    return needs;
  }

  private SupplyNeed need(GlueEntry glue) {
    return need(
        Use.GLUE,
        glue.product(),
        surfaces.gluedSquareMetres(),
        1,
        new Goes(glue.kind(), glue.supply()));
  }

  private SupplyNeed need(FinishEntry finish) {
    return need(
        Use.FINISH,
        finish.product(),
        surfaces.openSquareMetres(),
        finish.coats(),
        new Goes(finish.kind(), finish.supply()));
  }

  /** How far it goes. */
  private record Goes(Optional<String> kind, Supply supply) {
    Optional<Litres> litres(Rational squareMetres) {
      Optional<Litres> byLabel =
          supply.coverage().map(each -> litres(squareMetres, each, each, true));
      return byLabel.or(
          () ->
              kind.flatMap(Coverages::find)
                  .map(sort -> litres(squareMetres, sort.most(), sort.least(), false)));
    }

    private static Litres litres(
        Rational squareMetres, Coverage most, Coverage least, boolean byLabel) {
      return new Litres(
          squareMetres.dividedBy(most.squareMetresPerLitre()),
          squareMetres.dividedBy(least.squareMetresPerLitre()),
          byLabel);
    }

    /** How many cans hold so much. */
    Optional<Integer> cans(Litres litres) {
      return supply
          .soldIn()
          .map(
              can -> litres.most().dividedBy(can.litres()).roundedUp().numerator().intValueExact());
    }
  }

  private static SupplyNeed need(
      Use use, String product, Rational squareMetres, int coats, Goes goes) {
    Optional<Litres> litres = goes.litres(squareMetres.times(Rational.of(coats, 1)));
    Optional<Integer> cans = litres.flatMap(goes::cans);
    return new SupplyNeed(
        use,
        product,
        squareMetres,
        coats,
        litres,
        goes.supply().soldIn(),
        cans,
        cans.flatMap(
            count -> goes.supply().price().map(price -> price.times(Rational.of(count, 1)))));
  }

  /** Sheets of each grit up to the last one before the finish; none without a finish. */
  private List<Abrasive> abrasives() {
    int sheets = Math.toIntExact(Math.max(1, (long) Math.ceil(surfaces.openMm2() / PER_SHEET_MM2)));
    return piece.description().finish().stream()
        .flatMap(finish -> grits(finish.sandTo()).mapToObj(grit -> abrasive(grit, sheets, finish)))
        .toList();
  }

  private static Abrasive abrasive(int grit, int sheets, FinishEntry finish) {
    Optional<Packs> packs =
        finish.sandpaper().map(each -> new Packs(Math.ceilDiv(sheets, each.pack()), each.pack()));
    return new Abrasive(
        grit,
        sheets,
        packs,
        packs.flatMap(
            many ->
                finish
                    .sandpaper()
                    .map(paper -> paper.price().times(Rational.of(many.count(), 1)))));
  }

  private static IntStream grits(int last) {
    return IntStream.concat(IntStream.of(GRITS).filter(grit -> grit < last), IntStream.of(last));
  }
}
