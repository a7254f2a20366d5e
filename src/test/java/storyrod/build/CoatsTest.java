package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Schedule.Row;
import storyrod.build.Schedule.Spell;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/**
 * Each coat is work of its own, as long as its area is large, and the next waits until it is dry.
 */
class CoatsTest {
  private static final int CLOCK = 24 * 60;

  /** A board with 1 m² and 0.08 m² of edges, by half as many metres as given. */
  private static Piece board(int millimetres, String finish) {
    return Pieces.of(
        "parts:\n  board: {stock: ash, x: 0 to "
            + millimetres
            + ", y: 0 to 500, z: 0 to 20, grain: x}\nfinish: {product: varnish, dry-hours: 4, "
            + finish
            + "}\n");
  }

  private static Piece board(String finish) {
    return board(1000, finish);
  }

  private static BuildPlan plan(Piece piece) {
    return Planner.plan(piece, new Diagnostics()).orElseThrow();
  }

  private static Step finishing(Piece piece) {
    return plan(piece).steps().stream()
        .filter(step -> step.verb() == Verb.FINISH)
        .findFirst()
        .orElseThrow();
  }

  private static Row row(Piece piece, Verb verb) {
    BuildPlan plan = plan(piece);
    int at = plan.steps().stream().map(Step::verb).toList().indexOf(verb);
    return Schedule.of(plan, piece.description().shop()).step(at + 1);
  }

  /** By the table of rates: 1.06 m² at 5 m²/h and ten minutes, rubbed at 10 m²/h, sanded at 4. */
  @Test
  void aCoatTakesWhatItsAreaTakes() {
    List<Session> coats = finishing(board("how: brushed, coats: 3")).sessions();
    assertEquals(
        List.of(new Session(20 + 16 + 23, 240), new Session(7 + 23, 240), new Session(30, 240)),
        coats);
    Step twice = finishing(board(2000, "how: brushed, coats: 3"));
    assertTrue(twice.sessions().get(1).minutes() > coats.get(1).minutes() + 15);
    assertEquals(twice.minutes(), twice.sessions().stream().mapToInt(Session::minutes).sum());
  }

  @Test
  void eachWayToPutItOnHasItsRate() {
    int wiped = finishing(board("how: wiped")).minutes();
    assertTrue(wiped < finishing(board("how: brushed")).minutes());
    assertEquals(
        finishing(board("how: brushed")).minutes(), finishing(board("coats: 3")).minutes());
  }

  @Test
  void anotherProductGoesOnLast() {
    String wax = "coats: 2, last: {product: wax, how: wiped, dry-hours: 1}";
    List<Session> coats = finishing(board(wax)).sessions();
    assertEquals(List.of(240, 240, 60), coats.stream().map(Session::waitMinutes).toList());
    assertEquals(7 + 10 + 10, coats.getLast().minutes());
  }

  @Test
  void theNextCoatWaitsForTheLastAndNoneIsBrokenByANight() {
    for (int size = 400; size < 4000; size += 300) {
      List<Spell> spells = row(board(size, "coats: 4"), Verb.FINISH).spells();
      assertEquals(4, spells.size());
      for (int i = 0; i < 4; i++) {
        Spell spell = spells.get(i);
        assertEquals(240, spell.dry() - spell.finish());
        assertEquals(spell.start() / CLOCK, (spell.finish() - 1) / CLOCK);
        assertTrue(spell.finish() % CLOCK <= 8 * 60);
        assertTrue(i == 0 || spell.start() >= spells.get(i - 1).dry());
      }
    }
  }

  /** The trial's coats go on the offcut between the steps that make the board. */
  @Test
  void otherWorkFillsTheWaitBetweenCoats() {
    Piece piece =
        Pieces.of(
            """
            parts:
              slab: {stock: ash, x: 0 to 600, y: 0 to 600, z: 0 to 20, grain: x, staves: 5}
              board: {stock: ash, x: 0 to 600, y: 0 to 100, z: 100 to 120, grain: x}
            finish: {product: varnish, dry-hours: 20, coats: 3}
            """);
    Row trial = row(piece, Verb.TEST);
    Schedule schedule = Schedule.of(plan(piece), piece.description().shop());
    assertEquals(3, trial.spells().size());
    boolean between =
        schedule.steps().stream()
            .flatMap(
                row ->
                    row.number() == trial.number()
                        ? List.<Spell>of().stream()
                        : row.spells().stream())
            .anyMatch(
                spell ->
                    spell.start() >= trial.spells().getFirst().finish()
                        && spell.finish() <= trial.spells().getLast().start());
    assertTrue(between, () -> schedule.steps().toString());
    assertTrue(!schedule.meanwhile(trial).contains(trial.number()));
  }
}
