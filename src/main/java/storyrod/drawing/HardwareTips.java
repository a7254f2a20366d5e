package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import storyrod.drawing.Balloons.Tip;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Stroke;

/**
 * Chooses where the leaders of hardware end: on the one of each kind and place that is seen best
 * and, of several, whose way to its seat is: beside another part it would be taken for that one's.
 */
record HardwareTips(Fit fit, Picture picture) {
  /** The share of the best seen that counts as seen as well: alike items differ by roundings. */
  private static final double AS_WELL = 0.95;

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

  private List<List<Fitting>> places(Function<Hardware, List<String>> place) {
    Map<List<String>, List<Fitting>> places = new LinkedHashMap<>();
    for (Fitting each : picture.fittings()) {
      places.computeIfAbsent(place.apply(each.hardware()), any -> new ArrayList<>()).add(each);
    }
    return List.copyOf(places.values());
  }

  private Optional<Tip> tip(List<Fitting> same) {
    List<Hardware> bodies = same.stream().map(Fitting::hardware).toList();
    double most = same.stream().mapToDouble(each -> length(seen(each))).max().orElse(0);
    return same.stream()
        .filter(each -> !seen(each).isEmpty() && length(seen(each)) >= AS_WELL * most)
        .max(Comparator.comparingDouble(each -> length(picture.seenWay(each))))
        .map(best -> new Tip(bodies.getFirst().mark(), on(best), Hardware.count(bodies)));
  }

  private List<Stroke> seen(Fitting fitting) {
    return picture.seen(fitting).lines().visible();
  }

  private static double length(List<Stroke> strokes) {
    return strokes.stream().mapToDouble(Stroke::length).sum();
  }

  /** In the largest region that is seen of it, else on the longest line: always on the item. */
  private At on(Fitting fitting) {
    return Tips.largest(picture.seen(fitting))
        .map(Tips::inside)
        .or(() -> longest(fitting).map(line -> line.at(0.5)))
        .map(fit::on)
        .orElseThrow();
  }

  private Optional<Stroke> longest(Fitting fitting) {
    return seen(fitting).stream().max(Comparator.comparingDouble(Stroke::length));
  }
}
