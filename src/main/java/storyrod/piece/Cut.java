package storyrod.piece;

import java.util.ArrayList;
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
import storyrod.geometry.Range;
import storyrod.geometry.Strips;
import storyrod.measure.Length;

/** Machining on one part, in the frame of the piece. The set of cuts is closed. */
public sealed interface Cut
    permits Slanted,
        Slots,
        Cut.Trench,
        Cut.Tenon,
        Comb,
        Cut.Shaped,
        Cut.Roundover,
        Cut.Holes,
        InPlace,
        PocketHoles {
  /** The trade's word for it: dado, groove, rabbet, notch, cutout, hole, pocket hole. */
  String term();

  /** The face from which the tool enters. */
  Face from();

  /** The part that goes into it or the item it is for, by name, where there is one. */
  Optional<String> forWhat();

  /** Where the description asks for it. */
  Span at();

  /** Whether it is a place into which another part goes and where it finds its hold. */
  default boolean takesIn() {
    return switch (this) {
      case Trench trench -> true;
      case Comb comb -> true;
      case Slanted.Housing housing -> true;
      case Dovetails dovetails -> true;
      case Tenon tenon -> false;
      case Shaped shaped -> false;
      case Roundover roundover -> false;
      case Holes holes -> false;
      case InPlace inPlace -> false;
      case PocketHoles pockets -> false;
      case Slanted.Slope slope -> false;
      case SplineSlot slot -> false;
      case Slots slots -> false;
    };
  }

  /** The boxes that it takes away; none for holes and slots with round ends. They may overlap. */
  default List<Box> boxes() {
    return List.of();
  }

  /** Those cuts that are of one kind, in their order. */
  static <C extends Cut> List<C> only(Class<C> kind, List<Cut> cuts) {
    return cuts.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** Whether it takes in a part, or is for an item, by name. */
  default boolean isFor(String name) {
    return forWhat().filter(name::equals).isPresent();
  }

  /**
   * A box-shaped cut.
   *
   * @param role what it is for, where the term would not tell
   * @param removed what is cut away; it stays inside the part's own box
   * @param depth how deep it goes from the face; the part's whole thickness if it goes through
   * @param alsoFor what else goes into it, where several joints share one cut
   */
  record Trench(
      String term,
      TrenchRole role,
      Face from,
      Box removed,
      Length depth,
      Optional<String> forWhat,
      List<String> alsoFor,
      Span at)
      implements Cut {
    /** The word for the shallow place beside a mortise that takes a tenon's haunch. */
    public static final String HAUNCH_SOCKET = "haunch socket";

    public Trench {
      alsoFor = List.copyOf(alsoFor);
    }

    /** One that its term tells, and that takes in one thing at most. */
    public Trench(
        String term, Face from, Box removed, Length depth, Optional<String> forWhat, Span at) {
      this(term, TrenchRole.OTHER, from, removed, depth, forWhat, List.of(), at);
    }

    @Override
    public List<Box> boxes() {
      return List.of(removed);
    }

    @Override
    public boolean isFor(String name) {
      return Cut.super.isFor(name) || alsoFor.contains(name);
    }
  }

  /**
   * An end or an edge of a part, cut down on up to four sides to a tenon or a tongue.
   *
   * @param from the face of the end
   * @param end the whole end as long as the tenon, before it is cut down
   * @param tenon what is left of it, as long as the end and inside it
   * @param haunch what stays beside it at one edge, where it is haunched
   */
  record Tenon(
      String term,
      Face from,
      Box end,
      Box tenon,
      Optional<Haunch> haunch,
      Optional<String> forWhat,
      Span at)
      implements Cut {
    /** One without a haunch. */
    public Tenon(String term, Face from, Box end, Box tenon, Optional<String> forWhat, Span at) {
      this(term, from, end, tenon, Optional.empty(), forWhat, at);
    }

    /** How far it stands out from its shoulders. */
    public Length length() {
      return tenon.size(from.axis());
    }

    @Override
    public List<Box> boxes() {
      List<Box> boxes = new ArrayList<>();
      for (Face face : Face.values()) {
        if (face.axis() != from.axis() && shoulder(face).isPositive()) {
          boxes.addAll(haunchAt(face).map(each -> each.boxes(this)).orElseGet(() -> beside(face)));
        }
      }
      return boxes;
    }

    private List<Box> beside(Face face) {
      Length inner = tenon.at(face);
      return List.of(
          end.with(face.axis(), new Range(inner.min(end.at(face)), inner.max(end.at(face)))));
    }

    /** The haunch, if it stays at this side. */
    public Optional<Haunch> haunchAt(Face side) {
      return haunch.filter(each -> each.side() == side);
    }

    /** How much it is set in at one side, a haunch beside it or not; zero where it is flush. */
    public Length shoulder(Face face) {
      return end.at(face).minus(tenon.at(face)).abs();
    }
  }

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
    /** The word for a recess that is open at an edge on purpose. */
    public static final String OPEN_RECESS = "fastener recess";

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

    /** The same holes for an item. */
    public Holes forItem(String item) {
      return new Holes(
          term,
          from,
          first,
          along,
          step,
          count,
          diameter,
          depth,
          through,
          countersink,
          Optional.of(item),
          at);
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
}
