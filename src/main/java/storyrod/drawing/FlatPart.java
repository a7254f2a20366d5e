package storyrod.drawing;

import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Cut.InPlace.Bore;
import storyrod.piece.Part;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;

/**
 * A part turned, never mirrored, so that its length runs to the right and the face with most cuts
 * looks to the front: x along the length, z along the width, y into the wood, each from 0.
 *
 * @param shown the face of the part, in the frame of the piece, that looks to the front
 * @param up the face of the part, in the frame of the piece, that lies at the top of the paper
 * @param cuts the part's cuts in the turned frame
 */
record FlatPart(Part part, Face shown, Face up, Box box, List<Cut> cuts) {
  FlatPart {
    cuts = List.copyOf(cuts);
  }

  static FlatPart of(Part part) {
    Turn turn = turn(part);
    Box box =
        new Box(
            new Range(Length.ZERO, part.finishedLength()),
            new Range(Length.ZERO, part.finishedThickness()),
            new Range(Length.ZERO, part.finishedWidth()));
    return new FlatPart(
        part, turn.back.opposite(), turn.up, box, part.cuts().stream().map(turn::turned).toList());
  }

  List<Cut.Trench> trenches() {
    return cuts.stream().filter(Cut.Trench.class::isInstance).map(Cut.Trench.class::cast).toList();
  }

  /** Whether it has cuts that a body of boxes does not show. */
  boolean isSlanted() {
    return cuts.stream().anyMatch(cut -> cut instanceof Slanted);
  }

  /** What is cut along paths, the part's own outline first if it has one. */
  List<Cut.Shaped> shaped() {
    return cuts.stream().filter(Cut.Shaped.class::isInstance).map(Cut.Shaped.class::cast).toList();
  }

  /** All boxes that are cut away. */
  List<Box> removed() {
    return cuts.stream().flatMap(cut -> cut.boxes().stream()).toList();
  }

  List<Cut.Tenon> tenons() {
    return cuts.stream().filter(Cut.Tenon.class::isInstance).map(Cut.Tenon.class::cast).toList();
  }

  Length size(Axis axis) {
    return box.size(axis);
  }

  /** Whether a stretch runs over the whole of an axis. */
  boolean full(Range range, Axis axis) {
    return range.equals(box.on(axis));
  }

  private static Turn turn(Part part) {
    Face usual = part.thickness() == Axis.Y ? Face.FRONT : Face.of(part.thickness(), 1);
    boolean other = cutsFrom(part, usual.opposite()) > cutsFrom(part, usual);
    Face shown = other ? usual.opposite() : usual;
    Turn plain = Turn.with(part.box(), Face.of(part.length(), 1), shown);
    boolean headDown = plain.up == Face.BOTTOM;
    return headDown ? Turn.with(part.box(), Face.of(part.length(), -1), shown) : plain;
  }

  /** How much there is to see on a face; through holes are seen from either. */
  private static int cutsFrom(Part part, Face face) {
    return part.cuts().stream().filter(cut -> cut.from() == face).mapToInt(FlatPart::weight).sum();
  }

  private static int weight(Cut cut) {
    return switch (cut) {
      case Cut.Trench trench -> 4;
      case Cut.Shaped shaped -> 0;
      case Cut.Roundover roundover -> roundover.edges().size();
      case Cut.Tenon tenon -> 0;
      case Cut.Holes holes -> holes.count() * (holes.through() ? 1 : 2);
      case Cut.PocketHoles pockets -> pockets.centres().size() * 2;
      case Slanted.Slope slope -> 1;
      case Slanted.Housing housing -> 4;
      case Slots slots -> slots.count() * (slots.through() ? 1 : 3);
      case Cut.InPlace inPlace -> 0;
    };
  }

  /** A turn in space, given by the faces that become right, back and top. */
  private record Turn(Box box, Face right, Face back, Face up) {
    static Turn with(Box box, Face right, Face shown) {
      Face back = shown.opposite();
      int step = Math.floorMod(back.axis().ordinal() - right.axis().ordinal(), 3);
      int sign = (step == 1 ? 1 : -1) * right.sign() * back.sign();
      return new Turn(box, right, back, Face.of(Axis.other(right.axis(), back.axis()), sign));
    }

    private Face old(Axis turned) {
      return switch (turned) {
        case X -> right;
        case Y -> back;
        case Z -> up;
      };
    }

    private Axis turned(Axis old) {
      return old == right.axis() ? Axis.X : old == back.axis() ? Axis.Y : Axis.Z;
    }

