package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import storyrod.geometry.Contour.Vertex;
import storyrod.geometry.Intervals.Stretch;
import storyrod.measure.Length;

/** A contour as boxes side by side, for judgements of who stands in whose way. */
public final class Strips {
  private static final double SAGITTA_MM = 0.5;
  private static final int MOST_CHORDS = 24;
  private static final double HAIR_MM = 1e-6;

  private final Contour contour;
  private final Box box;
  private final List<Vertex> vertices;

  private Strips(Contour contour, Box box) {
    this.contour = contour;
    this.box = box;
    this.vertices = contour.drawn(SAGITTA_MM, MOST_CHORDS);
  }

  /** Boxes that fill, but for curved slivers, what of a box lies inside a contour. */
  public static List<Box> inside(Contour contour, Box box) {
    return new Strips(contour, box).boxes(true);
  }

  /** Boxes that fill, but for curved slivers, what of a box lies outside a contour. */
  public static List<Box> outside(Contour contour, Box box) {
    return new Strips(contour, box).boxes(false);
  }

  private List<Box> boxes(boolean inside) {
    Range across = box.on(contour.across());
    TreeSet<Length> places = new TreeSet<>(List.of(across.from(), across.to()));
    vertices.forEach(each -> places.add(Length.nearest(each.at().getX())));
    List<Box> boxes = new ArrayList<>();
    Length before = across.from();
    for (Length place : places.subSet(before, false, across.to(), true)) {
      add(new Range(before, place), inside, boxes);
      before = place;
    }
    return boxes;
  }

  private void add(Range strip, boolean inside, List<Box> boxes) {
    Range up = box.on(contour.up());
    Intervals all = Intervals.of(up.from().toMm(), up.to().toMm());
    Intervals one = inside(strip.from().toMm() + HAIR_MM);
    Intervals two = inside(strip.to().toMm() - HAIR_MM);
    Intervals taken = inside ? one.and(two) : all.minus(one).and(all.minus(two));
    for (Stretch stretch : taken.longerThan(1e-3).stretches()) {
      Range range = new Range(Length.nearest(stretch.from()), Length.nearest(stretch.to()));
      boxes.add(box.with(contour.across(), strip).with(contour.up(), range));
    }
  }

  /** The stretches of an upright line that lie inside the contour. */
  private Intervals inside(double across) {
    List<Double> crossings = new ArrayList<>();
    Vector2D before = vertices.getLast().at();
    for (Vertex vertex : vertices) {
      Vector2D at = vertex.at();
      if (before.getX() > across != at.getX() > across) {
        double share = (across - before.getX()) / (at.getX() - before.getX());
        crossings.add(before.getY() + share * (at.getY() - before.getY()));
      }
      before = at;
    }
    crossings.sort(null);
    List<Stretch> inside = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      inside.add(new Stretch(crossings.get(i), crossings.get(i + 1)));
    }
    return Intervals.union(inside, 0);
  }
}
