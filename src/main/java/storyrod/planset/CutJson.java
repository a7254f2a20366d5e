package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.piece.Cut;

/** A cut's exact geometry for {@code plan.json}, every length in whole micrometres. */
final class CutJson {
  private CutJson() {}

  static Map<String, Object> of(Cut cut) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("term", cut.term());
    json.put("from", cut.from().word());
    cut.forWhat().ifPresent(what -> json.put("for", what));
    switch (cut) {
      case Cut.Trench trench -> put(json, trench);
      case Cut.Tenon tenon -> put(json, tenon);
      case Cut.Holes holes -> put(json, holes);
      case Cut.PocketHoles holes -> put(json, holes);
    }
    return json;
  }

  private static void put(Map<String, Object> json, Cut.Trench trench) {
    json.put("kind", "trench");
    json.put("depth_um", trench.depth().toMicrometres());
    json.put("removed_um", box(trench.removed()));
    if (!trench.alsoFor().isEmpty()) {
      json.put("also_for", trench.alsoFor());
    }
  }

  private static void put(Map<String, Object> json, Cut.Tenon tenon) {
    json.put("kind", "tenon");
    json.put("length_um", tenon.length().toMicrometres());
    json.put("tenon_um", box(tenon.tenon()));
    json.put("removed_um", tenon.boxes().stream().map(CutJson::box).toList());
  }

  private static void put(Map<String, Object> json, Cut.Holes holes) {
    json.put("kind", "holes");
    json.put("diameter_um", holes.diameter().toMicrometres());
    json.put("depth_um", holes.depth().toMicrometres());
    json.put("through", holes.through());
    json.put("countersink_um", holes.countersink().toMicrometres());
    json.put("centres_um", points(holes.centres()));
  }

  private static void put(Map<String, Object> json, Cut.PocketHoles holes) {
    json.put("kind", "pocket-holes");
    json.put("end", holes.end().word());
    json.put("diameter_um", holes.diameter().toMicrometres());
    json.put("pilot_um", holes.pilot().toMicrometres());
    json.put("angle_degrees", holes.angleDegrees());
    json.put("centres_um", points(holes.centres()));
  }

  static Map<String, Object> box(Box box) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("x", range(box.x()));
    json.put("y", range(box.y()));
    json.put("z", range(box.z()));
    return json;
  }

  private static List<Long> range(Range range) {
    return List.of(range.from().toMicrometres(), range.to().toMicrometres());
  }

  private static List<List<Long>> points(List<Point> points) {
    return points.stream()
        .map(
            point ->
                List.of(
                    point.x().toMicrometres(),
                    point.y().toMicrometres(),
                    point.z().toMicrometres()))
        .toList();
  }
}
