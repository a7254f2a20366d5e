package storyrod.piece;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.Located;
import storyrod.description.PointAt;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Shapes;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.JointEffect.CutIn;

/** Reads slots, shaped notches and cutouts, and roundovers. */
final class ShapedCutReader {
  private static final String CODE = "cut-place";

  private final Map<String, Blank> blanks;
  private final Map<String, Contour> outlines;
  private final LengthFormat format;
  private final Diagnostics diagnostics;

  /**
   * @param outlines the contour of each part that has its own outline
   */
  ShapedCutReader(
      Map<String, Blank> blanks,
      Map<String, Contour> outlines,
      LengthFormat format,
      Diagnostics diagnostics) {
    this.blanks = blanks;
    this.outlines = outlines;
    this.format = format;
    this.diagnostics = diagnostics;
  }

  /** Whether a notch or cutout is more than a box. */
  static boolean isShaped(Entry entry) {
    return entry.has("radius") || entry.has("points");
  }

  /** A notch or cutout along a path. */
  Optional<CutIn> path(Entry entry) {
    Blank blank = blanks.get(entry.text("in"));
    boolean box = Arrays.stream(Axis.values()).anyMatch(axis -> entry.has(axis.word()));
    if (box || entry.has("radius")) {
      return fail(
          Diagnostic.error(CODE, entry.at(), "a cut has either points or ranges, not both")
              .hint("take `points` away, or the ranges and the radius"));
    }
    return new PathReader(blank, format, diagnostics)
        .read(entry)
        .flatMap(contour -> opened(entry, blank, contour));
  }

  /** A box-shaped cut with its inner corners rounded. */
  Optional<CutIn> rounded(Entry entry, CutIn boxCut) {
    Blank blank = blanks.get(boxCut.part());
    Box removed = ((Cut.Trench) boxCut.cut()).removed();
    Length radius = entry.length("radius");
    if (!removed.on(blank.thickness()).equals(blank.box().on(blank.thickness()))) {
      return fail(
          Diagnostic.error(CODE, entry.at("radius"), "only a cut right through has round corners")
              .hint("take `radius` away, or let it go through the thickness"));
    }
    for (Axis axis : Axis.values()) {
      if (axis != blank.thickness() && isTooRound(removed, blank.box(), axis, radius)) {
        return fail(
            Diagnostic.error(
                    CODE,
                    entry.at("radius"),
                    "corners of radius %s find no room in %s, the size of the %s on %s"
                        .formatted(
                            print(radius), print(removed.size(axis)), entry.kind(), axis.word()))
                .hint("make the radius smaller; for round ends write a `slot`"));
      }
    }
    return opened(entry, blank, rounded(removed, blank, radius));
  }

  private static boolean isTooRound(Box removed, Box part, Axis axis, Length radius) {
    boolean open =
        removed.on(axis).from().equals(part.on(axis).from())
            || removed.on(axis).to().equals(part.on(axis).to());
    return radius.times(open ? 1 : 2).isLongerThan(removed.size(axis));
  }

  /** A box with the corners rounded that do not lie on the part's own edge. */
  private static Contour rounded(Box removed, Blank blank, Length radius) {
    Face face = PathReader.face(blank);
    Contour plain = Contour.rectangle(removed, face);
    List<Face> sides = Rectangle.of(blank).sides();
    Pencil pencil = new Pencil();
    for (int i = 0; i < 4; i++) {
      Face before = sides.get((i + 3) % 4);
      Face after = sides.get(i);
      Point corner = plain.segments().get(i).from();
      boolean inner = isInner(before, removed, blank.box()) && isInner(after, removed, blank.box());
      if (inner) {
        pencil.rounded(corner, before, after, radius);
      } else {
        pencil.to(corner);
      }
    }
    return new Contour(face.axis(), pencil.closed());
  }

  private static boolean isInner(Face side, Box removed, Box part) {
    return !removed.at(side).equals(part.at(side));
  }

  Optional<CutIn> slot(Entry entry) {
    Blank blank = blanks.get(entry.text("in"));
    Axis along = entry.expect("along", Axis.class);
    Length length = entry.length("length");
    Length width = entry.length("width");
    if (along == blank.thickness()) {
      return fail(
          Diagnostic.error(
                  CODE,
                  entry.at("along"),
                  "a slot goes through the thickness of %s, which lies on %s"
                      .formatted(blank.name(), along.word()))
              .hint("let it run along another axis"));
    }
    if (!length.isLongerThan(width)) {
      return fail(
          Diagnostic.error(
                  CODE,
                  entry.at("length"),
                  "a slot %s long and %s wide is no slot".formatted(print(length), print(width)))
              .hint("make it longer than wide; for a round hole write `holes`"));
    }
    return middle(entry, blank)
        .map(middle -> slot(blank, middle, along, new Range(width, length)))
        .flatMap(
            contour ->
                new PathReader(blank, format, diagnostics)
                    .whole(entry, contour)
                    .flatMap(found -> opened(entry, blank, found)));
  }

  private Optional<Point> middle(Entry entry, Blank blank) {
    PointAt at = entry.expect("at", PointAt.class);
    PointOnFace middle = new PointOnFace(blank, PathReader.face(blank), at::on);
    Optional<Axis> missing = middle.missing();
    if (missing.isPresent()) {
      String axis = missing.get().word();
      return fail(
          Diagnostic.error(CODE, entry.at("at"), "the slot needs its place on " + axis)
              .hint("add `" + axis + ":` to `at`"));
    }
    return Optional.of(middle.point());
  }

