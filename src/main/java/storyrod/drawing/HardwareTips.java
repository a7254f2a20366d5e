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
  private static final double APART_MM = 2.5;

  /** The share of the best seen that may be pointed at where the best stands beside another's. */
  private static final double STILL_SEEN = 0.5;

  /** What stands for one balloon, and where its leader may end, the best first; none if hidden. */
  private record Place(List<Fitting> same, List<Tip> tips) {
    /** The same with the best tip that is apart from those of others; empty if none is. */
    Optional<Place> clearOf(List<Place> others) {
      return tips.isEmpty()
          ? Optional.of(this)
          : tips.stream()
              .map(tip -> new Place(same, List.of(tip)))
              .filter(place -> others.stream().noneMatch(place::isNear))
              .findFirst();
    }

    boolean isNear(Place other) {
      return isOfKind(other)
          && tip().isPresent()
          && other.tip().filter(at -> at.at().distance(tip().get().at()) < APART_MM).isPresent();
    }

    Optional<Tip> tip() {
      return tips.stream().findFirst();
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
      Optional<Place> clear = joined.clearOf(apart);
      while (clear.isEmpty()) {
        Place near = apart.stream().filter(joined::isNear).findFirst().orElseThrow();
        apart.remove(near);
        joined = joined(near, joined);
        clear = joined.clearOf(apart);
      }
      apart.add(clear.get());
    }
    return apart;
  }

  private Place joined(Place one, Place other) {
    return place(Stream.concat(one.same.stream(), other.same.stream()).toList());
  }

  private List<Place> places(Function<Hardware, List<String>> place) {
    Map<List<String>, List<Fitting>> places = new LinkedHashMap<>();
    for (Fitting each : picture.fittings()) {
      places.computeIfAbsent(place.apply(each.hardware()), any -> new ArrayList<>()).add(each);
    }
    return places.values().stream().map(this::place).toList();
  }

  private Place place(List<Fitting> same) {
    List<Hardware> bodies = same.stream().map(Fitting::hardware).toList();
    double most = same.stream().mapToDouble(each -> length(seen(each))).max().orElse(0);
    Comparator<Fitting> best =
        Comparator.comparing((Fitting each) -> length(seen(each)) < AS_WELL * most)
            .thenComparing(each -> -length(picture.seenWay(each)));
    return new Place(
        same,
        same.stream()
            .filter(each -> !seen(each).isEmpty() && length(seen(each)) >= STILL_SEEN * most)
            .sorted(best)
            .map(each -> new Tip(bodies.getFirst().mark(), on(each), Hardware.count(bodies)))
            .toList());
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
