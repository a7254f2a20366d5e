package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.Seen.Region;
import storyrod.drawing.Seen.Stroke;
import storyrod.piece.Part;

/** Turns what is seen of parts into elements of a drawing. */
final class Ink {
  private final Fit fit;

  Ink(Fit fit) {
    this.fit = fit;
  }

  /** A part drawn strong and toned. */
  Group strong(Part part, Seen seen) {
    return group(part, seen, Role.VISIBLE, true);
  }

  /** A part drawn thin and without tone. */
  Group thin(Part part, Seen seen) {
    return seen.item().isOpen() ? open(part, seen) : group(part, seen, Role.THIN, false);
  }

  /** The outline of a part that hides nothing (a part before a section: ISO 128-2, type 05.1). */
  private Group open(Part part, Seen seen) {
    List<Element> outline = new ArrayList<>();
    seen.lines().outlines().forEach(stroke -> outline.add(line(Role.PHANTOM, stroke)));
    return new Group(id(part), part.mark(), part.title(), outline);
  }

  private Group group(Part part, Seen seen, Role role, boolean toned) {
    List<Element> elements = new ArrayList<>();
    for (Region region : seen.regions()) {
      Tone tone = toned ? tone(region.normal()) : Tone.WHITE;
      elements.add(new Area(tone, region.rings().stream().map(fit::on).toList()));
    }
    seen.lines().mouths().forEach(mouth -> elements.add(new Line(Role.THIN, fit.on(mouth))));
    seen.lines().edges().forEach(stroke -> elements.add(line(Role.THIN, stroke)));
    seen.lines().outlines().forEach(stroke -> elements.add(line(role, stroke)));
    return new Group(id(part), part.mark(), part.title(), elements);
  }

  /**
   * Hardware: small, so thin, and white before the tones of the parts; where it has regions, it is
   * what is new, strong and toned.
   */
  Group hardware(Hardware hardware, Seen seen) {
    List<Element> elements = new ArrayList<>();
    seen.regions()
        .forEach(
            each ->
                elements.add(
                    new Area(tone(each.normal()), each.rings().stream().map(fit::on).toList())));
    Role outline = seen.regions().isEmpty() ? Role.THIN : Role.VISIBLE;
    seen.lines().edges().forEach(stroke -> elements.add(line(Role.THIN, stroke)));
    seen.lines().outlines().forEach(stroke -> elements.add(line(outline, stroke)));
    return new Group(hardware.id(), hardware.mark(), hardware.title(), elements);
  }

  /** Hardware that is on already: thin, and no hardware of the picture's own. */
  Group worn(Hardware hardware, Seen seen) {
    Group group = hardware(hardware, seen);
    return new Group("on-" + hardware.id(), hardware.mark(), hardware.title(), group.elements());
  }

  /** The id of a part's group: SVG ids and CSS selectors are easier without dots. */
  static String id(Part part) {
    return "part-" + part.name().replace('.', '-');
  }

  Line line(Role role, Stroke stroke) {
    return new Line(role, List.of(fit.on(stroke.from()), fit.on(stroke.to())));
  }

  /** The tone of a face: upright faces by whether they look more to the side or to the front. */
  static Tone tone(Vector3D normal) {
    double x = Math.abs(normal.getX());
    double y = Math.abs(normal.getY());
    double z = Math.abs(normal.getZ());
    if (z >= x && z >= y) {
      return Tone.TOP;
    }
    return y >= x ? Tone.FRONT : Tone.SIDE;
  }
}
