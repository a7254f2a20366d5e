package storyrod.planset;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping;
import storyrod.build.Clamping.Clamps;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Piece;

/** Where the clamps of a step go, in parts as they are spoken of. */
record ClampData(Piece piece, PartPhrases phrases) {
  /** The values of a step that builds on a level. */
  Map<String, Object> of(Step step, String level) {
    Clamping.Found found = Clamping.of(piece, step);
    return Map.of(
        "clamps", alike(found.clamps()).stream().map(each -> data(each, level)).toList(),
        "clampsBare", !found.bare().isEmpty());
  }

  /** Clamps that close equal joints of equal parts alike, told together. */
  private record Alike(Axis axis, Length opening, List<String> marks) {}

  private record Spread(Axis axis, Length opening, int count, List<String> on) {
    static Spread sum(Spread one, Spread other) {
      List<String> on = Stream.of(one.on(), other.on()).flatMap(List::stream).distinct().toList();
      return new Spread(one.axis(), one.opening(), one.count() + other.count(), on);
    }
  }

  private Collection<Spread> alike(List<Clamps> all) {
    Map<Alike, Spread> sets = new LinkedHashMap<>();
    for (Clamps each : all) {
      List<String> on = List.of(each.low(), each.high());
      List<String> marks = on.stream().map(part -> piece.part(part).mark()).sorted().toList();
      sets.merge(
          new Alike(each.axis(), each.opening(), marks),
          new Spread(each.axis(), each.opening(), each.count(), on),
          Spread::sum);
    }
    return sets.values();
  }

  private Map<String, Object> data(Spread clamps, String level) {
    return Map.of(
        "axis", clamps.axis().name().toLowerCase(Locale.ROOT),
        "count", clamps.count(),
        "opening", piece.description().format().formatWithUnit(clamps.opening()),
        "on", phrases.units(clamps.on(), level));
  }
}
