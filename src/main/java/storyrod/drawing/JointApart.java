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
import storyrod.piece.PocketHoles;

/**
 * A joint taken apart along the way on which it is put together, seen from a corner; the parts are
 * broken off where the wood goes on, with thin lines and no tone there.
 */
final class JointApart {
  private static final double ENOUGH = 0.5;
  private static final double ON_LINE_MM = 0.02;

  private final JointPlace place;
  private final View view;
  private final List<Seen> seen;
  private final List<List<Broken>> broken;

  private JointApart(JointPlace place, List<JointWood> wood, View view) {
    this.place = place;
    this.view = view;
    this.broken = wood.stream().map(each -> each.broken(view)).toList();
    this.seen = HiddenLines.of(new Scene(wood.stream().map(JointWood::item).toList()), view).seen();
  }

  /**
   * Seen from where the face that takes the other part can be looked at, and pocket holes if there
   * are any, from the usual corner unless another one shows clearly more of the part of which less
   * is seen.
   */
  static JointApart of(JointPlace place) {
    List<JointWood> wood = JointWood.of(place);
    List<View> views = views(place);
    JointApart usual = new JointApart(place, wood, views.getFirst());
    double bound = views.stream().mapToDouble(each -> leastFacing(wood, each)).max().orElse(0);
    return usual.leastSeen() >= ENOUGH * bound
        ? usual
        : best(
            Stream.concat(
                    Stream.of(usual),
                    views.stream().skip(1).map(each -> new JointApart(place, wood, each)))
                .toList());
  }

  private static List<View> views(JointPlace place) {
    Vector3D open = place.joint().firstFace().opposite().normal();
    List<View> views = View.AROUND.stream().filter(each -> each.toViewer().dot(open) > 0).toList();
    List<View> mouths = views.stream().filter(each -> showsMouths(place, each)).toList();
    return mouths.isEmpty() ? views : mouths;
  }

  private static boolean showsMouths(JointPlace place, View view) {
    return place
        .squareCuts()
        .filter(PocketHoles.class::isInstance)
        .allMatch(each -> each.from().normal().dot(view.toViewer()) > 0);
  }

  /** At most so much can be seen of the part of which less is, in mm²: it is known at once. */
  private static double leastFacing(List<JointWood> wood, View view) {
    return wood.stream().mapToDouble(each -> each.facingMm2(view)).min().orElse(0);
  }

  private static JointApart best(List<JointApart> all) {
    double most = all.stream().mapToDouble(JointApart::leastSeen).max().orElse(0);
    return all.stream()
        .filter(each -> each.leastSeen() >= ENOUGH * most)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no view of a joint"));
  }

  View view() {
    return view;
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
    Scene.Item first = seen.getFirst().item();
    return seen.getLast().item().solid().sharedVolumeMm3(first.solid(), first.offset());
  }

  /** A face where a part is broken off, as it is seen. */
  record Broken(Vector3D normal, List<List<At>> rings) {
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
