package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import storyrod.drawing.GeneralDrawing.Plan;
import storyrod.geometry.Face;
import storyrod.geometry.Lazy;
import storyrod.geometry.Parallel;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Makes the general drawings, as large as they can be where they share pages. */
final class GeneralSheets {
  /** So many drawings share a page at most. */
  static final int MOST = 3;

  /** How much larger views must be on more drawings than on fewer. */
  private static final double WORTH_MORE = 1.2;

  /** What shares a page is larger than this share of what it would be on one of its own. */
  private static final double LEAST_SHARE = 0.5;

  /** Shares of a page that a drawing may take beside all of it. */
  private static final double[] SMALLER = {0.66, 0.62, 0.55, 0.5, 0.45, 0.4, 1.0 / MOST};

  private static final String PAIR = "general-side-section";

  private final Shown shown;
  private final Rooms rooms;
  private final List<Scale> scales;

  private GeneralSheets(Piece piece, Shown shown, Rooms rooms) {
    this.shown = shown;
    this.rooms = rooms;
    this.scales = Scales.in(piece.description().printed().unit());
  }

  /** Draws as large as some scales and an area allow, or nothing. */
  private interface Fitting {
    Optional<Drawing> drawn(List<Scale> scales, Size area);

    static Fitting of(Plan plan) {
      return (some, area) -> GeneralDrawing.fitting(plan, some, area);
    }

    /** The largest of several ways to show the same, the first where they are equal. */
    static Fitting of(List<Plan> plans) {
      return (some, area) ->
          plans.stream()
              .flatMap(plan -> GeneralDrawing.fitting(plan, some, area).stream())
              .reduce((one, other) -> other.factor() > one.factor() ? other : one);
    }
  }

  /** A drawing to be made, with the sub-assemblies that it stands for, if any. */
  private record Wish(Fitting fitting, List<String> units) {
    static Wish of(Plan plan) {
      return new Wish(Fitting.of(plan), List.of());
    }
  }

  /** A general drawing with all the sizes that it may have, the largest first. */
  private record Choices(Wish wish, List<Drawing> drawings) {
    /** Nothing but the drawing on a turned page, if that is clearly larger. */
    Choices or(Optional<Drawing> turned) {
      return drawings.stream()
          .findFirst()
          .flatMap(upright -> TurnedPage.ifLarger(turned, upright))
          .map(larger -> new Choices(wish, List.of(larger)))
          .orElse(this);
    }

    boolean isNamed(String name) {
      return drawings.stream().anyMatch(each -> each.name().equals(name));
    }
  }

  static List<GeneralSheet> draw(Piece piece, Rooms rooms) {
    return of(piece).apply(rooms);
  }

  /** What draws those of a piece for some rooms; what they show is worked out once. */
  static Function<Rooms, List<GeneralSheet>> of(Piece piece) {
    Lazy<Shown> shown = new Lazy<>(() -> Shown.of(piece));
    return rooms -> new GeneralSheets(piece, shown.get(), rooms).drawn();
  }

  /** What the drawings show in rooms of any size: the whole, and units that are alike. */
  private record Shown(Lazy<GeneralPlans.Whole> whole, List<Alike> units) {
    static Shown of(Piece piece) {
      GeneralPlans plans = new GeneralPlans(piece, piece.description().words());
      return new Shown(
          new Lazy<>(plans::whole),
          alike(plans.units().nesting(), plans.units().drawn()).stream()
              .map(units -> new Alike(units, new Lazy<>(() -> plans.unit(units.getFirst()))))
              .toList());
    }
  }

  /** Units that are alike, with the ways to show them. */
  private record Alike(List<String> units, Lazy<List<Plan>> plans) {}

  private List<GeneralSheet> drawn() {
    List<Supplier<List<Choices>>> all =
        Stream.<Supplier<List<Choices>>>concat(
                Stream.of(() -> whole(shown.whole.get())),
                shown.units.stream().map(alike -> () -> unit(alike)))
            .toList();
    return packed(Parallel.map(all, Supplier::get).stream().flatMap(List::stream).toList());
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
    double largest = factor(best.subList(0, 1));
    return sheets(best, whole.section(), largest).filter(each -> !each.drawings.isEmpty()).toList();
  }

  /** The views and the section, which stands beside the view from its side where it fits there. */
  private Stream<Choices> sheets(List<Plan> views, Optional<Plan> section, double largest) {
    Stream<Choices> each =
        views.stream()
            .map(
                plan ->
                    section
                        .flatMap(beside -> paired(plan, beside, largest))
                        .orElseGet(() -> view(plan, largest)));
    List<Choices> all = each.toList();
    boolean isPaired = all.stream().anyMatch(some -> some.isNamed(PAIR));
    return Stream.concat(
        all.stream(),
        section.stream().filter(plan -> !isPaired).map(plan -> choices(Wish.of(plan), 1)));
  }

