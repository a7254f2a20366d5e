package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Note;
import storyrod.geometry.Box;
import storyrod.geometry.Face;

/**
 * The enlarged details of a part's drawing (ISO 128-3): a joint whose lines lie nearer to each
 * other on the paper than can be read is shown larger, with its dimensions.
 *
 * @param shown the drawing's views
 */
record Details(FlatPart flat, Map<Face, Shown> shown, Notation notation) {
  /** Lines nearer than this are shown larger where there is room for it, in mm. */
  static final double WISH_MM = 3;

  /** Lines nearer than this have to be shown larger. */
  static final double MUST_MM = 1.5;

  /** How much larger than the drawing a detail is at least. */
  private static final double LARGER = 1.9;

  private static final int MOST = 6;

  /** The scales of details: what is finer than full size shows is enlarged (ISO 5455). */
  private static final List<Scale> FINER = List.of(new Scale(2, 1), new Scale(5, 1));

  /** Joints that one detail shows, and how much of the part. */
  private record Cluster(Scale scale, List<FineFeature> features, Box window) {
    Face face() {
      return features.getFirst().face();
    }
  }

  /** The details of a drawing to a scale, the finest first. */
  List<Detail> of(String mark, double factor, List<Wanted> wanted) {
    return finer(WISH_MM, factor, new Told(mark, wanted));
  }

  /** Those without which it cannot be read. */
  List<Detail> needed(String mark, double factor, List<Wanted> wanted) {
    return finer(MUST_MM, factor, new Told(mark, wanted));
  }

  /** What details are named after, and the dimensions from which they take theirs. */
  private record Told(String mark, List<Wanted> wanted) {}

  private List<Detail> finer(double leastMm, double factor, Told told) {
    List<Cluster> clusters = new ArrayList<>();
    for (FineFeature feature : FineFeature.of(flat, shown.keySet())) {
      if (feature.isTooFine(factor, leastMm)) {
        add(feature, factor, clusters);
      }
    }
    List<Detail> details = new ArrayList<>();
    List<Wanted> left = new ArrayList<>(told.wanted);
    for (Cluster cluster : clusters.subList(0, Math.min(MOST, clusters.size()))) {
      Detail.Name name = new Detail.Name(told.mark, details.size() + 1);
      Detail detail = detail(name, cluster, left);
      detail.said().moved().forEach(each -> left.remove(each.before()));
      details.add(detail);
    }
    return details;
  }

  /** Shows a joint in a detail that stands already if it lies in there, else in one of its own. */
  private void add(FineFeature feature, double factor, List<Cluster> clusters) {
    for (int i = 0; i < clusters.size(); i++) {
      Cluster cluster = clusters.get(i);
      Box own = window(feature, cluster.scale);
      Box both = cluster.window.around(own);
      boolean isNear =
          cluster.face() == feature.face()
              && feature.isClear(cluster.scale.factor())
              && cluster.window.overlaps(own)
              && new DetailWindow(flat, cluster.scale.factor()).holds(both, feature.face());
      if (isNear) {
        List<FineFeature> all =
            Stream.concat(cluster.features.stream(), Stream.of(feature)).toList();
        clusters.set(i, new Cluster(cluster.scale, all, both));
        return;
      }
    }
    Scale scale = scale(feature, factor);
    clusters.add(new Cluster(scale, List.of(feature), window(feature, scale)));
  }

  private Box window(FineFeature feature, Scale scale) {
    return new DetailWindow(flat, scale.factor()).of(feature.box());
  }

  /** The smallest at which the joint can be read and that is clearly larger than the drawing's. */
  private Scale scale(FineFeature feature, double factor) {
    List<Scale> all = new ArrayList<>(FINER.reversed());
    all.addAll(Scales.in(notation.format().unit()));
    return all.reversed().stream()
        .filter(each -> each.factor() >= LARGER * factor)
        .filter(each -> feature.isClear(each.factor()))
        .findFirst()
        .orElse(all.getFirst());
  }

  private Detail detail(Detail.Name name, Cluster cluster, List<Wanted> wanted) {
    PlacedView whole =
        new PlacedView(flat, cluster.face(), Ruler.unbroken(cluster.scale.factor()), 0);
    DetailView view = new DetailView(whole, cluster.window);
    DetailDimensions dimensions = new DetailDimensions(flat, view, cluster.features);
    List<Detail.Moves> moves = dimensions.of(wanted);
    List<Wanted> told = dimensions.told(notation, moves);
    List<CutNote> notes = dimensions.slopes(notation);
    return new Detail(
        name, cluster.scale, view, cluster.features, new Detail.Said(moves, told, notes));
  }

  /**
   * Puts details on the paper where there is room between and beside what stands there.
   *
   * @return false if there is none
   */
  boolean place(List<Detail> details, Paper paper, Room room) {
    return details.stream().allMatch(each -> place(each, paper, room));
  }

  /** Whether a leader lies across a dimension line: then the details' names have no room. */
  boolean crossesDimensions(Paper paper) {
    List<Paper.Stretch> dimensions = paper.dimensionLines();
    return paper.elements().stream()
        .flatMap(each -> each instanceof Note note ? Stream.of(note) : Stream.empty())
        .flatMap(note -> Stream.of(NotePlacer.leader(note), NotePlacer.landing(note)))
        .anyMatch(leader -> dimensions.stream().anyMatch(leader::crosses));
  }

  /** The paper that a drawing may take, and the views on which nothing else may lie. */
  record Room(Size area, List<Bounds> views) {}

  private boolean place(Detail detail, Paper paper, Room room) {
    Optional<Group> drawn = detail.drawn(shown.get(detail.view().face()), notation.words());
    Optional<Element> placed = drawn.flatMap(group -> new DetailPlace(paper, room).placed(group));
    placed.ifPresent(paper::add);
    return placed.isPresent();
  }
}
