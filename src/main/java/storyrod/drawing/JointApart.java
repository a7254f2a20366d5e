package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.Seen.Region;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Solid;

/**
 * A joint taken apart along the way on which it is put together, seen from a corner; the parts are
 * broken off where the wood goes on, with thin lines and no tone there.
 */
final class JointApart {
  private static final double ON_PLANE_MM = 1e-3;
  private static final double ENOUGH = 0.5;
  private static final double ON_LINE_MM = 0.02;

  private final JointPlace place;
  private final View view;
  private final List<Seen> seen;
  private final List<List<Broken>> broken = new ArrayList<>();

  private JointApart(JointPlace place, View view) {
    this.place = place;
    this.view = view;
    List<Scene.Item> items = new ArrayList<>();
    for (JointPart each : place.parts()) {
      Solid shown = shown(each);
      Vector3D offset = each == place.first() ? offset() : Vector3D.ZERO;
      items.add(new Scene.Item(each.part().name(), shown, offset));
      broken.add(broken(each, shown, offset));
    }
    this.seen = HiddenLines.of(new Scene(items), view).seen();
  }

  /**
   * Seen from where the face that takes the other part can be looked at, from the usual corner
   * unless another one shows clearly more of the part of which less is seen.
   */
  static JointApart of(JointPlace place) {
    Vector3D open = place.joint().firstFace().opposite().normal();
    List<JointApart> all =
        View.AROUND.stream()
            .filter(each -> each.toViewer().dot(open) > 0)
            .map(each -> new JointApart(place, each))
            .toList();
    double most = all.stream().mapToDouble(JointApart::leastSeen).max().orElse(0);
    return all.stream()
        .filter(each -> each.leastSeen() >= ENOUGH * most)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no view of a joint"));
  }

  /** What is seen of the part that is hidden more, in mm². */
  private double leastSeen() {
    return seen.stream()
        .mapToDouble(each -> each.regions().stream().mapToDouble(Region::areaMm2).sum())
        .min()
        .orElse(0);
  }

  /** The volume that the two parts would share as they are drawn. */
  double sharedVolumeMm3() {
    return seen.getLast().item().solid().sharedVolumeMm3(seen.getFirst().item().solid(), offset());
  }

  private Vector3D offset() {
    return place.joint().entry().opposite().normal().multiply(place.apart().toMm());
  }

  /** What of a part lies in the window. */
  private Solid shown(JointPart each) {
    Solid solid = each.part().placed();
    for (Face face : Face.values()) {
      if (isBroken(each, face)) {
        solid = solid.trimmed(corner(face), face.normal());
      }
    }
    return solid;
  }

  private boolean isBroken(JointPart each, Face face) {
    double end = each.part().bounds().at(face).toMm();
    double cut = place.window().at(face).toMm();
    return face.sign() * (end - cut) > ON_PLANE_MM;
  }

  /** A point of the window's side. */
  private Vector3D corner(Face face) {
    return place.window().middle().with(face.axis(), place.window().at(face)).toMm();
  }

  /** A face where a part is broken off, as it is seen. */
  private record Broken(Vector3D normal, List<List<At>> rings) {
    boolean holds(Stroke stroke) {
      return rings.stream().anyMatch(ring -> holds(ring, stroke.at(0.5)));
    }

    private static boolean holds(List<At> ring, At at) {
      for (int i = 0; i < ring.size(); i++) {
        At from = ring.get(i);
        At to = ring.get((i + 1) % ring.size());
        if (from.distance(at) + at.distance(to) - from.distance(to) < ON_LINE_MM * ON_LINE_MM) {
          return true;
        }
      }
      return false;
    }

    boolean isOf(Region region) {
      return region.normal().dot(normal) > 1 - 1e-9
          && region.rings().getFirst().stream().allMatch(this::isWithin);
    }

    private boolean isWithin(At at) {
      return Bounds.around(rings.getFirst()).widened(ON_LINE_MM).contains(at);
    }
  }

  private List<Broken> broken(JointPart part, Solid shown, Vector3D offset) {
    return Stream.of(Face.values())
        .filter(face -> isBroken(part, face))
        .flatMap(face -> shown.faces().stream().filter(each -> lies(each, face)))
        .map(face -> new Broken(face.normal(), rings(face, offset)))
        .toList();
  }

  private boolean lies(FlatFace each, Face face) {
    return each.normal().dot(face.normal()) > 1 - 1e-9
        && Math.abs(each.outer().getFirst().subtract(corner(face)).dot(face.normal()))
            < ON_PLANE_MM;
  }

  private List<List<At>> rings(FlatFace face, Vector3D offset) {
    return Stream.concat(Stream.of(face.outer()), face.openings().stream())
        .map(ring -> ring.stream().map(offset::add).map(view::project).toList())
        .toList();
  }

  private List<At> points() {
    return seen.stream()
        .flatMap(each -> each.lines().visible().stream())
        .flatMap(Fit::ends)
        .toList();
  }

  /**
   * Puts it into a rectangle of the paper; the points inside the parts at which marks may point.
   */
  List<JointMark> addTo(Paper paper, Bounds room) {
    Fit fit =
        Fit.into(points(), new At(room.left(), room.top()), new Size(room.width(), room.height()));
    List<JointMark> marks = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      JointPart part = place.parts().get(i);
      paper.add(group(i, fit));
      tip(seen.get(i), fit).ifPresent(at -> marks.add(new JointMark(part.part().mark(), at)));
    }
    return marks;
  }

  private static Optional<At> tip(Seen seen, Fit fit) {
    return seen.regions().stream()
        .max(Comparator.comparingDouble(Region::areaMm2))
        .map(Tips::inside)
        .map(fit::on);
  }

  private Group group(int at, Fit fit) {
    JointPart part = place.parts().get(at);
    Seen own = seen.get(at);
    Ink ink = new Ink(fit);
    List<Element> elements = new ArrayList<>();
    for (Region region : own.regions()) {
      boolean isBroken = broken.get(at).stream().anyMatch(each -> each.isOf(region));
      Tone tone = isBroken ? Tone.WHITE : Ink.tone(region.normal());
      elements.add(new Area(tone, region.rings().stream().map(fit::on).toList()));
    }
    own.lines().mouths().forEach(mouth -> elements.add(new Line(Role.THIN, fit.on(mouth))));
    own.lines().edges().forEach(each -> elements.add(ink.line(role(at, each, Role.THIN), each)));
    own.lines()
        .outlines()
        .forEach(each -> elements.add(ink.line(role(at, each, Role.VISIBLE), each)));
    String id = "apart-" + (at == 0 ? "first" : "second");
    return new Group(id, part.part().mark(), part.part().title(), elements);
  }

  private Role role(int at, Stroke stroke, Role usual) {
    return broken.get(at).stream().anyMatch(each -> each.holds(stroke)) ? Role.DIMENSION : usual;
  }
}
