package storyrod.planset;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Catches;
import storyrod.build.Lining;
import storyrod.build.Trials;
import storyrod.build.Verb;
import storyrod.description.HardwareEntry;
import storyrod.description.Located;
import storyrod.measure.Length;
import storyrod.piece.HardwareUse;
import storyrod.piece.Joint;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.HardwareNeed;

/** The hardware schedule: each item, how many, in which parts, and in which steps. */
public record HardwareList(List<Row> rows) {
  public HardwareList {
    rows = List.copyOf(rows);
  }

  /**
   * An item, with its mark in drawings; {@code parts} holds marks, {@code steps} step numbers, both
   * joined by commas, and where it is on trial before.
   */
  public record Row(String mark, String item, int count, String parts, String steps) {
    /** The same of another number. */
    Row counting(int other) {
      return new Row(mark, item, other, parts, steps);
    }
  }

  /** How many there are of a mark in all. */
  int count(String mark) {
    return rows.stream().filter(row -> row.mark().equals(mark)).mapToInt(Row::count).sum();
  }

  static HardwareList of(PlanSet set, Print print) {
    return of(
        set, print.texts(), need -> print.chosen().whole() || isIn(set, need, print.chosen()));
  }

  /** All items, as the shopping list has them, whatever is printed. */
  static HardwareList whole(PlanSet set, Texts texts) {
    return of(set, texts, need -> true);
  }

  private static HardwareList of(PlanSet set, Texts texts, Predicate<HardwareNeed> shown) {
    return new HardwareList(
        set.stock().hardware().stream().filter(shown).map(need -> row(set, need, texts)).toList());
  }

  private static boolean isIn(PlanSet set, HardwareNeed need, Chosen chosen) {
    String item = need.item();
    return set.build().steps().stream()
        .filter(chosen::has)
        .anyMatch(step -> uses(step, item) || tries(set.piece(), step, item));
  }

  private static Row row(PlanSet set, HardwareNeed need, Texts texts) {
    String item = need.item();
    String steps = numbers(set, step -> uses(step, item));
    String trials = numbers(set, step -> tries(set.piece(), step, item));
    return new Row(
        HardwareUse.of(set.piece()).mark(item),
        title(set.piece(), need, texts),
        need.count(),
        marks(set.piece(), item),
        trials.isEmpty() ? steps : texts.say("hardware.tried", steps, trials));
  }

  /** Its title; of a sheet that is cut to lie on a bottom with the size to which it is cut. */
  private static String title(Piece piece, HardwareNeed need, Texts texts) {
    return piece.description().hardware().stream()
        .filter(entry -> uses(entry, need.item()))
        .flatMap(entry -> Lining.of(piece, entry).stream())
        .map(lining -> texts.say("hardware.cut-to", need.title(), size(lining, texts)))
        .findFirst()
        .orElse(need.title());
  }

  private static String size(Lining lining, Texts texts) {
    Length one = lining.across().length();
    Length other = lining.along().length();
    return texts.inUnits(
        in -> in.say("size.two", in.length(one.max(other)), in.lengthWithUnit(one.min(other))));
  }

  private static String marks(Piece piece, String item) {
    List<String> parts =
        new java.util.ArrayList<>(
            piece.joints().stream()
                .filter(joint -> uses(joint, item))
                .flatMap(HardwareList::parts)
                .toList());
    List<HardwareEntry> entries =
        piece.description().hardware().stream().filter(entry -> uses(entry, item)).toList();
    entries.forEach(entry -> entry.parts().stream().map(Located::value).forEach(parts::add));
    parts.addAll(new Catches(piece).posts(entries));
    return parts.stream()
        .map(name -> piece.part(name).mark())
        .distinct()
        .sorted(java.util.Comparator.comparing(String::length).thenComparing(mark -> mark))
        .collect(Collectors.joining(", "));
  }

  private static java.util.stream.Stream<String> parts(Joint joint) {
    return java.util.stream.Stream.of(joint.first(), joint.second());
  }

  private static boolean uses(Joint joint, String item) {
    return joint.fasteners().stream().anyMatch(each -> each.item().equals(item));
  }

  private static boolean uses(HardwareEntry entry, String item) {
    return entry.item().value().equals(item) || entry.screw().filter(item::equals).isPresent();
  }

  private static String numbers(PlanSet set, Predicate<Step> which) {
    return set.build().steps().stream()
        .filter(which)
        .map(step -> Integer.toString(step.number()))
        .collect(Collectors.joining(", "));
  }

  private static boolean uses(Step step, String item) {
    return step.hardware().stream().anyMatch(each -> each.item().equals(item));
  }

  /** Whether a step fits an item on trial; it counts where it is fitted for good. */
  private static boolean tries(Piece piece, Step step, String item) {
    return step.verb() == Verb.TRIAL_FIT
        && step.operations().stream()
            .flatMap(each -> Trials.hardware(piece, each.target()).stream())
            .anyMatch(each -> each.item().equals(item));
  }
}
