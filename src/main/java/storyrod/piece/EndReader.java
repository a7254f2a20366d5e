package storyrod.piece;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.FaceRef;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Angle;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/**
 * Reads bevelled ends (over the thickness) and mitred ones (over the width), and says what is wrong
 * with them. An end is cut at an angle, or to the face of another part, or level; for the latter
 * two the part ends where the plane says.
 */
final class EndReader {
  private static final double FLAT = 1e-6;

  private final Map<String, Blank> blanks;
  private final LengthFormat format;
  private final Diagnostics diagnostics;

  EndReader(Map<String, Blank> blanks, LengthFormat format, Diagnostics diagnostics) {
    this.blanks = blanks;
    this.format = format;
    this.diagnostics = diagnostics;
  }

  /** A plane in the frame of a part; its normal points at what falls off. */
  private record Plane(Vector3D at, Vector3D normal) {}

  /** Which faces an end is cut from and how steep. */
  private record Cutting(Entry entry, Face end, Face shortSide, Angle angle) {}

  /** The cut; where its plane is given, the blank is made to end there. */
  Optional<Slant> read(Entry entry) {
    FaceRef end = entry.face("end");
    Blank blank = blanks.get(end.part());
    if (!isAnEnd(entry, blank, end.face()) || !saysOneWay(entry)) {
      return Optional.empty();
    }
    Optional<Cutting> cutting =
        entry.has("by") ? angled(entry, blank, end.face()) : toPlane(entry, blank, end.face());
    return cutting
        .filter(found -> leavesWood(blanks.get(blank.name()), found))
        .map(found -> new Slant(blank.name(), now -> on(now, found)));
  }

  /** The axis over which the end slants. */
  private static Axis over(Entry entry, Blank blank, Face end) {
    return entry.kind().equals("bevel")
        ? blank.thickness()
        : Axis.other(blank.thickness(), end.axis());
  }

  private boolean isAnEnd(Entry entry, Blank blank, Face end) {
    return end.axis() != blank.thickness()
        || fail(
            Diagnostic.error(
                    "slope-end",
                    entry.at("end"),
                    "%s is a wide face of %s, not an end or an edge"
                        .formatted(end.word(), blank.name()))
                .hint("name an end, such as `" + new FaceRef(blank.name(), ends(blank)) + "`"));
  }

  private static Face ends(Blank blank) {
    return Face.of(blank.length(), 1);
  }

  private boolean saysOneWay(Entry entry) {
    List<String> ways = Stream.of("by", "to", "level").filter(entry::has).toList();
    if (ways.size() != 1) {
      return fail(
          Diagnostic.error(
                  "slope-how",
                  entry.at(),
                  ways.isEmpty()
                      ? "this %s says neither its angle nor where it ends".formatted(entry.kind())
                      : "this %s has %s; one of them says it all"
                          .formatted(entry.kind(), String.join(" and ", ways)))
              .hint(
                  "write `by: 8, long: left`, or `to:` with the face it meets, or `level:` with its height"));
    }
    boolean saysLong = entry.has("long");
    return saysLong == entry.has("by")
        || fail(
            Diagnostic.error(
                    "slope-long",
                    entry.at("long"),
                    saysLong
                        ? "`long` goes with `by` only; here the plane says which side is long"
                        : "this %s does not say which side keeps its length"
                            .formatted(entry.kind()))
                .hint(
                    saysLong
                        ? "leave `long` out"
                        : "add `long:` with a face, such as `long: left`"));
  }

  private Optional<Cutting> angled(Entry entry, Blank blank, Face end) {
    Angle by = entry.expect("by", Angle.class);
    Face longSide = entry.expect("long", Face.class);
    Axis over = over(entry, blank, end);
    if (longSide.axis() != over) {
      fail(otherSide(entry, blank, end, over));
      return Optional.empty();
    }
    if (by.compareTo(Angle.ZERO) <= 0 || by.compareTo(Angle.RIGHT) >= 0) {
      fail(noAngle(entry, by));
      return Optional.empty();
    }
    return Optional.of(new Cutting(entry, end, longSide.opposite(), by));
  }

  private static Diagnostic otherSide(Entry entry, Blank blank, Face end, Axis over) {
    return Diagnostic.error(
            "slope-side",
            entry.at("long"),
            "a %s of %s slants over its %s, from %s to %s, not towards its %s"
                .formatted(
                    entry.kind(),
                    new FaceRef(blank.name(), end),
                    over == blank.thickness() ? "thickness" : "width",
                    Face.of(over, -1).word(),
                    Face.of(over, 1).word(),
                    entry.expect("long", Face.class).word()))
        .hint(
            "name one of those two, or write `%s`"
                .formatted(entry.kind().equals("bevel") ? "mitre" : "bevel"));
  }

  private static Diagnostic noAngle(Entry entry, Angle by) {
    return Diagnostic.error(
            "slope-angle",
            entry.at("by"),
            "an end is cut at more than 0° and less than 90° from square, not at " + by)
        .hint(
            by.isZero()
                ? "leave the %s out if the end is square".formatted(entry.kind())
                : "give the angle from square; `long:` says which way it slants");
  }

