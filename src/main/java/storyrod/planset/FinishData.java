package storyrod.planset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.description.FinishEntry;
import storyrod.description.RecordEntry.TestPiece;
import storyrod.planset.Masks.Mask;
import storyrod.stock.SupplyNeed;
import storyrod.stock.SupplyPlan;
import storyrod.wood.Cures;

/**
 * The finishing schedule.
 *
 * @param rows what is put on, how often and when
 * @param test how the test piece is made, and whether it has been
 * @param settled what was found of the last test piece; empty where there is a line to sign
 * @param planned what test pieces are held against
 * @param lastProduct what goes on over the coats; empty if nothing does
 * @param allCoats of all products together
 * @param oily whether its cloths can catch fire
 */
public record FinishData(
    List<Row> rows,
    String test,
    String settled,
    String planned,
    int coats,
    int allCoats,
    String lastProduct,
    boolean oily,
    List<Mask> masks) {
  public FinishData {
    rows = List.copyOf(rows);
    masks = List.copyOf(masks);
  }

  /** A line of the schedule. */
  public record Row(String label, String value) {}

  static Optional<FinishData> of(PlanSet set, Notes notes, Print print) {
    Texts texts = print.texts();
    Surface surface = Surface.of(set.piece(), set.stock().supplies(), texts);
    return set.piece()
        .description()
        .finish()
        .map(
            entry ->
                new FinishData(
                    rows(entry, set.stock().supplies(), surface, texts),
                    test(entry, surface, texts),
                    print.edition().is(Edition.LINES) ? settled(set, texts) : "",
                    planned(entry, surface, texts),
                    entry.coats(),
                    entry.allCoats(),
                    entry.last().map(last -> texts.words().name(last.product())).orElse(""),
                    warnsOfOilyRags(notes, texts),
                    new Masks(set.piece(), set.build().steps(), texts).all()));
  }

  private static boolean warnsOfOilyRags(Notes notes, Texts texts) {
    String text = texts.say("caution.oily-rags");
    return notes.cautions().stream().anyMatch(each -> each.text().equals(text));
  }

  private static String test(FinishEntry entry, Surface surface, Texts texts) {
    return texts.say("finish.test.text", surface.woods(), entry.sandTo(), entry.coats())
        + " "
        + entry
            .triedOn()
            .map(written -> TriedWoods.told(written, texts.words()))
            .orElseGet(() -> texts.say("finish.untried"));
  }

  /** The verdict on the test piece that was recorded last; a verdict of a buyer's is his own. */
  private static String settled(PlanSet set, Texts texts) {
    List<TestPiece> pieces = set.piece().description().record().testPieces();
    return pieces.isEmpty() ? "" : settled(pieces.getLast(), texts);
  }

  private static String settled(TestPiece piece, Texts texts) {
    return texts.say(
        piece.date().isPresent() ? "finish.test.settled.day" : "finish.test.settled",
        piece.wood(),
        piece.product(),
        piece.verdict(),
        piece.date().map(LocalDate::toString).orElse(""));
  }

  private static String planned(FinishEntry entry, Surface surface, Texts texts) {
    return texts.say(
        "record.test-pieces.lead",
        texts.words().name(entry.product()),
        entry.allCoats(),
        entry.sandTo(),
        surface.woods());
  }

  private static List<Row> rows(
      FinishEntry entry, SupplyPlan supplies, Surface surface, Texts texts) {
    List<Row> rows = new ArrayList<>();
    rows.add(
        new Row(texts.say("finish.product"), Texts.capital(texts.words().name(entry.product()))));
    entry.kind().ifPresent(kind -> rows.add(worded("kind", kind, texts)));
    rows.add(worded("sheen", entry.sheen().orElse("open"), texts));
    entry.how().ifPresent(how -> rows.add(worded("how", how, texts)));
    rows.add(new Row(texts.say("finish.area"), surface.area()));
    rows.add(new Row(texts.say("finish.takes"), takes(supplies, texts)));
    rows.add(new Row(texts.say("finish.sand"), grits(entry, supplies, texts)));
    rows.add(new Row(texts.say("finish.coats"), Integer.toString(entry.coats())));
    rows.add(new Row(texts.say("finish.dry"), texts.say("time.hours", entry.dryHours())));
    rows.add(new Row(texts.say("finish.cure"), cure(entry, texts)));
    entry.last().ifPresent(last -> rows.add(new Row(texts.say("finish.last"), over(last, texts))));
    return rows;
  }

  private static Row worded(String key, String value, Texts texts) {
    return new Row(texts.say("finish." + key), texts.say("finish." + key + "." + value));
  }

  private static String over(FinishEntry last, Texts texts) {
    String key = last.coats() == 1 ? "finish.last.one" : "finish.last.more";
    return texts.say(key, texts.words().name(last.product()), last.dryHours(), last.coats());
  }

  private static String takes(SupplyPlan supplies, Texts texts) {
    return supplies.needs().stream()
        .filter(need -> need.use() == SupplyNeed.Use.FINISH)
        .map(need -> Supplies.amount(need, texts))
        .collect(Collectors.joining("; "));
  }

  private static String grits(FinishEntry entry, SupplyPlan supplies, Texts texts) {
    List<String> grits =
        supplies.abrasives().stream().map(each -> Integer.toString(each.grit())).toList();
    return grits.size() < 2
        ? texts.say("finish.grit", entry.sandTo())
        : texts.say("finish.grits", String.join(", ", grits));
  }

  private static String cure(FinishEntry entry, Texts texts) {
    if (entry.cureDays().isPresent()) {
      return texts.say("finish.cure.days", entry.cureDays().get());
    }
    return entry
        .kind()
        .flatMap(Cures::find)
        .map(cure -> texts.say("finish.cure.range", cure.least(), cure.most()))
        .orElse(texts.say("finish.cure.label"));
  }
}
