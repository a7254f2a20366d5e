package storyrod.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Range;
import storyrod.measure.Rational;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The faces of a piece, in mm²: what stays in the open and takes finish, and what is glued. Bores
 * are left out.
 *
 * @param openMm2 of all parts, where no other part lies on them
 * @param gluedMm2 where parts lie on each other that glue holds, and the seams of boards that a
 *     part is glued up from
 */
public record Surfaces(double openMm2, double gluedMm2) {
  /** Faces that miss each other by less lie on each other, in mm. */
  private static final double TOUCHING_MM = 0.05;

  private static final double OPPOSITE = -0.9999;

  private static final long MM2_PER_SQUARE_METRE = 1_000_000;

  public Rational openSquareMetres() {
    return squareMetres(openMm2);
  }

  public Rational gluedSquareMetres() {
    return squareMetres(gluedMm2);
  }

  private static Rational squareMetres(double mm2) {
    return Rational.of(Math.round(mm2), MM2_PER_SQUARE_METRE);
  }

  public static Surfaces of(Piece piece) {
    List<Body> bodies = piece.parts().stream().map(Body::of).toList();
    Set<String> glued = glued(piece.joints());
    double all = bodies.stream().mapToDouble(Body::areaMm2).sum();
    double hidden = 0;
    double held = piece.parts().stream().mapToDouble(part -> seamsMm2(piece, part)).sum();
    for (int i = 0; i < bodies.size(); i++) {
      for (Body other : bodies.subList(i + 1, bodies.size())) {
        double touching = bodies.get(i).touchingMm2(other);
        hidden += 2 * touching;
        held += glued.contains(key(bodies.get(i).name, other.name)) ? touching : 0;
      }
    }
    return new Surfaces(Math.max(0, all - hidden), held);
  }

  private static Set<String> glued(List<Joint> joints) {
    Set<String> pairs = new HashSet<>();
    joints.stream()
        .filter(Joint::glued)
        .forEach(
            joint -> {
              pairs.add(key(joint.first(), joint.second()));
              pairs.add(key(joint.second(), joint.first()));
            });
    return pairs;
  }

  private static String key(String one, String other) {
    return one + " " + other;
  }

  private static double seamsMm2(Piece piece, Part part) {
    if (part.stock().kind() == StockKind.SHEET) {
      return 0;
    }
    double edges = (piece.staves(part).orElse(1) - 1) * part.finishedThickness().toMm();
    double faces = (piece.layers(part) - 1) * piece.blankWidth(part).toMm();
    return (edges + faces) * part.finishedLength().toMm();
  }

  private record Body(String name, Box box, List<FlatFace> faces) {
    static Body of(Part part) {
      return new Body(part.name(), part.bounds(), part.placed().faces());
    }

    double areaMm2() {
      return faces.stream().mapToDouble(FlatFace::areaMm2).sum();
    }

    double touchingMm2(Body other) {
      double sum = 0;
      if (isNear(other)) {
        for (FlatFace one : faces) {
          for (FlatFace two : other.facing(one)) {
            sum += one.sharedMm2(two);
          }
        }
      }
      return sum;
    }

    private boolean isNear(Body other) {
      return Arrays.stream(Axis.values())
          .allMatch(axis -> isNear(box.on(axis), other.box.on(axis)));
    }

    private static boolean isNear(Range one, Range two) {
      double gap =
          Math.max(one.from().toMm() - two.to().toMm(), two.from().toMm() - one.to().toMm());
      return gap < TOUCHING_MM;
    }

    private List<FlatFace> facing(FlatFace one) {
      List<FlatFace> facing = new ArrayList<>();
      for (FlatFace two : faces) {
        boolean opposite = one.normal().dot(two.normal()) < OPPOSITE;
        if (opposite && Math.abs(one.offsetMm() + two.offsetMm()) < TOUCHING_MM) {
          facing.add(two);
        }
      }
      return facing;
    }
  }
}