  private Optional<Cutting> toPlane(Entry entry, Blank blank, Face end) {
    Plane plane = plane(entry, blank);
    Axis over = over(entry, blank, end);
    Axis other = Axis.other(end.axis(), over);
    double straight = plane.normal.dot(end.normal());
    double slant = plane.normal.dot(Face.of(over, 1).normal());
    double aside = plane.normal.dot(Face.of(other, 1).normal());
    if (straight < FLAT || Math.abs(aside) > FLAT || Math.abs(slant) < FLAT) {
      fail(noSlope(entry, new FaceRef(blank.name(), end), straight, aside));
      return Optional.empty();
    }
    Face shortSide = Face.of(over, slant > 0 ? 1 : -1);
    double atLong = crossing(blank, plane, end, shortSide.opposite());
    Angle angle = Angle.nearest(StrictMath.atan2(Math.abs(slant), straight));
    return endsAt(entry, blank, end, Length.nearest(atLong))
        ? Optional.of(new Cutting(entry, end, shortSide, angle))
        : Optional.empty();
  }

  private boolean endsAt(Entry entry, Blank blank, Face end, Length at) {
    Length far = blank.shoulder().at(end.opposite());
    if (!at.minus(far).times(end.sign()).isPositive()) {
      return fail(
          Diagnostic.error(
                  "slope-outside",
                  entry.at(),
                  "the %s would end %s at %s = %s, but it starts at %s only"
                      .formatted(
                          entry.kind(),
                          blank.name(),
                          end.axis().word(),
                          format.formatWithUnit(at),
                          format.formatWithUnit(far)))
              .also(blank.at(), blank.name() + " is defined here")
              .hint("name the face that this end really meets, or move the part"));
    }
    blanks.put(blank.name(), blank.endingAt(end, at));
    return true;
  }

  /** Where the plane crosses a side of the part, along the axis of its end, in mm. */
  private static double crossing(Blank blank, Plane plane, Face end, Face side) {
    Vector3D along = Face.of(end.axis(), 1).normal();
    Vector3D start = Face.of(side.axis(), 1).normal().multiply(blank.shoulder().at(side).toMm());
    return plane.at.subtract(start).dot(plane.normal) / along.dot(plane.normal);
  }

  private Plane plane(Entry entry, Blank blank) {
    Optional<Length> level = entry.findLength("level");
    Vector3D at;
    Vector3D normal;
    if (level.isPresent()) {
      Face up = entry.placed(Face.TOP);
      at = Face.of(up.axis(), 1).normal().multiply(level.get().toMm());
      normal = up.normal();
    } else {
      FaceRef to = entry.face("to");
      Blank other = blanks.get(to.part());
      at = other.pose().point(SlantReader.corner(other, to.face(), beside(to.face())).toMm());
      normal = other.pose().normal(to.face()).negate();
    }
    Vector3D inPart = blank.pose().inverse().direction(normal);
    boolean away = level.isPresent() && inPart.dot(entry.face("end").face().normal()) < 0;
    return new Plane(blank.pose().inverse().point(at), away ? inPart.negate() : inPart);
  }

  private static Face beside(Face face) {
    return Face.of(face.axis() == Axis.X ? Axis.Y : Axis.X, 1);
  }

  private Diagnostic noSlope(Entry entry, FaceRef end, double straight, double aside) {
    String what = entry.has("to") ? entry.face("to").toString() : "the level";
    if (straight < FLAT) {
      return Diagnostic.error(
              "slope-away", entry.at(), "%s does not look at %s".formatted(end, what))
          .hint("name the face that this end meets");
    }
    boolean bevel = entry.kind().equals("bevel");
    if (Math.abs(aside) > FLAT) {
      return Diagnostic.error(
              "slope-compound",
              entry.at(),
              "%s does not meet %s over its %s alone"
                  .formatted(end, what, bevel ? "thickness" : "width"))
          .hint(
              "write `%s` if it slants over the %s; slanting over both at once is not possible yet"
                  .formatted(bevel ? "mitre" : "bevel", bevel ? "width" : "thickness"));
    }
    return Diagnostic.error("slope-square", entry.at(), "%s meets %s squarely".formatted(end, what))
        .hint("leave the %s out, and let the part end there".formatted(entry.kind()));
  }

  private boolean leavesWood(Blank blank, Cutting cutting) {
    Length drop = drop(blank, cutting);
    Length have = blank.shoulder().size(cutting.end.axis());
    return drop.isShorterThan(have)
        || fail(
            Diagnostic.error(
                    "slope-steep",
                    cutting.entry.at(cutting.entry.has("by") ? "by" : "end"),
                    "at %s the %s takes %s off, but %s is only %s long there"
                        .formatted(
                            cutting.angle,
                            cutting.entry.kind(),
                            format.formatWithUnit(drop),
                            blank.name(),
                            format.formatWithUnit(have)))
                .also(blank.at(), blank.name() + " is defined here")
                .hint("make the angle smaller, or the part longer"));
  }

  private static Length drop(Blank blank, Cutting cutting) {
    double over = blank.box().size(cutting.shortSide.axis()).toMm();
    return Length.nearest(over * cutting.angle.tan());
  }

  private static Slanted.Slope on(Blank blank, Cutting cutting) {
    Point longEdge = SlantReader.corner(blank, cutting.end, cutting.shortSide.opposite());
    Point shortEdge = SlantReader.corner(blank, cutting.end, cutting.shortSide);
    Length down = drop(blank, cutting).times(-cutting.end.sign());
    return new Slanted.Slope(
        cutting.entry.kind(),
        cutting.end,
        cutting.shortSide,
        longEdge,
        shortEdge.moved(cutting.end.axis(), down),
        cutting.entry.at());
  }

  private boolean fail(Diagnostic fault) {
    diagnostics.add(fault);
    return false;
  }
}
