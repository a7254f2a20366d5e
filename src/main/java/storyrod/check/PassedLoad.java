package storyrod.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

/** A part that bends too far under what partitions pass on to it. */
final class PassedLoad implements Check {
  private static final double GRAVITY = 9.80665;

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
            + " a frame help too.");
  }

  /** What a partition passes on, in N, and where. */
  private record Passed(Part partition, double atMm, double force) {}

  /** What passes on the load of a flat part to another. */
  private record Way(Part loaded, Located<Rational> load, Part bearing) {}

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Map<Way, List<Passed>> ways = new LinkedHashMap<>();
    for (Part loaded : piece.parts()) {
      ShelfSag.load(piece, loaded).ifPresent(load -> collect(piece, loaded, load, ways));
    }
    return ways.entrySet().stream()
        .flatMap(
            each ->
                FlatBeam.of(piece, each.getKey().bearing).stream()
                    .flatMap(beam -> finding(piece, each.getKey(), each.getValue(), beam)))
        .toList();
  }

  /** Adds what each partition passes on, by the part on which it stands. */
  private static void collect(
      Piece piece, Part loaded, Located<Rational> load, Map<Way, List<Passed>> ways) {
    Axis along = loaded.length();
    List<Part> partitions = Supports.between(piece, loaded);
    List<Double> at = new ArrayList<>();
    at.add(loaded.shoulder().on(along).from().toMm());
    partitions.forEach(each -> at.add(each.bounds().on(along).middle().toMm()));
    at.add(loaded.shoulder().on(along).to().toMm());
    double perMm = load.value().toDouble() * GRAVITY / (at.getLast() - at.getFirst());
    for (int i = 0; i < partitions.size(); i++) {
      Part partition = partitions.get(i);
      Passed passed = new Passed(partition, at.get(i + 1), perMm * (at.get(i + 2) - at.get(i)) / 2);
      piece.parts().stream()
          .filter(bearing -> bears(bearing, partition, along))
          .findFirst()
          .ifPresent(
              bearing ->
                  ways.computeIfAbsent(new Way(loaded, load, bearing), any -> new ArrayList<>())
                      .add(passed));
    }
  }

  private static boolean bears(Part bearing, Part partition, Axis along) {
    return bearing.thickness() == Axis.Z
        && bearing.length() == along
        && !bearing.pose().isTurned()
        && Supports.touches(bearing, partition)
        && bearing.box().at(Face.BOTTOM).isShorterThan(partition.bounds().at(Face.BOTTOM));
  }

  private Stream<Diagnostic> finding(Piece piece, Way way, List<Passed> all, Beam beam) {
    return spans(piece, way.bearing).stream()
        .map(span -> bent(span, all, beam))
        .filter(each -> !each.passed.isEmpty())
        .filter(each -> each.bendsMm > each.spanMm * ShelfSag.LIMIT)
        .max(Comparator.comparingDouble(Bent::bendsMm))
        .map(each -> finding(piece, way, each))
        .stream();
  }

  /** How far a span bends under what is passed on to it. */
  private record Bent(double spanMm, double bendsMm, List<Passed> passed) {}

  private static Bent bent(Stretch span, List<Passed> all, Beam beam) {
    List<Passed> here =
        all.stream().filter(each -> each.atMm > span.fromMm && each.atMm < span.toMm).toList();
    double most =
        here.stream().mapToDouble(each -> deflection(span, each.atMm, here, beam)).max().orElse(0);
    return new Bent(span.toMm - span.fromMm, most, here);
  }

  private static double deflection(Stretch span, double atMm, List<Passed> here, Beam beam) {
    double length = span.toMm - span.fromMm;
    return here.stream()
        .mapToDouble(
            each ->
                beam.deflectionUnder(
                    length, each.atMm - span.fromMm, each.force, atMm - span.fromMm))
        .sum();
  }

  /** Where nothing is under a part. */
  private record Stretch(double fromMm, double toMm) {}

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

  private Diagnostic finding(Piece piece, Way way, Bent bent) {
    Seasons print = new Seasons(piece);
    String partitions =
        bent.passed.stream().map(each -> each.partition.name()).collect(Collectors.joining(", "));
    return Diagnostic.warning(
            code(),
            way.load.at(),
            "%s bends by %s over a span of %s under its share of the %s on %s, passed on by %s; %s would pass"
                .formatted(
                    way.bearing.name(),
                    print.print(bent.bendsMm),
                    print.print(bent.spanMm),
                    ShelfSag.load(piece, way.load.value().toDouble()),
                    way.loaded.name(),
                    partitions,
                    print.print(bent.spanMm * ShelfSag.LIMIT)))
        .also(way.bearing.at(), way.bearing.name() + " is defined here")
        .hint("put a foot or a leg under each of them, or stiffen it with a strip on edge");
  }
}