    private Face turned(Face face) {
      Axis axis = turned(face.axis());
      return Face.of(axis, face.sign() * old(axis).sign());
    }

    private Length turned(Length at, Face old) {
      return at.minus(box.at(old.opposite())).times(old.sign());
    }

    private Point turned(Point point) {
      return new Point(
          turned(point.on(right.axis()), right),
          turned(point.on(back.axis()), back),
          turned(point.on(up.axis()), up));
    }

    private Range turned(Box inside, Face old) {
      return turned(inside.on(old.axis()), old);
    }

    private Box turned(Box inside) {
      return new Box(turned(inside, right), turned(inside, back), turned(inside, up));
    }

    private Cut turned(Cut cut) {
      return switch (cut) {
        case Cut.Trench t ->
            new Cut.Trench(
                t.term(),
                turned(t.from()),
                turned(t.removed()),
                t.depth(),
                t.forWhat(),
                t.alsoFor(),
                t.at());
        case Cut.Tenon t ->
            new Cut.Tenon(
                t.term(),
                turned(t.from()),
                turned(t.end()),
                turned(t.tenon()),
                t.forWhat(),
                t.at());
        case Cut.Shaped s ->
            new Cut.Shaped(
                s.term(),
                turned(s.from()),
                s.contour().mapped(turned(s.contour().normal()), this::turned),
                s.inside(),
                s.forWhat(),
                s.at());
        case Cut.Roundover r ->
            new Cut.Roundover(
                r.term(),
                turned(r.from()),
                r.edges().stream().map(e -> new Edge(turned(e.one()), turned(e.other()))).toList(),
                r.around(),
                r.radius(),
                r.at());
        case Cut.Holes h -> turnedHoles(h);
        case Slanted.Slope s ->
            new Slanted.Slope(
                s.term(),
                turned(s.from()),
                turned(s.towards()),
                turned(s.first()),
                turned(s.second()),
                s.at());
        case Slanted.Housing h -> turnedHousing(h);
        case Slots s -> turnedSlots(s);
        case Cut.InPlace i ->
            new Cut.InPlace(
                i.term(),
                turned(i.from()),
                i.bores().stream()
                    .map(bore -> new Bore(turned(bore.mouth()), turned(bore.end())))
                    .toList(),
                i.diameter(),
                i.depth(),
                i.through(),
                i.forWhat(),
                i.at());
        case Cut.PocketHoles p ->
            new Cut.PocketHoles(
                p.term(),
                turned(p.from()),
                turned(p.end()),
                p.centres().stream().map(this::turned).toList(),
                p.diameter(),
                p.pilot(),
                p.angleDegrees(),
                p.forWhat(),
                p.at());
      };
    }

    private Cut turnedHousing(Slanted.Housing housing) {
      Face low = old(turned(housing.across()));
      Face along = old(turned(housing.along()));
      return new Slanted.Housing(
          housing.term(),
          turned(housing.from()),
          turned(housing.across()),
          turned(housing.mouth(), low),
          turned(housing.run(), along),
          turned(housing.surface(), old(turned(housing.from().axis()))),
          housing.depth(),
          housing.shift().times(low.sign()),
          housing.forWhat(),
          housing.at());
    }

    private Range turned(Range range, Face old) {
      return new Range(turned(range.end(-old.sign()), old), turned(range.end(old.sign()), old));
    }

    private Cut turnedSlots(Slots slots) {
      Axis along = turned(slots.along());
      boolean against = (old(along).sign() < 0) != slots.step().isNegative();
      Point first = against ? slots.centres().getLast() : slots.centres().getFirst();
      return new Slots(
          slots.term(),
          slots.form(),
          turned(slots.from()),
          turned(first),
          along,
          slots.step().abs(),
          slots.count(),
          slots.size(),
          slots.through(),
          slots.forWhat(),
          slots.at());
    }

    private Cut turnedHoles(Cut.Holes holes) {
      Axis along = turned(holes.along());
      boolean against = (old(along).sign() < 0) != holes.step().isNegative();
      Point first = against ? holes.centres().getLast() : holes.centres().getFirst();
      return new Cut.Holes(
          holes.term(),
          turned(holes.from()),
          turned(first),
          along,
          holes.step().abs(),
          holes.count(),
          holes.diameter(),
          holes.depth(),
          holes.through(),
          holes.countersink(),
          holes.forWhat(),
          holes.at());
    }
  }
}
