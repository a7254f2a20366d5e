package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.GeneralDrawing.Plan;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Makes the general drawings, as large as they can be where they share pages. */
final class GeneralSheets {
  /** So many drawings share a page at most. */
  static final int MOST = 3;

  /** How much larger views must be on more drawings than on fewer. */
  private static final double WORTH_MORE = 1.2;

  /** What shares a page is larger than this share of what it would be on one of its own. */
  private static final double LEAST_SHARE = 0.5;

  /** Shares of a page that a drawing may take beside all of it. */
  private static final double[] SMALLER = {0.62, 0.5, 1.0 / MOST};

  private final Piece piece;
  private final Rooms rooms;
  private final List<Scale> scales;

  private GeneralSheets(Piece piece, Rooms rooms) {
    this.piece = piece;
    this.rooms = rooms;
    this.scales = Scales.in(piece.description().format().unit());
  }

  /** A drawing to be made, with the sub-assemblies that it stands for, if any. */
  private record Wish(Plan plan, List<String> units) {}

  /** A general drawing with all the sizes that it may have, the largest first. */
  private record Choices(Wish wish, List<Drawing> drawings) {}

  static List<GeneralSheet> draw(Piece piece, Rooms rooms) {
    return new GeneralSheets(piece, rooms).drawn();
  }

  private List<GeneralSheet> drawn() {
    GeneralPlans plans = new GeneralPlans(piece, Words.ENGLISH);
    List<List<String>> alike = alike(plans.units());
    List<Choices> all =
        Stream.<java.util.function.Supplier<List<Choices>>>concat(
                Stream.of(() -> whole(plans.whole())),
                alike.stream().map(units -> () -> unit(plans, units)))
            .parallel()
            .flatMap(each -> each.get().stream())
            .toList();
    return packed(all);
  }

  private List<Choices> whole(GeneralPlans.Whole whole) {
    List<Plan> best = whole.arrangements().getFirst();
    double factor = factor(best);
    for (List<Plan> more : whole.arrangements().subList(1, whole.arrangements().size())) {
      double larger = factor(more);
      if (larger >= WORTH_MORE * factor) {
        best = more;
        factor = larger;
      }
    }
    double largest = drawn(best.getFirst(), 1, 1).map(GeneralSheets::factor).orElse(1.0);
    Stream<Choices> views = best.stream().map(plan -> choices(new Wish(plan, List.of()), largest));
    Stream<Choices> section =
        whole.section().stream().map(plan -> choices(new Wish(plan, List.of()), 1));
    return Stream.concat(views, section).filter(each -> !each.drawings.isEmpty()).toList();
  }

  /** The scale of the smallest of some drawings, each on a page of its own. */
  private double factor(List<Plan> plans) {
    return plans.stream()
        .mapToDouble(plan -> drawn(plan, 1, 1).map(GeneralSheets::factor).orElse(0.0))
        .min()
        .orElse(0);
  }

  private static double factor(Drawing drawing) {
    return drawing.scale().map(Scale::factor).orElse(0.0);
  }

  private List<Choices> unit(GeneralPlans plans, List<String> units) {
    Choices choices = choices(new Wish(plans.unit(units.getFirst()), units), 1);
    return choices.drawings.isEmpty() ? List.of() : List.of(choices);
  }

  /** Sub-assemblies of equal parts in groups; one drawing shows each group. */
  private static List<List<String>> alike(HungUnits units) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (String unit : units.drawn()) {
      String key =
          units.nesting().parts(unit).stream().map(Part::mark).sorted().toList().toString();
      alike.computeIfAbsent(key, marks -> new ArrayList<>()).add(unit);
    }
    return List.copyOf(alike.values());
  }

  /** The sizes that a drawing may have, none of them half as large as on a page of its own. */
  private Choices choices(Wish wish, double largest) {
    List<Drawing> choices = new ArrayList<>();
    drawn(wish.plan, 1, largest).ifPresent(choices::add);
    for (double share : SMALLER) {
      if (!choices.isEmpty() && choices.getLast().heightMm() > room(share).heightMm()) {
        drawn(wish.plan, share, largest)
            .filter(each -> factor(each) > factor(choices.getFirst()) * LEAST_SHARE)
            .ifPresent(choices::add);
      }
    }
    return new Choices(wish, choices);
  }

  private Optional<Drawing> drawn(Plan plan, double share, double largest) {
    List<Scale> some = scales.stream().filter(each -> each.factor() <= largest).toList();
    return GeneralDrawing.fitting(plan, some, room(share));
  }

  private Size room(double share) {
    double height = rooms.page().heightMm() * share - rooms.besideGeneralMm();
    return new Size(rooms.page().widthMm(), height);
  }

  private List<GeneralSheet> packed(List<Choices> all) {
    double beside = rooms.besideGeneralMm();
    List<Packing.Item> items =
        all.stream()
            .map(
                each ->
                    new Packing.Item(
                        each.drawings.stream().map(d -> d.heightMm() + beside).toList()))
            .toList();
    List<GeneralSheet> sheets = new ArrayList<>();
    for (Packing.Page page : Packing.pages(items, rooms.page().heightMm(), MOST)) {
      for (int i = 0; i < page.choices().size(); i++) {
        Choices each = all.get(page.first() + i);
        sheets.add(new GeneralSheet(each.drawings.get(page.choices().get(i)), each.wish.units));
      }
    }
    return sheets;
  }
}
