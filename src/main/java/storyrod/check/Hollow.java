package storyrod.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Convex;
import storyrod.geometry.Convex.Brick;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Slots;

/**
 * Space inside a part that is not its own wood: a hole, the way of a screw, a slot or the place of
 * another part.
 *
 * @param name what it is called in a message
 * @param mates the parts that the joint of this cut holds to this one
 * @param forms what it takes away, each as bodies whose common space it is
 */
record Hollow(Part part, Cut cut, Use use, String name, Set<String> mates, List<Form> forms) {
  Hollow {
    forms = List.copyOf(forms);
  }

  /** What lies in it. */
  enum Use {
    /** A screw where it passes through, up to its head. */
    SCREW,
    /** A screw where it holds. */
    THREAD,
    /** A brad where it holds; nothing is drilled for it. */
    BRAD,
    /** A plug, a cup, a pin, the head of a pocket screw: let in from a face, and not deep. */
    LET_IN,
    /** A peg, which may well go through a tenon. */
    PEG,
    /** A dowel, a biscuit, a loose tenon: glued into two parts. */
    INSERT,
    /** A tenon or an end that was cut to fill it. */
    HOUSED,
    /** The edge of a panel, a tongue, a lap, something that slides. */
    TAKEN,
    /** Nothing. */
    OPEN,
    /** Nothing, as a hole that is drilled for a cord or a look. */
    PLAIN,
    /** Not cut at all: a tenon of the part itself. */
    TENON
  }

  /** One of its bodies, as the common space of convex ones, and a box round it. */
  record Form(List<Convex> bodies, Brick around) {
    Form(Convex... bodies) {
      this(List.of(bodies), bodies[0].around());
    }

    Form shrunk(double byMm) {
      return new Form(bodies.stream().map(each -> each.shrunk(byMm)).toList(), around.shrunk(byMm));
    }

    boolean meets(Form other) {
      return around.overlaps(other.around)
          && Convex.meet(Stream.concat(bodies.stream(), other.bodies.stream()).toList());
    }
  }

  private static final double DEEPEST_MM = 40;
  private static final int HALVINGS = 14;

  /** How deep this one reaches into another; zero where they stay apart. */
  Length depthIn(Hollow other) {
    double deepest = 0;
    for (Form mine : forms) {
      for (Form theirs : other.forms) {
        deepest = Math.max(deepest, mine.meets(theirs) ? depth(mine, theirs) : 0);
      }
    }
    return Length.nearest(deepest);
  }

  /** Whether less than some wood is left between this one and another. */
  boolean isWithin(Length wall, Hollow other) {
    return other.forms.stream()
        .map(form -> form.shrunk(-wall.toMm()))
        .anyMatch(grown -> forms.stream().anyMatch(mine -> mine.meets(grown)));
  }

  /** By how much the other one has to shrink before the two are clear of each other. */
  private static double depth(Form mine, Form theirs) {
    double meeting = 0;
    double clear = DEEPEST_MM;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (meeting + clear) / 2;
      if (mine.meets(theirs.shrunk(middle))) {
        meeting = middle;
      } else {
        clear = middle;
      }
    }
    return meeting;
  }

  /** Whether both belong to one thing: the steps of one hole, holes of one row. */
  boolean isOneWith(Hollow other) {
    return cut.at().equals(other.cut.at()) && cut.from().axis() == other.cut.from().axis();
  }

  /** Whether it is the place of a part that a hole's own joint holds, which it may go through. */
  boolean isMeantBy(Hollow hole) {
    return cut.at().equals(hole.cut.at())
        || hole.mates.stream().anyMatch(mate -> cut.isFor(mate) || mates.contains(mate));
  }

  /** Whether steel lies in it for which a hole is drilled. */
  boolean isScrew() {
    return use == Use.SCREW || use == Use.THREAD;
  }

  /**
   * Whether it is open in the face in which a hole starts: then the hole starts in it, and {@link
   * HoleEdge} sees to its rim.
   */
  boolean isOpenAtMouthOf(Hollow hole) {
    return isOpenAt(hole.cut.from()) && hole.isSquare();
  }

  /** Whether it is open in a face in which a hole starts or ends. */
  boolean isOpenAtAnEndOf(Hollow hole) {
    return isOpenAtMouthOf(hole) || isOpenAt(hole.cut.from().opposite()) && hole.isSquare();
  }

  private boolean isOpenAt(Face face) {
    return cut instanceof Cut.Trench trench
        && trench.removed().at(face).equals(part.box().at(face));
  }

  private boolean isSquare() {
    return cut instanceof Cut.Holes || cut instanceof Slots;
  }

  /** Whether HoleEdge measures them: holes along one axis. */
  boolean isBeside(Hollow other) {
    return cut instanceof Cut.Holes
        && other.cut instanceof Cut.Holes
        && cut.from().axis() == other.cut.from().axis();
  }

  /** Whether a point, in mm, lies in it. */
  boolean holds(Vector3D point) {
    return forms.stream()
        .anyMatch(form -> form.bodies.stream().allMatch(each -> each.nearest(point).equals(point)));
  }
}
