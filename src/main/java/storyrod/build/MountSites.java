package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import storyrod.build.Driving.Line;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Where hardware is screwed on, as far as its kind and the parts it serves tell: a slide's screws
 * go into the case's part beside the drawer, along the slide's line; the plate of a concealed hinge
 * sits behind the front edge; a pull is screwed on from behind; a levelling foot from below. Of the
 * rest only the part is known, and any free place on one of its faces will do.
 */
final class MountSites {
  /** From the front edge to the screws of a hinge's plate (common practice, from memory). */
  private static final Length PLATE = Length.mm(37);

  private static final Axis UP = Axis.Z;

  /** Places along a slide, and across a face. */
  private static final double[] SHARES = {0.5, 0.1, 0.9};

  private final Piece piece;
  private final Nesting nesting;

  MountSites(Piece piece, Nesting nesting) {
    this.piece = piece;
    this.nesting = nesting;
  }

  /**
   * Where an entry's hardware is screwed to a part.
   *
   * @param choices each with the lines of its screws, outwards; one of them has to be free
   * @param drilled whether pilot holes are drilled in the same lines
   */
  record Site(HardwareEntry entry, Part part, List<List<Line>> choices, boolean drilled) {}

  /** The sites of an entry; parts that lean are left out. */
  List<Site> of(HardwareEntry entry) {
    List<Site> sites =
        switch (piece.kind(entry.item().value())) {
          case SLIDE, UNDER_SLIDE -> slides(entry);
          case CONCEALED_HINGE -> plates(entry);
          case PULL, KNOB -> pulls(entry);
          case LEVELLING_FOOT -> anywhere(entry, List.of(Face.BOTTOM));
          case BUTT_HINGE, CATCH, ANTI_TIP_STRAP -> anywhere(entry, List.of(Face.values()));
          case FOOT, SHELF_PIN, OTHER, WOOD_SCREW, POCKET_SCREW, BRAD -> List.of();
          case TOP_FASTENER, ROTATING_FASTENER, BUTTON, DOWEL, BISCUIT -> List.of();
          case LOOSE_TENON, PLUG, WASHER -> List.of();
        };
    return sites.stream().filter(site -> !site.part().pose().isTurned()).toList();
  }

  private List<Part> parts(HardwareEntry entry, boolean isHung) {
    List<String> served = entry.parts().stream().map(Located::value).toList();
    return served.stream()
        .filter(part -> nesting.isHung(part, served) == isHung)
        .map(piece::part)
        .toList();
  }

  private List<Site> slides(HardwareEntry entry) {
    return Slides.beside(piece, nesting, entry).stream()
        .map(beside -> new Site(entry, beside.wall(), List.of(slide(beside, entry)), true))
        .toList();
  }

  private List<Line> slide(Slides.Beside beside, HardwareEntry entry) {
    Box side = beside.side().bounds();
    Face face = towards(beside.wall(), side, beside.side().thickness());
    Axis run = Axis.other(face.axis(), UP);
    boolean isUnder = piece.kind(entry.item().value()) == ItemKind.UNDER_SLIDE;
    Length height = isUnder ? side.z().from() : side.z().middle();
    Range along = shared(beside.wall().bounds().on(run), side.on(run));
    return DoubleStream.of(SHARES)
        .mapToObj(share -> at(beside.wall(), face).with(UP, height).with(run, at(along, share)))
        .map(spot -> new Line(spot.toMm(), face.normal()))
        .toList();
  }

  private static Range shared(Range one, Range other) {
    return one.overlaps(other) ? one.shared(other) : one;
  }

  /** The plates on what carries a door, in the line of its cups or of its ends. */
  private List<Site> plates(HardwareEntry entry) {
    return parts(entry, true).stream()
        .findFirst()
        .map(
            door ->
                parts(entry, false).stream()
                    .filter(wall -> wall.thickness() != door.thickness())
                    .map(wall -> new Site(entry, wall, List.of(plates(wall, door, entry)), true))
                    .toList())
        .orElse(List.of());
  }