  /** Views; that from the front decides on a page for itself where it is larger on a turned one. */
  private Choices view(Plan plan, double largest) {
    Choices choices = choices(Wish.of(plan), largest);
    return showsFront(plan) ? choices.or(turned(choices.wish.fitting, largest)) : choices;
  }

  private static boolean showsFront(Plan plan) {
    return GeneralDrawing.faces(plan.views()).contains(Face.FRONT);
  }

  /**
   * The view from the side beside the section, as large as both can be, if the section is half as
   * large as alone and the side no smaller than alone beside the other views.
   */
  private Optional<Choices> paired(Plan side, Plan section, double largest) {
    if (!GeneralDrawing.faces(side.views()).equals(Set.of(Face.RIGHT))) {
      return Optional.empty();
    }
    double sideAlone = factor(Fitting.of(side), largest);
    double sectionAlone = factor(Fitting.of(section), 1);
    double least = Math.max(sideAlone, sectionAlone * LEAST_SHARE);
    PairedDrawing pair = new PairedDrawing(PAIR, side, section);
    Choices upright = choices(new Wish(pair::fitting, List.of()), 1);
    return Stream.of(upright, upright.or(turned(pair::fitting, 1)))
        .filter(each -> !each.drawings.isEmpty() && each.drawings.getFirst().factor() >= least)
        .findFirst();
  }

  private double factor(Fitting fitting, double largest) {
    return drawn(fitting, 1, largest).map(Drawing::factor).orElse(0.0);
  }

  /** The scale of the smallest of some drawings, each on a page of its own. */
  private double factor(List<Plan> plans) {
    return plans.stream().mapToDouble(this::largest).min().orElse(0);
  }

  private double largest(Plan plan) {
    return view(plan, 1).drawings.stream().mapToDouble(Drawing::factor).findFirst().orElse(0);
  }

  private List<Choices> unit(Alike alike) {
    Choices choices = choices(new Wish(Fitting.of(alike.plans.get()), alike.units), 1);
    return choices.drawings.isEmpty() ? List.of() : List.of(choices);
  }

  /** Sub-assemblies of equal parts in groups; one drawing shows each group. */
  static List<List<String>> alike(Nesting nesting, List<String> units) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (String unit : units) {
      String key = nesting.parts(unit).stream().map(Part::mark).sorted().toList().toString();
      alike.computeIfAbsent(key, marks -> new ArrayList<>()).add(unit);
    }
    return List.copyOf(alike.values());
  }

  /** The sizes that a drawing may have, none of them half as large as on a page of its own. */
  private Choices choices(Wish wish, double largest) {
    List<Drawing> choices = new ArrayList<>();
    drawn(wish.fitting, 1, largest).ifPresent(choices::add);
    for (double share : SMALLER) {
      if (!choices.isEmpty() && choices.getLast().heightMm() > room(share).heightMm()) {
        drawn(wish.fitting, share, largest)
            .filter(each -> each.factor() > choices.getFirst().factor() * LEAST_SHARE)
            .ifPresent(choices::add);
      }
    }
    return new Choices(wish, choices);
  }

  private Optional<Drawing> drawn(Fitting fitting, double share, double largest) {
    return fitting.drawn(upTo(largest), room(share));
  }

  private Optional<Drawing> turned(Fitting fitting, double largest) {
    return fitting.drawn(upTo(largest), room(rooms.turnedPage(), 1));
  }

  private List<Scale> upTo(double largest) {
    return scales.stream().filter(each -> each.factor() <= largest).toList();
  }

  private Size room(double share) {
    return room(rooms.page(), share);
  }

  private Size room(Size page, double share) {
    return new Size(page.widthMm(), page.heightMm() * share - rooms.besideGeneralMm());
  }

  private List<GeneralSheet> packed(List<Choices> all) {
    List<Packing.Item> items =
        all.stream()
            .map(each -> new Packing.Item(each.drawings.stream().map(this::onPageMm).toList()))
            .toList();
    List<GeneralSheet> sheets = new ArrayList<>();
    for (Packing.Page page : Packing.pages(items, rooms.page().heightMm(), MOST)) {
      for (int i = 0; i < page.choices().size(); i++) {
        Choices each = all.get(page.first() + i);
        Drawing upright = each.drawings.get(page.choices().get(i));
        Drawing shown = page.choices().size() == 1 ? alone(each.wish.fitting, upright) : upright;
        sheets.add(new GeneralSheet(shown, each.wish.units));
      }
    }
    return sheets;
  }

  /** What has a page to itself is as large as that allows, upright or turned. */
  private Drawing alone(Fitting fitting, Drawing drawing) {
    return isTurned(drawing)
        ? drawing
        : TurnedPage.larger(turned(fitting, 1), drawn(fitting, 1, 1).orElse(drawing));
  }

  private boolean isTurned(Drawing drawing) {
    return drawing.widthMm() > rooms.page().widthMm();
  }

  /** What lies on a turned page fills it. */
  private double onPageMm(Drawing drawing) {
    return isTurned(drawing)
        ? rooms.page().heightMm()
        : drawing.heightMm() + rooms.besideGeneralMm();
  }
}
