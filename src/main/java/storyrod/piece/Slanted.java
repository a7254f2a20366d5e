package storyrod.piece;

import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Angle;
import storyrod.measure.Length;

/** A cut with walls at an angle to the part's faces, which no box shows. */
public sealed interface Slanted extends Cut
    permits Slanted.Slope, Slanted.Housing, Dovetails, SplineSlot {
  /**
   * The edge where two faces meet, taken off along a plane: a taper, a bevelled or mitred end, a
   * chamfer.
   *
   * @param from the face that is planed or sawn: a taper's side, a bevelled end
   * @param towards the face at which the plane comes out: a taper's end, a bevel's short side
   * @param first where the plane starts, on {@code from}
   * @param second where it comes out, on {@code towards}
   */
  record Slope(String term, Face from, Face towards, Point first, Point second, Span at)
      implements Slanted {
    @Override
    public Optional<String> forWhat() {
      return Optional.empty();
    }

    /** The kinds of slope; their names are its terms. */
    public enum Kind {
      BEVEL,
      CHAMFER,
      MITRE,
      TAPER
    }

    public Kind kind() {
      return Kind.valueOf(term.toUpperCase(Locale.ROOT));
    }

    /** The axis that the plane is parallel to. */
    public Axis along() {
      return Axis.other(from.axis(), towards.axis());
    }

    /** How much of {@code from} it takes, up to the edge. */
    public Length run() {
      return second.on(towards.axis()).minus(first.on(towards.axis())).abs();
    }

    /** How much of {@code towards} it takes, down from the edge. */
    public Length drop() {
      return first.on(from.axis()).minus(second.on(from.axis())).abs();
    }

    /** Between the plane and {@code from}. */
    public Angle angle() {
      return Angle.of(drop(), run());
    }

    /** The plane's unit normal, which points at what falls off. */
    public Vector3D normal() {
      Vector3D out = from.normal().multiply(run().toMm());
      return out.add(towards.normal().multiply(drop().toMm())).normalize();
    }
  }

  /**
   * A slot with a flat bottom whose two walls lean, for a part that goes in at an angle.
   *
   * @param across the axis across the slot, in the face
   * @param mouth from where to where it is open in the face
   * @param run from where to where it runs
   * @param surface where the face lies on its axis
   * @param shift how far the bottom lies along {@code across} from the mouth; may be negative
   */
  record Housing(
      String term,
      Face from,
      Axis across,
      Range mouth,
      Range run,
      Length surface,
      Length depth,
      Length shift,
      Optional<String> forWhat,
      Span at)
      implements Slanted {
    /** The axis on which it runs. */
    public Axis along() {
      return Axis.other(from.axis(), across);
    }

    /** How far the walls lean from square to the face. */
    public Angle lean() {
      return Angle.of(shift.abs(), depth);
    }

    /** From where to where the bottom reaches. */
    public Range bottom() {
      return mouth.moved(shift);
    }

    /** All that is taken. */
    public Solid solid() {
      Face low = Face.of(across, -1);
      Solid box = Solid.of(removed());
      return shift.isZero()
          ? box
          : box.trimmed(wallPoint(mouth.from()), wall(low))
              .trimmed(wallPoint(mouth.to()), wall(low.opposite()));
    }

    private Vector3D wallPoint(Length at) {
      Box box = removed();
      return box.low().with(from.axis(), surface).with(across, at).toMm();
    }

    /** The unit normal of the wall on one side, out of the slot. */
    private Vector3D wall(Face side) {
      Vector3D out = side.normal().multiply(depth.toMm());
      return out.add(from.normal().multiply(shift.toMm() * side.sign())).normalize();
    }

    /** The box round all that is taken. */
    public Box removed() {
      Length low = surface.minus(depth.times(from.sign()));
      Range wide = new Range(mouth.from().min(bottom().from()), mouth.to().max(bottom().to()));
      return new Box(run, run, run)
          .with(across, wide)
          .with(from.axis(), new Range(surface.min(low), surface.max(low)));
    }
  }
}