  private List<Line> plates(Part wall, Part door, HardwareEntry entry) {
    Face face = towards(wall, door.bounds(), wall.thickness());
    Face edge = towards(wall, door.bounds(), door.thickness());
    Axis along = Axis.other(face.axis(), edge.axis());
    Length behind = wall.bounds().at(edge).minus(PLATE.times(edge.sign()));
    return heights(door, along, entry).stream()
        .map(height -> at(wall, face).with(edge.axis(), behind).with(along, height))
        .map(spot -> new Line(spot.toMm(), face.normal()))
        .toList();
  }

  private List<Length> heights(Part door, Axis along, HardwareEntry entry) {
    List<Length> cups =
        door.cuts(Cut.Holes.class).stream()
            .filter(cut -> cut.forWhat().filter(entry.item().value()::equals).isPresent())
            .flatMap(cut -> cut.centres().stream())
            .map(centre -> centre.on(along))
            .toList();
    Range whole = door.bounds().on(along);
    return cups.isEmpty() ? Stream.of(0.1, 0.9).map(share -> at(whole, share)).toList() : cups;
  }

  /** From the inner face of the innermost part of a front that stands before its drawer. */
  private List<Site> pulls(HardwareEntry entry) {
    return entry.parts().stream()
        .map(name -> piece.part(name.value()))
        .max(Comparator.comparing(part -> inwards(part).map(at -> depth(part, at)).orElse(0.0)))
        .flatMap(part -> inwards(part).map(face -> pull(entry, part, face)))
        .stream()
        .toList();
  }

  private Site pull(HardwareEntry entry, Part part, Face face) {
    Point spot = at(part, face);
    return new Site(entry, part, List.of(List.of(new Line(spot.toMm(), face.normal()))), false);
  }

  private static double depth(Part part, Face inwards) {
    return part.bounds().at(inwards).times(inwards.sign()).toMm();
  }

  /** Towards the middle of what hangs, where a part of it stands clearly before that. */
  private Optional<Face> inwards(Part part) {
    return nesting
        .looseUnit(part.name())
        .map(unit -> nesting.parts(unit).stream().map(Part::bounds).reduce(Box::around).get())
        .filter(
            unit ->
                !unit.on(part.thickness())
                    .shared(part.bounds().on(part.thickness()))
                    .contains(unit.middle().on(part.thickness())))
        .map(unit -> towards(part, unit, part.thickness()));
  }

  private List<Site> anywhere(HardwareEntry entry, List<Face> faces) {
    return entry.parts().stream()
        .map(name -> piece.part(name.value()))
        .map(part -> new Site(entry, part, spots(part, faces), true))
        .toList();
  }

  private static List<List<Line>> spots(Part part, List<Face> faces) {
    List<List<Line>> spots = new ArrayList<>();
    for (Face face : faces) {
      List<Axis> across = Arrays.stream(Axis.values()).filter(a -> a != face.axis()).toList();
      for (double one : SHARES) {
        for (double other : SHARES) {
          Point spot =
              at(part, face)
                  .with(across.get(0), at(part.bounds().on(across.get(0)), one))
                  .with(across.get(1), at(part.bounds().on(across.get(1)), other));
          spots.add(List.of(new Line(spot.toMm(), face.normal())));
        }
      }
    }
    return spots;
  }

  /** The face of a part, square to an axis, that looks at something. */
  static Face towards(Part part, Box other, Axis axis) {
    Length gap = other.middle().on(axis).minus(part.bounds().middle().on(axis));
    return Face.of(axis, gap.isNegative() ? -1 : 1);
  }

  /** The middle of a face. */
  private static Point at(Part part, Face face) {
    return part.bounds().middle().with(face.axis(), part.bounds().at(face));
  }

  private static Length at(Range range, double share) {
    return Length.nearest(range.from().toMm() + share * range.length().toMm());
  }
}
