package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Scene.Item;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Box;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;

/** Solids in millimetres, and how they are seen among each other. */
final class SeenSolids {
  private SeenSolids() {}

  static Box box(double x0, double x1, double y0, double y1, double z0, double z1) {
    return new Box(range(x0, x1), range(y0, y1), range(z0, z1));
  }

  private static Range range(double from, double to) {
    return new Range(Length.nearest(from), Length.nearest(to));
  }

  static Item item(Solid solid) {
    return new Item("part", solid, Vector3D.ZERO);
  }

  static List<Seen> seen(Solid... solids) {
    return seen(View.USUAL, solids);
  }

  static List<Seen> seen(View view, Solid... solids) {
    Scene scene = new Scene(Stream.of(solids).map(SeenSolids::item).toList());
    return HiddenLines.of(scene, view).seenAndHidden();
  }

  static double total(List<Stroke> strokes) {
    return strokes.stream().mapToDouble(Stroke::length).sum();
  }
}