  /** A slot; the sizes are its width and its length over all. */
  private static Contour slot(Blank blank, Point middle, Axis along, Range sizes) {
    Axis aside = Axis.other(blank.thickness(), along);
    Length radius = sizes.from().dividedBy(2, RoundingMode.FLOOR);
    Length half = sizes.to().dividedBy(2, RoundingMode.FLOOR);
    Pencil pencil = new Pencil();
    for (int sign : new int[] {1, -1}) {
      Point end = middle.moved(along, half.minus(radius).times(sign));
      pencil.to(end.moved(aside, radius.times(-sign)));
      pencil.arc(middle.moved(along, half.times(sign)), end.moved(aside, radius.times(sign)));
    }
    return new Contour(blank.thickness(), pencil.closed());
  }

  private Optional<CutIn> opened(Entry entry, Blank blank, Contour contour) {
    Face face = PathReader.face(blank);
    Contour outline = outlines.getOrDefault(blank.name(), Contour.rectangle(blank.box(), face));
    boolean notch = entry.kind().equals("notch");
    boolean fits =
        notch
            ? Shapes.taken(outline, contour) == Shapes.Taken.FROM_THE_EDGE
            : Shapes.isWithin(contour, outline);
    if (!fits) {
      return fail(notch ? noNotch(entry, blank, outline, contour) : breaksOut(entry, blank));
    }
    Cut cut =
        new Cut.Shaped(
            entry.kind(), face, contour, true, entry.find("for", String.class), entry.at());
    return Optional.of(new CutIn(blank.name(), cut));
  }

  private static Diagnostic breaksOut(Entry entry, Blank blank) {
    return Diagnostic.error(
            CODE, entry.at(), "this %s breaks out of %s".formatted(entry.kind(), blank.name()))
        .also(blank.at(), blank.name() + " is defined here")
        .hint("keep it away from the outline, or write `notch` if it is open at an edge");
  }

  private static Diagnostic noNotch(Entry entry, Blank blank, Contour outline, Contour contour) {
    String what =
        switch (Shapes.taken(outline, contour)) {
          case NOTHING -> "this notch takes no wood from %s";
          case FROM_THE_MIDDLE, FROM_THE_EDGE -> "this notch is not open at an edge of %s";
          case IN_TWO -> "this notch cuts %s in two";
          case ALL -> "this notch leaves nothing of %s";
        };
    return Diagnostic.error(CODE, entry.at(), what.formatted(blank.name()))
        .also(blank.at(), blank.name() + " is defined here")
        .hint("let it begin and end on the edge; in the middle of a part write `cutout`");
  }

  Optional<CutIn> roundover(Entry entry) {
    Blank blank = blanks.get(entry.text("in"));
    Optional<Face> around = entry.find("around", Face.class);
    List<Edge> edges =
        entry.list("edges", Edge.class).stream().map(Located::value).distinct().toList();
    if (around.isPresent() != edges.isEmpty()) {
      return fail(
          Diagnostic.error("roundover", entry.at(), "a roundover needs either edges or a face")
              .hint("write `edges: [front-top, left-top]`, or `around: top` for all of them"));
    }
    List<Edge> all = around.map(ShapedCutReader::edgesOf).orElse(edges);
    Length radius = entry.length("radius");
    for (Edge edge : all) {
      if (!hasRoom(blank.box(), edge, radius)) {
        return fail(tooRound(entry, blank, edge, radius));
      }
    }
    Face from = around.orElseGet(() -> runOn(edges, blank.thickness()));
    return Optional.of(
        new CutIn(
            blank.name(),
            new Cut.Roundover("roundover", from, all, around.isPresent(), radius, entry.at())));
  }

  /** The face that the edges share, or else a face that the first one lies on. */
  private static Face runOn(List<Edge> edges, Axis thickness) {
    Edge first = edges.getFirst();
    List<Face> both = new ArrayList<>(List.of(first.one(), first.other()));
    both.sort(java.util.Comparator.comparing(face -> face.axis() != thickness));
    return both.stream()
        .filter(face -> edges.stream().allMatch(edge -> edge.touches(face)))
        .findFirst()
        .orElse(both.getFirst());
  }

  private static List<Edge> edgesOf(Face face) {
    return Arrays.stream(Face.values())
        .filter(other -> other.axis() != face.axis())
        .map(other -> new Edge(face, other))
        .toList();
  }

  private static boolean hasRoom(Box box, Edge edge, Length radius) {
    return !radius.isLongerThan(box.size(edge.one().axis()))
        && !radius.isLongerThan(box.size(edge.other().axis()));
  }

  private Diagnostic tooRound(Entry entry, Blank blank, Edge edge, Length radius) {
    Length have = blank.box().size(edge.one().axis()).min(blank.box().size(edge.other().axis()));
    return Diagnostic.error(
            "roundover",
            entry.at("radius"),
            "a radius of %s is larger than the %s of %s at its edge %s"
                .formatted(print(radius), print(have), blank.name(), edge.word()))
        .also(blank.at(), blank.name() + " is defined here")
        .hint("make the radius smaller");
  }

  private String print(Length length) {
    return format.formatWithUnit(length);
  }

  private <T> Optional<T> fail(Diagnostic fault) {
    diagnostics.add(fault);
    return Optional.empty();
  }
}
