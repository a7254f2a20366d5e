package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.Seen.Region;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * What is seen of several parts from one face, worked out once for all scales. What lies far behind
 * the foremost plane is toned darker.
 */
final class Elevation {
  /** What lies no deeper than this share of the whole depth counts as in front. */
  static final int FRONT_SHARE = 5;

  private static final double MORE_THAN_GAPS = 0.2;

  private final Face face;
  private final Box box;
  private final List<Part> parts;
  private final Scene scene;
  private final List<Seen> seen;
  private final boolean turned;

  private Elevation(List<Part> parts, Scene scene, Face face) {
    this(face, parts, scene, HiddenLines.of(scene.with(List.of()), View.at(face)).seen(), false);
  }

  private Elevation(Face face, List<Part> parts, Scene scene, List<Seen> seen, boolean turned) {
    this.face = face;
    this.box = Extent.around(parts);
    this.parts = parts;
    this.scene = scene;
    this.seen = seen;
    this.turned = turned;
  }

  /** Parts with what is mounted on them. The box is that of the parts. */
  static Elevation of(List<Part> parts, List<Hardware> hardware, Face face) {
    return new Elevation(parts, scene(parts, Map.of()).wearing(hardware), face);
  }

  /** What a section leaves of parts and of what is mounted on them. */
  static Elevation of(Section section, List<Hardware> hardware, Face face) {
    Scene whole = scene(section.kept(), section.solids()).wearing(hardware);
    Scene left = new Scene(whole.items(), section.left(whole.on()));
    return new Elevation(section.kept(), left, face);
  }

  private static Scene scene(List<Part> parts, Map<String, Solid> cut) {
    return new Scene(
        parts.stream()
            .map(part -> item(part, cut.getOrDefault(part.name(), part.placed())))
            .toList());
  }

  private static Scene.Item item(Part part, Solid solid) {
    return new Scene.Item(part.name(), solid, Vector3D.ZERO);
  }

  /** The same turned by a quarter on the paper, its right above: beside a view from above. */
  Elevation onItsSide() {
    return new Elevation(face, parts, scene, seen, true);
  }

  boolean isTurned() {
    return turned;
  }

  Face face() {
    return face;
  }

  Box box() {
    return box;
  }

  /** The parts that lie in front. */
  static List<Part> foremost(List<Part> parts, Box box, Face face) {
    return parts.stream().filter(part -> isForemost(part, box, face)).toList();
  }

  private static boolean isForemost(Part part, Box box, Face face) {
    Length behind = box.at(face).minus(part.bounds().at(face)).abs();
    return !behind.times(FRONT_SHARE).isLongerThan(box.size(face.axis()));
  }

  /** Whether more is seen of a part than what shows through gaps. */
  boolean shows(Part part) {
    double seenMm2 = regions(part.name()).stream().mapToDouble(Region::areaMm2).sum();
    Box own = part.bounds();
    return seenMm2 > MORE_THAN_GAPS * own.size(across()).toMm() * own.size(up()).toMm();
  }

  /** The regions that are seen of a part, by its name; none of one that is hidden. */
  List<Region> regions(String part) {
    return seen.stream()
        .filter(each -> each.item().name().equals(part))
        .flatMap(each -> each.regions().stream())
        .toList();
  }

  /** At a place of the paper all its areas, then its lines, a group for each part and item. */
  List<Element> elements(Fit fit) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Tone tone = isForemost(parts.get(i), box, face) ? Tone.TOP : Tone.FRONT;
      for (Region region : seen.get(i).regions()) {
        elements.add(new Area(tone, region.rings().stream().map(fit::on).toList()));
      }
    }
    for (int i = 0; i < parts.size(); i++) {
      List<Element> own = lines(seen.get(i), fit);
      if (!own.isEmpty()) {
        String id = face.word() + "-" + Ink.id(parts.get(i));
        elements.add(new Group(id, parts.get(i).mark(), parts.get(i).title(), own));
      }
    }
    elements.addAll(mounted(fit));
    return elements;
  }

  /** What is seen of the hardware: its regions hide those of parts already. */
  private List<Element> mounted(Fit fit) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < scene.on().size(); i++) {
      Hardware hardware = scene.on().get(i).hardware();
      List<Element> own = lines(seen.get(parts.size() + i), fit);
      if (!own.isEmpty()) {
        String id = face.word() + "-" + hardware.id();
        elements.add(new Group(id, hardware.mark(), hardware.title(), own));
      }
    }
    return elements;
  }

  private static List<Element> lines(Seen each, Fit fit) {
    List<Element> elements = new ArrayList<>();
    Ink ink = new Ink(fit);
    each.lines().mouths().forEach(mouth -> elements.add(mouth(mouth, fit)));
    each.lines().edges().forEach(stroke -> elements.add(ink.line(Role.THIN, stroke)));
    each.lines().outlines().forEach(stroke -> elements.add(ink.line(Role.CUT, stroke)));
    return elements;
  }

  private static Line mouth(List<At> mouth, Fit fit) {
    return new Line(Role.THIN, fit.on(mouth));
  }

  /** The axis across the paper. */
  Axis across() {
    return turned ? level().up : level().across;
  }

  /** The axis up the paper. */
  Axis up() {
    return turned ? level().across : level().up;
  }

  private record Axes(Axis across, Axis up) {}

  private Axes level() {
    Axis across = face.axis() == Axis.X ? Axis.Y : Axis.X;
    return new Axes(across, Axis.other(face.axis(), across));
  }
}
