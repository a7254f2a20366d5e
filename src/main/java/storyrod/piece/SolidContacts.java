package storyrod.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.FaceRef;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Pose;
import storyrod.geometry.Solid;
import storyrod.measure.Angle;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/**
 * Finds where two parts touch of which one is turned or cut at an angle, from the flat faces of
 * their solids as they stand; or says how far they miss.
 */
final class SolidContacts {
  /** Nearer than this two faces touch: what rounding to a tick and figures by hand leave, in mm. */
  private static final double TOUCHING_MM = 0.02;

  /** Steeper than this two faces do not lie on each other: 0.02°, in radians. */
  private static final double FLAT = 3.5e-4;

  private static final double SQUARE = 1 - 1e-9;

  /** How near to a face's own direction a cut face may look and still stand for it. */
  private static final double STANDS_FOR = 0.7;

  private final Slants slants;
  private final LengthFormat format;

  SolidContacts(Slants slants, LengthFormat format) {
    this.slants = slants;
    this.format = format;
  }

  /** Whether the boxes of two parts do not tell where they touch. */
  boolean isAskew(Blank first, Face face, Blank second) {
    return !first.pose().equals(second.pose())
        || slants.touch(first, face)
        || slants.touch(second, face.opposite());
  }

  private record Pair(FlatFace one, FlatFace two, FlatFace shared) {
    double steep() {
      double across = one.normal().cross(two.normal()).norm();
      double back = -one.normal().dot(two.normal());
      return StrictMath.atan2(across, back);
    }

    double gapMm() {
      return two.outer().getFirst().dot(one.normal()) - one.offsetMm();
    }
  }

  Contacts.Found find(Entry entry, Blank first, Face face, Blank second) {
    List<FlatFace> meeting = facesAt(first, face);
    List<FlatFace> theirs = slants.solid(second).posed(second.pose()).faces();
    List<Pair> pairs = new ArrayList<>();
    for (FlatFace one : meeting) {
      for (FlatFace two : theirs) {
        if (one.normal().dot(two.normal()) < -STANDS_FOR) {
          one.shared(two).ifPresent(shared -> pairs.add(new Pair(one, two, shared)));
        }
      }
    }
    Optional<Pair> best =
        pairs.stream()
            .filter(pair -> pair.steep() < FLAT && Math.abs(pair.gapMm()) < TOUCHING_MM)
            .max(Comparator.comparingDouble(pair -> pair.shared().areaMm2()));
    return best.map(pair -> found(pair, first, face, second))
        .orElseGet(() -> missed(entry, new FaceRef(first.name(), face), first, second, pairs));
  }

  private List<FlatFace> facesAt(Blank first, Face face) {
    Vector3D out = first.pose().normal(face);
    return slants.solid(first).posed(first.pose()).faces().stream()
        .filter(each -> each.normal().dot(out) > STANDS_FOR)
        .toList();
  }

  private static Contacts.Found found(Pair pair, Blank first, Face face, Blank second) {
    Askew askew = new Askew(pair.shared(), first.pose(), second.pose());
    boolean plain = first.pose().equals(second.pose()) && askew.cosine(face) > SQUARE;
    return new Contacts.Found(
        Optional.of(askew.inFirst()),
        plain ? Optional.empty() : Optional.of(askew),
        Optional.empty());
  }

  private Contacts.Found missed(
      Entry entry, FaceRef from, Blank first, Blank second, List<Pair> pairs) {
    Optional<Pair> flat =
        pairs.stream()
            .filter(pair -> pair.steep() < FLAT)
            .min(Comparator.comparingDouble(pair -> Math.abs(pair.gapMm())));
    Optional<Pair> steep =
        pairs.stream()
            .min(
                Comparator.comparingDouble(Pair::steep)
                    .thenComparingDouble(pair -> Math.abs(pair.gapMm())));
    Diagnostic fault =
        flat.map(pair -> apart(entry, from, second, pair))
            .or(() -> steep.map(pair -> tilted(entry, from, second, pair)))
            .orElseGet(() -> beside(entry, from, second));
    return new Contacts.Found(
        Optional.empty(),
        Optional.empty(),
        Optional.of(
            fault
                .also(first.at(), first.name() + " is placed here")
                .also(second.at(), second.name() + " is placed here")));
  }

  private Diagnostic apart(Entry entry, FaceRef from, Blank second, Pair pair) {
    Length gap = Length.nearest(Math.abs(pair.gapMm()));
    return Diagnostic.error(
            "parts-do-not-meet",
            entry.at(),
            "%s: %s lies flat to %s as they stand, but %s %s it"
                .formatted(
                    entry.kind(),
                    from,
                    faceOf(second, pair.two()),
                    figure(gap),
                    pair.gapMm() > 0 ? "short of" : "past"))
        .hint(
            "move one of them by that much, or cut the end to the face: `bevel: {end: %s, to: %s}`"
                .formatted(from, faceOf(second, pair.two())));
  }

  private static Diagnostic tilted(Entry entry, FaceRef from, Blank second, Pair pair) {
    FaceRef to = faceOf(second, pair.two());
    return Diagnostic.error(
            "parts-do-not-meet",
            entry.at(),
            "%s: %s stands at %s to %s and touches it along an edge at most"
                .formatted(entry.kind(), from, Angle.nearest(pair.steep()), to))
        .hint("cut the end to the face: `bevel: {end: %s, to: %s}`".formatted(from, to));
  }

  private static Diagnostic beside(Entry entry, FaceRef from, Blank second) {
    return Diagnostic.error(
            "parts-do-not-meet",
            entry.at(),
            "%s: no face of %s lies over against %s as they stand"
                .formatted(entry.kind(), second.name(), from))
        .hint("move one of them, turn it less, or join it to the part that it really meets");
  }

  private static FaceRef faceOf(Blank blank, FlatFace face) {
    Pose back = blank.pose().inverse();
    return new FaceRef(blank.name(), Face.nearest(back.direction(face.normal())));
  }

  private String figure(Length gap) {
    return format.rounded(gap).isZero()
        ? "%.2f mm".formatted(gap.toMm())
        : format.formatWithUnit(gap);
  }

  /** The solid of a blank with its slanted cuts, in its own frame. */
  interface Slants {
    Solid solid(Blank blank);

    /** Whether a slanted cut takes wood off a face. */
    boolean touch(Blank blank, Face face);
  }
}
