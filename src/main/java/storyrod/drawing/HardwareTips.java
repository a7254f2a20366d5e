package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
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

  /** Two tips of one kind that are nearer, in mm, seem to end on one item. */
  private static final double APART_MM = 4;

  /** What stands for one balloon, and where its leader ends; empty where nothing is seen of it. */
  private record Place(List<Fitting> same, Optional<Tip> tip) {
    boolean isNear(Place other) {
      return isOfKind(other)
          && tip.isPresent()
          && other.tip.filter(at -> at.at().distance(tip.get().at()) < APART_MM).isPresent();
    }

    private boolean isOfKind(Place other) {
      return kind(same.getFirst().hardware()).equals(kind(other.same.getFirst().hardware()));
    }
  }

  private static List<String> kind(Hardware each) {
    return List.of(each.placed().item());
  }

  /**
   * One tip for what of one kind goes into one part, with its count, or into several whose tips
   * would seem to end on one item; one for each kind if those would be more than there is room for,
   * or one would be hidden. Of what nothing is seen there is none.
   */
  List<Tip> upTo(int most) {
    List<Place> places = apart(places(Hardware::atPlace));
    boolean isComplete = places.stream().allMatch(place -> place.tip().isPresent());
    return tips(isComplete && places.size() <= most ? places : places(HardwareTips::kind));
  }

  private static List<Tip> tips(List<Place> places) {
    return places.stream().flatMap(place -> place.tip().stream()).toList();
  }

  private List<Place> apart(List<Place> places) {
    List<Place> apart = new ArrayList<>();
    for (Place each : places) {
      Place joined = each;
      Optional<Place> near = near(joined, apart);
      while (near.isPresent()) {
        apart.remove(near.get());
        joined = joined(near.get(), joined);
        near = near(joined, apart);
      }
      apart.add(joined);
    }
    return apart;
  }

  private static Optional<Place> near(Place place, List<Place> others) {
    return others.stream().filter(place::isNear).findFirst();
  }

  private Place joined(Place one, Place other) {
    List<Fitting> both = Stream.concat(one.same.stream(), other.same.stream()).toList();
    return new Place(both, tip(both));
  }

  private List<Place> places(Function<Hardware, List<String>> place) {
    Map<List<String>, List<Fitting>> places = new LinkedHashMap<>();
    for (Fitting each : picture.fittings()) {
      places.computeIfAbsent(place.apply(each.hardware()), any -> new ArrayList<>()).add(each);
    }
    return places.values().stream().map(same -> new Place(same, tip(same))).toList();
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
