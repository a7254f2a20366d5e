package storyrod.planset;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping;
import storyrod.build.Clamping.Clamps;
import storyrod.build.GlueTurns;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Where the clamps of a step go, in parts as they are spoken of. */
record ClampData(Piece piece, PartPhrases phrases) {
  /** What a jaw takes below the face that it bears on (common practice, from memory). */
  private static final Length JAW = Length.mm(40);

  /** Thinner than this, wood passes pressure on to so little beside a jaw (common practice). */
  private static final Length STIFF = Length.inch(1, 2);

  /** Longer than this, a strip takes several clamps with gaps between them (common practice). */
  private static final Length LONG_STRIP = Length.inches(12);

  /** The values of a step that builds on a level. */
  Map<String, Object> of(Step step, String level) {
    Clamping.Found found = Clamping.of(piece, step);
    Map<Setting, List<Spread>> settings =
        alike(found.clamps().isEmpty() ? Clamping.drawing(piece, step) : found.clamps()).stream()
            .collect(
                Collectors.groupingBy(Spread::setting, LinkedHashMap::new, Collectors.toList()));
    GlueTurns turns = GlueTurns.of(piece, step);
    return Map.ofEntries(
        Map.entry("turns", turns.turns()),
        Map.entry("atOnce", turns.atOnce()),
        Map.entry("shopClamps", piece.description().shop().clamps()),
        Map.entry(
            "clamps",
            settings.entrySet().stream()
                .map(each -> data(each.getKey(), each.getValue(), level))
                .toList()),
        Map.entry("jawsUnder", hasJawsUnder(step)),
        Map.entry("lowest", phrases.parts(lowest(step.standing()))),
        Map.entry("flatLowest", phrases.parts(flatLowest(step))),
        Map.entry("clampsBare", !found.bare().isEmpty()),
        Map.entry("cauled", phrases.parts(cauled(step, found))),
        Map.entry("strips", phrases.parts(strips(step, found))),
        Map.entry("panelsPressed", panelsPressed(step, found)));
  }

  /** What is too thin to be pressed but where another part stands behind it, and these parts. */
  private List<Map<String, Object>> panelsPressed(Step step, Clamping.Found found) {
    Map<String, List<String>> carriers = new LinkedHashMap<>();
    found.through().stream()
        .filter(each -> !step.newParts().contains(each.under()))
        .filter(each -> isThin(piece.part(each.under()), each.axis()))
        .forEach(
            each ->
                carriers
                    .computeIfAbsent(each.under(), panel -> new ArrayList<>())
                    .add(each.carrier()));
    return carriers.entrySet().stream()
        .<Map<String, Object>>map(
            each ->
                Map.of(
                    "panel", phrases.parts(List.of(each.getKey())),
                    "carriers", phrases.parts(each.getValue().stream().distinct().toList())))
        .toList();
  }

  /** The parts that come and are too thin to spread the pressure from clamp to clamp. */
  private List<String> strips(Step step, Clamping.Found found) {
    return found.clamps().stream()
        .flatMap(
            each ->
                Stream.of(each.low(), each.high())
                    .filter(step.newParts()::contains)
                    .filter(name -> isStrip(piece.part(name), each.axis(), step)))
        .distinct()
        .toList();
  }

  /** Whether a thin part is joined far along its length, and not at its ends only. */
  private static boolean isStrip(Part part, Axis pressed, Step step) {
    return isThin(part, pressed)
        && step.operations().stream()
            .flatMap(operation -> operation.joints().stream())
            .filter(joint -> joint.glued() && joint.entry().axis() == pressed)
            .filter(joint -> List.of(joint.first(), joint.second()).contains(part.name()))
            .map(joint -> joint.contact().size(part.length()))
            .anyMatch(along -> along.isLongerThan(LONG_STRIP));
  }

  private static boolean isThin(Part part, Axis pressed) {
    return part.bounds().size(pressed).isShorterThan(STIFF);
  }

  /** The parts that come and that a caul presses. */
  private static List<String> cauled(Step step, Clamping.Found found) {
    return found.cauled().stream()
        .flatMap(joint -> Stream.of(joint.first(), joint.second()))
        .filter(step.newParts()::contains)
        .distinct()
        .toList();
  }

  /** What lies lowest of all that lies flat, as a bottom does. */
  private List<String> flatLowest(Step step) {
    return lowest(
        step.standing().stream().filter(name -> piece.part(name).thickness() == Axis.Z).toList());
  }

  private List<String> lowest(List<String> parts) {
    Map<Length, List<String>> byHeight =
        parts.stream()
            .collect(
                Collectors.groupingBy(
                    name -> piece.part(name).bounds().z().from(),
                    TreeMap::new,
                    Collectors.toList()));
    return byHeight.values().stream().findFirst().orElse(List.of());
  }

  boolean hasJawsUnder(Step step) {
    return Clamping.of(piece, step).clamps().stream().anyMatch(each -> isUnder(each, step));
  }

  /** Whether a jaw goes under what lies on the bench. */
  private boolean isUnder(Clamps clamps, Step step) {
    Face down = step.down();
    Length jaw = piece.part(down.sign() < 0 ? clamps.low() : clamps.high()).bounds().at(down);
    return clamps.axis() == down.axis()
        && Stream.concat(step.standing().stream(), step.newParts().stream())
            .map(part -> piece.part(part).bounds().at(down))
            .noneMatch(at -> !at.minus(jaw).times(down.sign()).isShorterThan(JAW));
  }

  /** Which way clamps lie and how far they open: those alike in both are told in one. */
  private record Setting(Axis axis, Length opening, boolean curved) {}

  /** Clamps that close equal joints of equal parts alike. */
  private record Alike(Setting setting, List<String> marks) {}

  private record Spread(Setting setting, int count, List<String> on) {
    static Spread sum(Spread one, Spread other) {
      List<String> on = Stream.of(one.on(), other.on()).flatMap(List::stream).distinct().toList();
      return new Spread(one.setting(), one.count() + other.count(), on);
    }
  }

  private Collection<Spread> alike(List<Clamps> all) {
    Map<Alike, Spread> sets = new LinkedHashMap<>();
    for (Clamps each : all) {
      Setting setting = new Setting(each.axis(), each.opening(), each.curved());
      List<String> on = List.of(each.low(), each.high());
      List<String> marks = on.stream().map(part -> piece.part(part).mark()).sorted().toList();
      sets.merge(new Alike(setting, marks), new Spread(setting, each.count(), on), Spread::sum);
    }
    return sets.values();
  }

  private Map<String, Object> data(Setting setting, List<Spread> spread, String level) {
    return Map.of(
        "axis", setting.axis().name().toLowerCase(Locale.ROOT),
        "opening", piece.description().printed().formatWithUnit(setting.opening()),
        "curved", setting.curved(),
        "count", spread.stream().mapToInt(Spread::count).sum(),
        "jaws", spread.stream().map(each -> jaws(each, level)).toList());
  }

  private Map<String, Object> jaws(Spread spread, String level) {
    return Map.of("count", spread.count(), "on", phrases.units(spread.on(), level));
  }
}
