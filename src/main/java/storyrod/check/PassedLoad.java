package storyrod.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.wood.Beam;
import storyrod.wood.Beam.PointLoad;
import storyrod.wood.Mass;

/** A part that bends too far under what partitions pass on to it. */
final class PassedLoad implements Check {
  @Override
  public String code() {
    return "passed-on-load";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A flat part under partitions bends by no more than 0.02 in for each foot of its span under"
            + " what these pass on of the `load` of the part that they carry.",
        "Beam theory with the modulus of the Wood Handbook or of the stock; each partition carries"
            + " half of the load on each side of it; the limit is common practice.",
        "A partition that has a foot, a leg or a rail across right under it passes its load on to"
            + " that. Of what stiffens the part only a strip glued along its front counts; a back and"
            + " a frame help too. What a part passes on that itself stands on a flat part is not"
            + " followed further down.");
  }

  /** What a partition passes on of the load of a part, in N, and where. */
  private record Passed(Part loaded, Located<Rational> load, Part partition, PointLoad at) {}

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Map<Part, List<Passed>> onEach = new LinkedHashMap<>();
    for (Part loaded : piece.parts()) {
      ShelfSag.load(piece, loaded).ifPresent(load -> collect(piece, loaded, load, onEach));
    }
    return onEach.entrySet().stream()
        .flatMap(
            each ->
                FlatBeam.of(piece, each.getKey()).stream()
                    .flatMap(beam -> finding(piece, each.getKey(), each.getValue(), beam)))
        .toList();
  }

  /** Adds what each partition passes on to the part on which it stands. */
  private static void collect(
      Piece piece, Part loaded, Located<Rational> load, Map<Part, List<Passed>> onEach) {
    Axis along = loaded.length();
    List<Part> partitions = Supports.between(piece, loaded);
    List<Double> at = new ArrayList<>();
    at.add(loaded.shoulder().on(along).from().toMm());
    partitions.forEach(each -> at.add(each.bounds().on(along).middle().toMm()));
    at.add(loaded.shoulder().on(along).to().toMm());
    double perMm = load.value().toDouble() * Mass.GRAVITY / (at.getLast() - at.getFirst());
    for (int i = 0; i < partitions.size(); i++) {
      Part partition = partitions.get(i);
      double force = perMm * (at.get(i + 2) - at.get(i)) / 2;
      Passed passed = new Passed(loaded, load, partition, new PointLoad(at.get(i + 1), force));
      piece.parts().stream()
          .filter(bearing -> bears(bearing, partition, along))
          .findFirst()
          .ifPresent(
              bearing -> onEach.computeIfAbsent(bearing, any -> new ArrayList<>()).add(passed));
    }
  }

  private static boolean bears(Part bearing, Part partition, Axis along) {
    return bearing.thickness() == Axis.Z
        && bearing.length() == along
        && !bearing.pose().isTurned()
        && Supports.touches(bearing, partition)
        && bearing.box().at(Face.BOTTOM).isShorterThan(partition.bounds().at(Face.BOTTOM));
  }

  private Stream<Diagnostic> finding(Piece piece, Part bearing, List<Passed> all, Beam beam) {
    return spans(piece, bearing).stream()
        .map(span -> bent(span, all, beam))
        .filter(each -> each.bendsMm > each.spanMm * ShelfSag.LIMIT)
        .max(Comparator.comparingDouble(Bent::bendsMm))
        .map(each -> finding(piece, bearing, each))
        .stream();
  }

  /** How far a span bends under what is passed on to it. */
  private record Bent(double spanMm, double bendsMm, List<Passed> passed) {
    private String names(Function<Passed, Part> which) {
      return passed.stream()
          .map(which)
          .map(Part::name)
          .distinct()
          .collect(Collectors.joining(", "));
    }

    /** All that lies on the parts above, in kg. */
    private double loadKg() {
      Map<String, Double> loads = new LinkedHashMap<>();
      passed.forEach(each -> loads.put(each.loaded.name(), each.load.value().toDouble()));
      return loads.values().stream().mapToDouble(each -> each).sum();
    }
  }

  private static Bent bent(Stretch span, List<Passed> all, Beam beam) {
    List<Passed> here = all.stream().filter(each -> span.holds(each.at.atMm())).toList();
    List<PointLoad> loads =
        here.stream()
            .map(each -> new PointLoad(each.at.atMm() - span.fromMm, each.at.force()))
            .toList();
    return new Bent(span.longMm(), beam.deflection(span.longMm(), loads), here);
  }

  /** Where nothing is under a part. */
  private record Stretch(double fromMm, double toMm) {
    double longMm() {
      return toMm - fromMm;
    }

    boolean holds(double atMm) {
      return atMm > fromMm && atMm < toMm;
    }
  }

  /** The stretches between what is under a part, or between that and its ends. */
  private static List<Stretch> spans(Piece piece, Part bearing) {
    Axis along = bearing.length();
    Range whole = bearing.shoulder().on(along);
    List<Range> under =
        piece.parts().stream()
            .filter(part -> isUnder(part, bearing))
            .map(part -> part.bounds().on(along))
            .sorted(Comparator.comparing(Range::from))
            .toList();
    List<Stretch> spans = new ArrayList<>();
    Length from = whole.from();
    for (Range each : under) {
      if (each.from().isLongerThan(from)) {
        spans.add(new Stretch(from.toMm(), each.from().toMm()));
      }
      from = from.max(each.to());
    }
    if (whole.to().isLongerThan(from)) {
      spans.add(new Stretch(from.toMm(), whole.to().toMm()));
    }
    return spans;
  }

  /** What stands under a part, but what only runs along it: a rail bends with it. */
  private static boolean isUnder(Part part, Part bearing) {
    return part != bearing
        && part.bounds().at(Face.BOTTOM).isShorterThan(bearing.box().at(Face.BOTTOM))
        && Supports.touches(part, bearing)
        && part.bounds().size(bearing.length()).times(2).isShorterThan(bearing.finishedLength());
  }

  private Diagnostic finding(Piece piece, Part bearing, Bent bent) {
    Seasons print = new Seasons(piece);
    return Diagnostic.warning(
            code(),
            bent.passed.getFirst().load.at(),
            "%s bends by %s over a span of %s under its share of the %s on %s, passed on by %s; %s would pass"
                .formatted(
                    bearing.name(),
                    print.print(bent.bendsMm),
                    print.print(bent.spanMm),
                    ShelfSag.load(piece, bent.loadKg()),
                    bent.names(Passed::loaded),
                    bent.names(Passed::partition),
                    print.print(bent.spanMm * ShelfSag.LIMIT)))
        .also(bearing.at(), bearing.name() + " is defined here")
        .hint("put a foot or a leg under each of them, or stiffen it with a strip on edge");
  }
}
