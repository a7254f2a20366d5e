package storyrod.piece;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Strips;
import storyrod.measure.Length;

/** Machining on one part, in the frame of the piece. The set of cuts is closed. */
public sealed interface Cut {
  /** The trade's word for it: dado, groove, rabbet, notch, cutout, hole, pocket hole. */
  String term();

  /** The face from which the tool enters. */
  Face from();

  /** The part that goes into it or the item it is for, by name, where there is one. */
  Optional<String> forWhat();

  /** Where the description asks for it. */
  Span at();

  /**
   * A box-shaped cut.
   *
   * @param removed what is cut away; it stays inside the part's own box
   * @param depth how deep it goes from the face; the part's whole thickness if it goes through
   */
  record Trench(
      String term, Face from, Box removed, Length depth, Optional<String> forWhat, Span at)
      implements Cut {}

  /**
   * A cut right through along a path of lines and arcs.
   *
   * @param from the face in whose plane the path is set out
   * @param inside whether what lies inside the path is cut away (an opening, a notch) or what lies
   *     outside it (the part's outline)
   */
  record Shaped(
      String term, Face from, Contour contour, boolean inside, Optional<String> forWhat, Span at)
      implements Cut {
    /** The word for a part's own outline. */
    public static final String OUTLINE = "outline";

    /** Boxes that fill, but for curved slivers, what it takes from a part's box. */
    public List<Box> cleared(Box part) {
      return inside ? Strips.inside(contour, part) : Strips.outside(contour, part);
    }
  }

  /**
   * Edges rounded with a router bit. The part's solid keeps them sharp.
   *
   * @param from the face on which the router runs
   * @param around whether all edges of that face are rounded, also where its outline is curved
   */
  record Roundover(String term, Face from, List<Edge> edges, boolean around, Length radius, Span at)
      implements Cut {
    public Roundover {
      edges = List.copyOf(edges);
    }

    @Override
    public Optional<String> forWhat() {
      return Optional.empty();
    }
  }

  /**
   * Equal round holes with equal spacing; one hole where the count is 1.
   *
   * @param first the first hole's centre, on the face it is drilled from
   * @param along the axis of the row
   * @param step the distance from centre to centre; zero for a single hole
   * @param through whether the holes go right through
   * @param countersink the diameter at the face of the cone for a flat head; zero without one. The
   *     part's solid leaves the cone out
   */
  record Holes(
      String term,
      Face from,
      Point first,
      Axis along,
      Length step,
      int count,
      Length diameter,
      Length depth,
      boolean through,
      Length countersink,
      Optional<String> forWhat,
      Span at)
      implements Cut {
    /** Holes without a countersink. */
    public Holes(
        String term,
        Face from,
        Point first,
        Axis along,
        Length step,
        int count,
        Length diameter,
        Length depth,
        boolean through,
        Optional<String> forWhat,
        Span at) {
      this(
          term,
          from,
          first,
          along,
          step,
          count,
          diameter,
          depth,
          through,
          Length.ZERO,
          forWhat,
          at);
    }

    /** The same holes, countersunk from the face for heads of some diameter. */
    public Holes countersunk(Length head) {
      return new Holes(
          term, from, first, along, step, count, diameter, depth, through, head, forWhat, at);
    }

    /** The diameter of the opening in the face, which a countersink makes wider. */
    public Length mouth() {
      return diameter.max(countersink);
    }

    /** The centres on the face, in order. */
    public List<Point> centres() {
      return IntStream.range(0, count).mapToObj(i -> first.moved(along, step.times(i))).toList();
    }
  }

  /**
   * Slanted holes from a face towards an end, for pocket screws, drilled with a jig and a stepped
   * bit.
   *
   * @param end the end of the part at which the screws leave
   * @param centres where each hole's axis leaves the end, at the middle of the thickness
   * @param diameter the wide step's diameter
   * @param angleDegrees the angle between the hole and the face
   */
  record PocketHoles(
      String term,
      Face from,
      Face end,
      List<Point> centres,
      Length diameter,
      Length pilot,
      int angleDegrees,
      Optional<String> forWhat,
      Span at)
      implements Cut {
    public PocketHoles {
      centres = List.copyOf(centres);
    }
  }
}
