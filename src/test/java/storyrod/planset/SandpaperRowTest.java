package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.planset.Supplies.Row;
import storyrod.stock.SupplyNeed.Abrasive;
import storyrod.stock.SupplyNeed.Abrasive.Packs;
import storyrod.stock.SupplyPlan;
import storyrod.stock.Surfaces;
import storyrod.words.Words;

/** Sandpaper stands in the shopping list so that it can be bought by it. */
class SandpaperRowTest {
  private static Row row(Optional<Packs> packs) {
    List<Abrasive> grits =
        IntStream.of(120, 150, 180, 220)
            .mapToObj(grit -> new Abrasive(grit, 14, packs, Optional.empty()))
            .toList();
    SupplyPlan plan = new SupplyPlan(new Surfaces(0, 0), List.of(), grits);
    return Supplies.of(plan, new Texts(new LengthFormat(Unit.INCH, 32), Words.ENGLISH))
        .rows()
        .getFirst();
  }

  /** Four grits of 14 sheets, five to a pack: three packs each. */
  @Test
  void packsAreToldByGritAndInAll() {
    Row row = row(Optional.of(new Packs(3, 5)));
    assertEquals("grits 120, 150, 180, 220, 3 packs of each", row.area());
    assertEquals("about 14 sheets each", row.takes());
    assertEquals("packs of 5", row.soldIn());
    assertEquals("12", row.cans());
  }

  @Test
  void withoutAPackOnlyTheSheetsAreTold() {
    Row row = row(Optional.empty());
    assertEquals("grits 120, 150, 180, 220", row.area());
    assertEquals("", row.soldIn() + row.cans());
  }
}
