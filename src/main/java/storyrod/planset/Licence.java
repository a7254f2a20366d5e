package storyrod.planset;

import java.util.List;

/**
 * What the maker allows a buyer.
 *
 * @param lines in the maker's own words, blank ones left out; where there is no licence a buyer is
 *     told so, and the maker is told nothing
 * @param breaks whether it begins a page
 */
public record Licence(List<String> lines, boolean breaks) {
  /** The name of the section. */
  static final String KEY = "licence";

  public Licence {
    lines = List.copyOf(lines);
  }

  static Licence of(PlanSet set, Print print, boolean breaks) {
    return new Licence(lines(set, print), breaks);
  }

  private static List<String> lines(PlanSet set, Print print) {
    List<String> given =
        set.piece().description().about().licence().stream()
            .flatMap(String::lines)
            .filter(line -> !line.isBlank())
            .toList();
    boolean isMissed = given.isEmpty() && print.edition().isBought();
    return isMissed ? List.of(print.texts().say("licence.none")) : given;
  }

  /** Its height below something else, zero if there is none. */
  static double heightMm(PlanSet set, Print print) {
    double width = print.paper().textWidthMm();
    double text =
        lines(set, print).stream().mapToDouble(line -> TableHeights.text(line, width)).sum();
    return text > 0 ? TableHeights.FOLLOWING_H1_MM + text : 0;
  }
}
