package storyrod.piece;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.wood.Species.Group;
import storyrod.wood.SpeciesTable;

/**
 * The holes for a wood screw, from the chart {@code wood-screws.csv} (common practice).
 *
 * @param clearance the hole in the part the screw goes through
 * @param pilotHard the hole in hardwood that takes the thread
 * @param pilotSoft the hole in softwood or sheet goods
 */
public record ScrewHoles(Length shank, Length clearance, Length pilotHard, Length pilotSoft) {
  private static final List<ScrewHoles> CHART = read();

  /** The holes for a shank: those of the next gauge up in the chart, or of its thickest. */
  public static ScrewHoles forShank(Length shank) {
    return CHART.stream()
        .filter(row -> !row.shank.isShorterThan(shank))
        .findFirst()
        .orElse(CHART.getLast());
  }

  /** The pilot hole in a stock; an unknown wood counts as hard, for its wider hole never splits. */
  public Length pilot(StockEntry stock) {
    boolean isHard =
        stock.kind() == StockKind.SOLID
            && SpeciesTable.find(stock.species())
                .map(species -> species.group() == Group.HARDWOOD)
                .orElse(true);
    return isHard ? pilotHard : pilotSoft;
  }

  private static List<ScrewHoles> read() {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(
                    ScrewHoles.class.getResourceAsStream("/storyrod/piece/wood-screws.csv")),
                StandardCharsets.UTF_8))) {
      return in.lines()
          .filter(line -> line.matches("#\\d.*"))
          .map(line -> row(line.split(",")))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ScrewHoles row(String[] cells) {
    return new ScrewHoles(inch(cells[1]), inch(cells[4]), inch(cells[2]), inch(cells[3]));
  }

  private static Length inch(String cell) {
    return Length.parse(cell + " in");
  }
}
