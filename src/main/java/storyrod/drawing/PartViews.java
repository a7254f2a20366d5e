package storyrod.drawing;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Slanted;

/** Which faces of a part its drawing must show. */
final class PartViews {
  private PartViews() {}

  /** The views a part needs: its face, an edge that shows the thickness, edges with cuts. */
  static Set<Face> of(FlatPart flat) {
    Set<Face> views = new TreeSet<>();
    views.add(Face.FRONT);
    flat.cuts().forEach(cut -> views.add(PlacedView.home(flat, cut)));
    for (Cut.Trench trench : flat.trenches()) {
      Box removed = trench.removed();
      if (!isPocket(flat, trench) && !flat.full(removed.y(), Axis.Y)) {
        addProfile(flat, removed, views);
      }
    }
    for (Slanted.Housing housing : flat.cuts(Slanted.Housing.class)) {
      if (PlacedView.home(flat, housing) == Face.FRONT) {
        addProfile(flat, housing.removed(), views);
      }
    }
    if (views.size() == 1) {
      views.add(Face.RIGHT);
    }
    return views;
  }

  /** Whether a trench ends inside the part all round, so that no view of an edge shows it. */
  private static boolean isPocket(FlatPart flat, Cut.Trench trench) {
    return Arrays.stream(Face.values())
        .filter(face -> face.axis() != trench.from().axis())
        .noneMatch(face -> trench.removed().at(face).equals(flat.box().at(face)));
  }

  /** A trench's profile is seen where it runs out, on the far side only if not on the near one. */
  private static void addProfile(FlatPart flat, Box removed, Set<Face> views) {
    boolean alongX = !removed.x().length().isShorterThan(removed.z().length());
    Axis run = alongX ? Axis.X : Axis.Z;
    Face usual = alongX ? Face.RIGHT : Face.BOTTOM;
    boolean runsOut = removed.at(usual).equals(flat.box().at(usual));
    boolean runsOutFar = removed.at(usual.opposite()).equals(flat.box().at(usual.opposite()));
    boolean far = !runsOut && runsOutFar || views.contains(usual.opposite()) && runsOutFar;
    if (!removed.on(run).length().isZero()) {
      views.add(far ? usual.opposite() : usual);
    }
  }
}
