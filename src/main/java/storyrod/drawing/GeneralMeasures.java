package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Openings.Block;
import storyrod.drawing.Openings.Opening;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;

/**
 * The dimensions of several parts together, each once: overall sizes; openings with what stands
 * before them; how far a top or a front reaches past what is behind it; where the feet stand. Every
 * inner one runs between flat faces that a rule can be laid against. The last member of a row is
 * left out, for it follows from the whole.
 */
final class GeneralMeasures {
  private static final double ON_FACE_MM = 0.01;
  private static final double SQUARE = 1 - 1e-9;
  private static final Length LEAST = Length.mm(1);
  private static final int MOST_SEAMS = 6;

  private final LengthFormat format;
  private final Box box;
  private final List<Wanted> wanted = new ArrayList<>();
  private final List<Wanted> inside = new ArrayList<>();

  GeneralMeasures(Box box, LengthFormat format) {
    this.box = box;
    this.format = format;
  }

  List<Wanted> all() {
    return List.copyOf(wanted);
  }

  /** Those of a section, seen from the right; nothing that a view from outside gives. */
  List<Wanted> allInside() {
    return List.copyOf(inside);
  }

  /** The openings of a section, with the faces against which a rule can be laid. */
  void inside(Openings openings, List<FlatFace> faces) {
    int from = wanted.size();
    openings(Face.RIGHT, openings, faces);
    List<Wanted> added = wanted.subList(from, wanted.size());
    inside.addAll(added);
    added.clear();
  }

  void overall(Face view, Axis axis, Side side) {
    add(view, side, axis, box.on(axis));
  }

  private void add(Face view, Side side, Axis axis, Range range) {
    add(view, side, axis, range, edge(view, axis, side));
  }

  /** The other axis' place at which the measured points lie. */
  private Length edge(Face view, Axis axis, Side side) {
    Axis other = Axis.other(view.axis(), axis);
    boolean high = side == Side.ABOVE || side == Side.RIGHT;
    return box.on(other).end(high ? 1 : -1);
  }

  private void add(Face view, Side side, Axis axis, Range range, Length other) {
    Point base = box.low().with(Axis.other(view.axis(), axis), other);
    Wanted one =
        new Wanted(
            view,
            side,
            axis,
            base.with(axis, range.from()),
            base.with(axis, range.to()),
            format.told(range.length()));
    boolean given = wanted.stream().anyMatch(each -> each.axis() == axis && isSame(each, range));
    if (!given && !range.length().isShorterThan(LEAST)) {
      wanted.add(one);
    }
  }

  private static boolean isSame(Wanted one, Range range) {
    return isNear(one.range().from(), range.from()) && isNear(one.range().to(), range.to());
  }

  private static boolean isNear(Length one, Length other) {
    return one.minus(other).abs().isShorterThan(LEAST);
  }

  /** The openings that a view shows between parts, and the members before them. */
  void openings(Face view, List<Part> parts, Set<Side> closed) {
    Axis across = view.axis() == Axis.X ? Axis.Y : Axis.X;
    Axis up = Axis.other(view.axis(), across);
    Openings openings =
        new Openings(
            parts.stream()
                .map(part -> new Block(part.bounds().on(across), part.bounds().on(up)))
                .toList(),
            new Block(box.on(across), box.on(up)),
            closed);
    List<FlatFace> faces = parts.stream().flatMap(part -> part.placed().faces().stream()).toList();
    openings(view, openings, faces);
  }

  private void openings(Face view, Openings openings, List<FlatFace> faces) {
    Axis across = view.axis() == Axis.X ? Axis.Y : Axis.X;
    Axis up = Axis.other(view.axis(), across);
    for (Opening opening : openings.all()) {
      boolean low = opening.up().from().equals(box.on(up).from());
      boolean left = isLow(opening.across().middle(), across);
      Side level = low && view.axis() != Axis.Z ? Side.BELOW : Side.ABOVE;
      Side upright = view.axis() == Axis.X ? Side.RIGHT : left ? Side.LEFT : Side.RIGHT;
      Length foot = level == Side.BELOW ? opening.up().from() : opening.up().to();
      Length side = upright == Side.LEFT ? opening.across().from() : opening.across().to();
      edged(faces, across, openings.before(opening, true))
          .ifPresent(member -> add(view, level, across, member, foot));
      edged(faces, across, Optional.of(opening.across()))
          .ifPresent(clear -> add(view, level, across, clear, foot));
      edged(faces, up, openings.before(opening, false))
          .ifPresent(member -> add(view, upright, up, member, side));
      edged(faces, up, Optional.of(opening.up()))
          .ifPresent(clear -> add(view, upright, up, clear, side));
    }
  }

