package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.ShopEntry;
import storyrod.description.ShopMachines;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Piece;

/**
 * The ways that a shop's machines leave open for a board that one of them does not take (common
 * practice), in the words of a hint.
 */
final class Routes {
  private final LengthFormat format;
  private final ShopEntry shop;
  private final ShopMachines machines;

  Routes(Piece piece) {
    this.format = piece.description().format();
    this.shop = piece.description().shop();
    this.machines = shop.machines();
  }

  /** How a panel of some width is levelled once it is glued up. */
  List<String> levelling(Length width) {
    List<String> ways = new ArrayList<>();
    drumSander(width, ways);
    handPlane(ways);
    router(ways);
    if (ways.isEmpty()) {
      ways.add("at a shop that has a sander as wide as the panel");
    }
    return ways;
  }

  /** How the first face of a board of some width is made flat without the jointer. */
  List<String> flattening(Length width) {
    List<String> ways = new ArrayList<>();
    if (!width.isLongerThan(shop.planerWidth()) && !machines.lacks("planer")) {
      ways.add(
          "through the planer on a flat sled with shims wherever the board would rock (then turned"
              + " over, without the sled)");
    }
    handPlane(ways);
    router(ways);
    return ways;
  }

  /** How a board is cut to length that is too wide for the crosscut. */
  List<String> crosscutting() {
    List<String> ways = new ArrayList<>();
    if (!machines.lacks("track saw")) {
      ways.add("with a track saw");
    }
    if (!machines.lacks("circular saw")) {
      ways.add("with a circular saw along a clamped guide");
    }
    if (!machines.lacks("handsaw")) {
      ways.add("by hand to a knife line");
    }
    return ways;
  }

  private void drumSander(Length width, List<String> ways) {
    machines
        .drumSanderWidth()
        .filter(sander -> !width.isLongerThan(sander))
        .ifPresent(
            sander ->
                ways.add(
                    "with the drum sander (it takes %s)".formatted(format.formatWithUnit(sander))));
  }

  private void handPlane(List<String> ways) {
    if (!machines.lacks("hand plane")) {
      ways.add("with a hand plane");
    }
  }

  private void router(List<String> ways) {
    if (!machines.lacks("router")) {
      ways.add("with a router on a sled");
    }
  }

  /** Ways as a reader is told them: A, B or C. */
  static String oneOf(List<String> ways) {
    int last = ways.size() - 1;
    return last < 1
        ? String.join("", ways)
        : String.join(", ", ways.subList(0, last)) + " or " + ways.get(last);
  }
}
