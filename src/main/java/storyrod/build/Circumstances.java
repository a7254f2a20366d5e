package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import storyrod.description.FinishEntry;
import storyrod.description.ItemEntry;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Piece;

/**
 * What the materials and means of an operation ask for beside the work itself, as traits: by these
 * the tables give tools and cautions.
 */
final class Circumstances {
  private static final Pattern GLUED_BOARD =
      words("mdf|hdf|medium density .*|particle ?board|chipboard|fib(?:re|er)board|hardboard|osb");
  private static final Pattern INSTANT_GLUE =
      words("cyanoacrylate|instant glue|super ?glue|ca glue");
  private static final Pattern CORD =
      words("cords?|cables?|grommets?|wiring|power sockets?|outlets?|lamps?");

  /** What a maker says of pegs that are not all driven in dry. */
  private static final Pattern GLUED = words("glue (?:only|the|it|them|one)");

  /** What a maker says of felt, leather or paper that a knife cuts. */
  private static final Pattern TRIMMED = words("cut");

  /** What a maker says of edges that are levelled once they are together. */
  private static final Pattern PLANED = words("plane");

  private static final Pattern SOFT =
      words("felt|leather|cloth|fabric|baize|velvet|paper|cork|foam");

  /** Thinner boards need care in a planer (common practice). */
  private static final Length THIN = Length.inch(3, 8);

  private final Piece piece;

  Circumstances(Piece piece) {
    this.piece = piece;
  }

  private static Pattern words(String words) {
    return Pattern.compile(
        "\\b(?:" + words + ")\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /** The traits of an operation and of what the maker says of it. */
  List<String> of(Operation operation, List<String> said) {
    List<String> traits = new ArrayList<>();
    if (makesDust(operation.verb())) {
      if (stocks(operation).anyMatch(stock -> stock.figures().spalted())) {
        traits.add("spalted");
      }
      if (stocks(operation).anyMatch(Circumstances::isGluedBoard)) {
        traits.add("board-dust");
      }
    }
    if (texts(operation, said).anyMatch(text -> INSTANT_GLUE.matcher(text).find())) {
      traits.add("instant-glue");
    }
    if (texts(operation, said).anyMatch(text -> CORD.matcher(text).find())) {
      traits.add("cord");
    }
    if (operation.verb() == Verb.MOUNT
        && texts(operation, List.of()).anyMatch(text -> SOFT.matcher(text).find())
        && said.stream().anyMatch(text -> TRIMMED.matcher(text).find())) {
      traits.add("cut-soft");
    }
    if (operation.verb() == Verb.FIT
        && said.stream().anyMatch(text -> PLANED.matcher(text).find())) {
      traits.add("fit-planed");
    }
    if (operation.joints().stream().anyMatch(joint -> Traits.isPegged(piece, joint))
        && said.stream().anyMatch(text -> GLUED.matcher(text).find())) {
      traits.add("fit-peg-glued");
    }
    if (isPlanedThin(operation)) {
      traits.add("thin-stock");
    }
    if (isStuckOverWax(operation)) {
      traits.add("wiped-off-wax");
    }
    application(operation.verb()).ifPresent(traits::add);
    return List.copyOf(traits);
  }

  private boolean isPlanedThin(Operation operation) {
    return operation.verb() == Verb.MILL
        && stocks(operation)
            .filter(stock -> stock.kind() == StockKind.SOLID)
            .anyMatch(stock -> stock.thickness().value().isShorterThan(THIN));
  }

  /** Wax is wiped off with spirits where something is to stick. */
  private boolean isStuckOverWax(Operation operation) {
    return operation.verb() == Verb.MOUNT
        && piece
            .item(operation.target())
            .filter(item -> Sticking.isOverWax(piece, item))
            .isPresent();
  }

  private static boolean makesDust(Verb verb) {
    return switch (verb) {
      case MILL, BLANK, KEEP, SIZE, CUT, DRILL, SAND, TRIM, PRE_FINISH, FINISH -> true;
      case CHOOSE, MARK -> false;
      case REJOIN, DRY_FIT, FIT, TRIAL_FIT, MOUNT, TEST -> false;
    };
  }

  private Stream<StockEntry> stocks(Operation operation) {
    return operation.parts().stream().map(part -> piece.part(part).stock());
  }

  private static boolean isGluedBoard(StockEntry stock) {
    return stock.kind() == StockKind.SHEET && GLUED_BOARD.matcher(stock.species()).find();
  }

  /** The names of what it makes room for or uses, and the maker's words. */
  private Stream<String> texts(Operation operation, List<String> said) {
    Stream<String> items =
        Stream.concat(
                operation.cuts().stream().map(Cut::forWhat).flatMap(Optional::stream),
                operation.hardware().stream().map(ItemCount::item))
            .flatMap(name -> piece.item(name).stream())
            .map(ItemEntry::title);
    return Stream.concat(items, said.stream());
  }

  private Optional<String> application(Verb verb) {
    Optional<String> how = piece.description().finish().flatMap(FinishEntry::how);
    return switch (verb) {
      case TEST, PRE_FINISH, FINISH ->
          Optional.of(how.map(word -> "by-" + word).orElse(verb.word() + "-by-any"));
      default -> Optional.empty();
    };
  }
}