  private boolean isLow(Length at, Axis axis) {
    return at.isShorterThan(box.on(axis).middle());
  }

  /** A stretch of which both ends lie on flat faces square to it, or on the outline. */
  private Optional<Range> edged(List<FlatFace> faces, Axis axis, Optional<Range> stretch) {
    return stretch.filter(
        range -> isFlat(faces, axis, range.from()) && isFlat(faces, axis, range.to()));
  }

  private boolean isFlat(List<FlatFace> faces, Axis axis, Length at) {
    if (at.equals(box.on(axis).from()) || at.equals(box.on(axis).to())) {
      return true;
    }
    Vector3D out = Face.of(axis, 1).normal();
    for (FlatFace face : faces) {
      double sign = face.normal().dot(out);
      if (Math.abs(sign) > SQUARE
          && Math.abs(face.offsetMm() * Math.signum(sign) - at.toMm()) < ON_FACE_MM) {
        return true;
      }
    }
    return false;
  }

  /** A top or a front, with all else behind it. */
  record Plate(Face face, List<Part> plate, List<Part> body) {
    static Plate of(List<Part> parts, Box box, Face face) {
      List<Part> plate =
          parts.stream().filter(p -> p.bounds().at(face).equals(box.at(face))).toList();
      return new Plate(face, plate, parts.stream().filter(p -> !plate.contains(p)).toList());
    }

    boolean isPlate() {
      return !plate.isEmpty() && !body.isEmpty();
    }

    List<FlatFace> faces() {
      return body.stream().flatMap(part -> part.placed().faces().stream()).toList();
    }
  }

  /** How far a plate reaches past the body at its low end, and the body's size. */
  void overhang(Face view, Plate plate, Axis axis, Side side) {
    if (!plate.isPlate()) {
      return;
    }
    Range whole = Extent.around(plate.plate()).on(axis);
    Range body = Extent.around(plate.body()).on(axis);
    boolean reaches =
        whole.contains(body) && !whole.length().minus(body.length()).isShorterThan(LEAST);
    if (reaches && edged(plate.faces(), axis, Optional.of(body)).isPresent()) {
      Length edge = Extent.around(plate.body()).at(plate.face());
      add(view, side, axis, new Range(whole.from(), body.from()), edge);
      add(view, side, axis, body, edge);
    }
  }

  void thickness(Face view, Plate plate, Side side) {
    if (plate.isPlate()) {
      Range range = Extent.around(plate.plate()).on(plate.face().axis());
      boolean thin = range.length().times(4).isShorterThan(box.size(plate.face().axis()));
      if (thin) {
        add(view, side, plate.face().axis(), range);
      }
    }
  }

  /** From where to where the feet stand on the floor, where that is not the outline. */
  void feet(Face view, Plate top, Axis axis) {
    List<Part> parts = top.isPlate() ? top.body() : top.plate();
    double floor = box.z().from().toMm();
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    Vector3D out = Face.of(axis, 1).normal();
    for (Part part : parts) {
      for (FlatFace face : part.placed().faces()) {
        for (Vector3D corner : face.outer()) {
          if (corner.getZ() < floor + ON_FACE_MM) {
            from = Math.min(from, corner.dot(out));
            to = Math.max(to, corner.dot(out));
          }
        }
      }
    }
    if (from > to) {
      return;
    }
    Range stand = new Range(Length.nearest(from), Length.nearest(to));
    Range body = Extent.around(parts).on(axis);
    boolean splayed = body.equals(stand);
    Range whole = splayed ? box.on(axis) : body;
    if (!isNear(stand.length(), whole.length())) {
      add(view, Side.BELOW, axis, new Range(whole.from(), stand.from()), box.z().from());
      add(view, Side.BELOW, axis, stand, box.z().from());
    }
  }

  /** The widths of boards that lie flush in one plane, but for the last. */
  void seams(Face view, List<Part> flush, Axis axis, Side side) {
    TreeSet<Length> at = new TreeSet<>();
    Vector3D out = Face.of(axis, 1).normal();
    flush.stream()
        .flatMap(part -> part.placed().faces().stream())
        .filter(face -> liesIn(face, view))
        .flatMap(face -> face.outer().stream())
        .forEach(corner -> at.add(Length.nearest(corner.dot(out))));
    if (at.size() < 3 || at.size() > MOST_SEAMS) {
      return;
    }
    Length before = at.first();
    for (Length next : at.subSet(before, false, at.last(), false)) {
      add(view, side, axis, new Range(before, next));
      before = next;
    }
  }

  private boolean liesIn(FlatFace face, Face plane) {
    double there = box.at(plane).toMm() * plane.sign();
    return face.normal().dot(plane.normal()) > SQUARE
        && Math.abs(face.offsetMm() - there) < ON_FACE_MM;
  }
}
