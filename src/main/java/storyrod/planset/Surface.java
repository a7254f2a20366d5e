package storyrod.planset;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.FlatFace;
import storyrod.measure.Unit;
import storyrod.piece.Piece;

/**
 * What a finish goes on.
 *
 * @param woods the woods of all parts
 * @param area of all their flat faces, those inside joints too, as printed
 */
record Surface(String woods, String area) {
  /** The international foot is 304.8 mm exactly. */
  private static final double MM2_PER_SQUARE_FOOT = 304.8 * 304.8;

  private static final double MM2_PER_SQUARE_METRE = 1e6;

  static Surface of(Piece piece, Texts texts) {
    String woods =
        piece.parts().stream()
            .map(part -> texts.wood(part.stock()))
            .distinct()
            .collect(Collectors.joining(", "));
    return new Surface(woods, printed(areaMm2(piece), texts));
  }

  static double areaMm2(Piece piece) {
    return piece.parts().stream()
        .flatMap(part -> part.solid().faces().stream())
        .mapToDouble(Surface::areaMm2)
        .sum();
  }

  private static double areaMm2(FlatFace face) {
    double openings = face.openings().stream().mapToDouble(Surface::areaMm2).sum();
    return areaMm2(face.outer()) - openings;
  }

  private static double areaMm2(List<Vector3D> ring) {
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i < ring.size(); i++) {
      sum = sum.add(ring.get(i).cross(ring.get((i + 1) % ring.size())));
    }
    return sum.norm() / 2;
  }

  private static String printed(double areaMm2, Texts texts) {
    boolean inch = texts.format().unit() == Unit.INCH;
    double value = areaMm2 / (inch ? MM2_PER_SQUARE_FOOT : MM2_PER_SQUARE_METRE);
    String figure = String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
    return texts.say("finish.area." + texts.format().unit().word(), figure);
  }
}
