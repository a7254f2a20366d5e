package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import storyrod.drawing.Balloons.Tip;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Stroke;

/**
 * Chooses where the leaders of hardware end: on the one of each kind and place that is seen best.
 */
record HardwareTips(Fit fit, List<Fitting> fittings, List<Seen> seen) {

  /**
   * One tip for what of one kind goes into one part, with its count; one for each kind if those
   * would be more than there is room for, or one would be hidden. Of what nothing is seen there is
   * none.
   */
  List<Tip> upTo(int most) {
    List<Tip> byPlace = tips(Hardware::atPlace);
    boolean isComplete = places(Hardware::atPlace).size() == byPlace.size();
    return isComplete && byPlace.size() <= most
        ? byPlace
        : tips(each -> List.of(each.placed().item()));
  }

  private List<Tip> tips(Function<Hardware, List<String>> place) {
    return places(place).stream().flatMap(same -> tip(same).stream()).toList();
  }

  private List<List<Integer>> places(Function<Hardware, List<String>> place) {
    Map<List<String>, List<Integer>> places = new LinkedHashMap<>();
    IntStream.range(0, fittings.size())
        .forEach(
            i ->
                places
                    .computeIfAbsent(
                        place.apply(fittings.get(i).hardware()), any -> new ArrayList<>())
                    .add(i));
    return List.copyOf(places.values());
  }

  private java.util.Optional<Tip> tip(List<Integer> same) {
    List<Hardware> bodies = same.stream().map(i -> fittings.get(i).hardware()).toList();
    return same.stream()
        .map(i -> seen.get(i).lines().visible())
        .filter(strokes -> !strokes.isEmpty())
        .max(Comparator.comparingDouble(HardwareTips::length))
        .map(strokes -> new Tip(bodies.getFirst().mark(), middle(strokes), Hardware.count(bodies)));
  }

  private static double length(List<Stroke> strokes) {
    return strokes.stream().mapToDouble(Stroke::length).sum();
  }

  /** The middle of what is seen. */
  private At middle(List<Stroke> strokes) {
    List<At> ends = fit.on(strokes.stream().flatMap(Fit::ends).toList());
    double x = ends.stream().mapToDouble(At::x).average().orElse(0);
    double y = ends.stream().mapToDouble(At::y).average().orElse(0);
    return new At(x, y);
  }
}
