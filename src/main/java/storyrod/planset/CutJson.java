package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import storyrod.geometry.Box;
import storyrod.geometry.Edge;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Segment;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Dovetails.Tail;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

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
      case Cut.Shaped shaped -> put(json, shaped);
      case Cut.Roundover roundover -> put(json, roundover);
      case Cut.Tenon tenon -> put(json, tenon);
      case Comb comb -> put(json, comb);
      case Cut.Holes holes -> put(json, holes);
      case PocketHoles holes -> put(json, holes);
      case Slanted.Slope slope -> put(json, slope);
      case Slanted.Housing housing -> put(json, housing);
      case Slots slots -> put(json, slots);
      case Dovetails dovetails -> put(json, dovetails);
      case SplineSlot slot -> put(json, slot);
      case InPlace inPlace -> put(json, inPlace);
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
    tenon
        .haunch()
        .ifPresent(
            haunch -> {
              json.put("haunch", haunch.side().word());
              json.put("haunch_um", box(haunch.box()));
            });
    json.put("removed_um", tenon.boxes().stream().map(CutJson::box).toList());
  }

  private static void put(Map<String, Object> json, Comb comb) {
    json.put("kind", "comb");
    json.put("length_um", comb.length().toMicrometres());
    json.put("finger_um", comb.finger().toMicrometres());
    json.put("removed_um", comb.boxes().stream().map(CutJson::box).toList());
  }

  private static void put(Map<String, Object> json, Cut.Shaped shaped) {
    json.put("kind", "shaped");
    json.put("cuts_away", shaped.inside() ? "inside" : "outside");
    json.put("area_mm2", Math.round(shaped.contour().areaMm2() * 1000) / 1000.0);
    json.put("path", shaped.contour().segments().stream().map(CutJson::segment).toList());
  }

  private static Map<String, Object> segment(Segment segment) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("from_um", point(segment.from()));
    if (segment instanceof Segment.Arc arc) {
      json.put("through_um", point(arc.through()));
    }
    json.put("to_um", point(segment.to()));
    return json;
  }

  private static void put(Map<String, Object> json, Cut.Roundover roundover) {
    json.put("kind", "roundover");
    json.put("radius_um", roundover.radius().toMicrometres());
    json.put("edges", roundover.edges().stream().map(Edge::word).toList());
    json.put("around", roundover.around());
  }

  private static void put(Map<String, Object> json, Cut.Holes holes) {
    json.put("kind", "holes");
    json.put("diameter_um", holes.diameter().toMicrometres());
    json.put("depth_um", holes.depth().toMicrometres());
    json.put("through", holes.through());
    json.put("countersink_um", holes.countersink().toMicrometres());
    json.put("centres_um", points(holes.centres()));
  }

  private static void put(Map<String, Object> json, PocketHoles holes) {
    json.put("kind", "pocket-holes");
    json.put("end", holes.end().word());
    json.put("diameter_um", holes.diameter().toMicrometres());
    json.put("pilot_um", holes.pilot().toMicrometres());
    json.put("angle_degrees", holes.angleDegrees());
    json.put("centres_um", points(holes.centres()));
  }

  private static void put(Map<String, Object> json, Slanted.Slope slope) {
    json.put("kind", "slope");
    json.put("towards", slope.towards().word());
    json.put("angle_microdegrees", slope.angle().microdegrees());
    json.put("run_um", slope.run().toMicrometres());
    json.put("drop_um", slope.drop().toMicrometres());
    json.put("points_um", points(List.of(slope.first(), slope.second())));
  }

  private static void put(Map<String, Object> json, Slanted.Housing housing) {
    json.put("kind", "housing");
    json.put("depth_um", housing.depth().toMicrometres());
    json.put("across", housing.across().word());
    json.put("lean_microdegrees", housing.lean().microdegrees());
    json.put("mouth_um", range(housing.mouth()));
    json.put("bottom_um", range(housing.bottom()));
    json.put("run_um", range(housing.run()));
    json.put("removed_um", box(housing.removed()));
  }

  private static void put(Map<String, Object> json, Slots slots) {
    json.put("kind", "slots");
    json.put("form", slots.form().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    json.put("along", slots.along().word());
    json.put("length_um", slots.length().toMicrometres());
    json.put("width_um", slots.width().toMicrometres());
    json.put("depth_um", slots.depth().toMicrometres());
    json.put("through", slots.through());
    json.put("centres_um", points(slots.centres()));
  }

  private static void put(Map<String, Object> json, Dovetails dovetails) {
    json.put("kind", "dovetails");
    json.put("towards", dovetails.wide().word());
    json.put("across", dovetails.across().word());
    json.put("slope", "1:" + dovetails.slopeWord());
    json.put("end_um", box(dovetails.end()));
    json.put("tails_um", dovetails.tails().stream().map(CutJson::tail).toList());
  }

  private static Map<String, Object> tail(Tail tail) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("narrow", range(tail.narrow()));
    json.put("wide", range(tail.wide()));
    return json;
  }

  private static void put(Map<String, Object> json, SplineSlot slot) {
    json.put("kind", "spline-slot");
    json.put("thickness_um", slot.thickness().toMicrometres());
    json.put("depth_um", slot.depth().toMicrometres());
    json.put("along", slot.along().word());
    json.put("run_um", range(slot.run()));
    json.put("path", slot.profile().segments().stream().map(CutJson::segment).toList());
  }

  private static void put(Map<String, Object> json, InPlace inPlace) {
    json.put("kind", "bored-in-place");
    json.put("through", inPlace.through());
    json.put("diameter_um", inPlace.diameter().toMicrometres());
    json.put("depth_um", inPlace.depth().toMicrometres());
    json.put("mouths_um", points(inPlace.bores().stream().map(InPlace.Bore::mouth).toList()));
    json.put("ends_um", points(inPlace.bores().stream().map(InPlace.Bore::end).toList()));
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

  static List<List<Long>> points(List<Point> points) {
    return points.stream().map(CutJson::point).toList();
  }

  private static List<Long> point(Point point) {
    return List.of(point.x().toMicrometres(), point.y().toMicrometres(), point.z().toMicrometres());
  }
}
