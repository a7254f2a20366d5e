package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Part;

/**
 * One item of hardware enlarged, to a scale along its edges: in its seat, its screws drawn out of
 * it, and as much of its part as reaches to the edges from which it is measured.
 *
 * @param parts what is shown around it, its own part first
 * @param fittings the item, then what goes in with it
 * @param seen all of them as they are seen, in this order
 * @param window what is shown, at full size in the view
 */
record FittedDetail(List<Part> parts, List<Fitting> fittings, List<Seen> seen, Bounds window) {
  /** Along the axes an isometric view shortens by this (ISO 5456-3): scales hold along edges. */
  private static final double ALONG_EDGES = StrictMath.sqrt(1.5);

  /** Between the tip of a screw and the hole that it goes into, in mm. */
  private static final double OUT_MM = 4;

  /** Parts no further from the seat are shown too, in mm. */
  private static final double NEAR_MM = 20;

  private static final double ENOUGH_SEEN = 0.6;

  /** Around what is shown, as a share of its larger side. */
  private static final double AROUND = 0.06;

  /** The group that an item belongs to, as a picture shows it, enlarged. */
  static FittedDetail of(Picture picture, List<Fitting> group, View view) {
    SeatBox seat = SeatBox.of(picture, group.getFirst());
    Fitting first = group.getFirst();
    PlacedItem item = first.hardware().placed();
    boolean isPin = isPin(item, seat.host());
    double firstMm = outMm(item, isPin);
    List<Fitting> out = group.stream().map(each -> drawnOut(each, first, firstMm)).toList();
    Look look = Look.enough(Around.choices(picture, seat), out, view);
    SeatBox shown = isPin ? seat.onFace(item) : seat;
    return new FittedDetail(
        look.around.parts, out, look.seen, window(shown, look.hardware(), view));
  }

  /**
   * What is shown around an item.
   *
   * @param opened the names of the parts of which only the outline is shown
   */
  private record Around(List<Part> parts, Set<String> opened) {
    static final Around NOTHING = new Around(List.of(), Set.of());

    /** All that is near, else the item's own part, else that as an outline. */
    static List<Around> choices(Picture picture, SeatBox seat) {
      List<Part> host = List.of(seat.host());
      return List.of(
          new Around(near(picture, seat), Set.of()),
          new Around(host, Set.of()),
          new Around(host, Set.of(seat.host().name())));
    }

    private static List<Part> near(Picture picture, SeatBox seat) {
      Stream<Part> others =
          picture.parts().stream()
              .filter(part -> !part.name().equals(seat.host().name()))
              .filter(part -> seat.isNear(part, NEAR_MM));
      return Stream.concat(Stream.of(seat.host()), others).toList();
    }

    private Scene scene() {
      Map<String, Vector3D> inPlace =
          parts.stream().collect(Collectors.toMap(Part::name, part -> Vector3D.ZERO));
      return Scene.of(parts, inPlace).opened(opened);
    }
  }

  /**
   * What is seen of hardware and of what is around it.
   *
   * @param seen the parts, then the hardware
   */
  private record Look(Around around, List<Seen> seen) {
    /** The first that hides little of the hardware, or the last. */
    static Look enough(List<Around> choices, List<Fitting> fittings, View view) {
      double enough = ENOUGH_SEEN * of(Around.NOTHING, fittings, view).hardwareMm();
      return choices.subList(0, choices.size() - 1).stream()
          .map(each -> of(each, fittings, view))
          .filter(look -> look.hardwareMm() >= enough)
          .findFirst()
          .orElseGet(() -> of(choices.getLast(), fittings, view));
    }

    private static Look of(Around around, List<Fitting> fittings, View view) {
      Set<String> names =
          fittings.stream().map(each -> each.hardware().id()).collect(Collectors.toSet());
      Scene scene = around.scene().with(fittings);
      return new Look(
          around, HiddenLines.of(scene, view).seen(item -> names.contains(item.name())));
    }

    private List<Seen> hardware() {
      return seen.subList(around.parts.size(), seen.size());
    }

    /** The length of its lines that nothing hides, in mm. */
    private double hardwareMm() {
      return hardware().stream()
          .flatMap(each -> each.lines().visible().stream())
          .mapToDouble(Seen.Stroke::length)
          .sum();
    }
  }

  /** Whether it stands out of a hole that its part has for it. */
  private static boolean isPin(PlacedItem item, Part host) {
    return item.deepMm() > 0
        && item.deepMm() <= item.highMm()
        && host.cuts(Cut.Holes.class).stream().anyMatch(row -> row.isFor(item.item()));
  }

  /** A pin so far out that its hole is seen, a screw alone out of its own, else in its place. */
  private static double outMm(PlacedItem item, boolean isPin) {
    double deep = item.deepMm();
    double alone = deep <= item.highMm() ? 0 : deep + OUT_MM;
    return isPin ? deep + 2 * OUT_MM : alone;
  }

  /** What goes in with an item out of it. */
  private static Fitting drawnOut(Fitting fitting, Fitting first, double firstMm) {
    double own = fitting.hardware().placed().deepMm() + OUT_MM + high(first);
    return new Fitting(
        fitting.hardware(), fitting.hardware().placed().at(), fitting == first ? firstMm : own);
  }

  private static double high(Fitting fitting) {
    return Math.max(0, fitting.hardware().placed().highMm());
  }

  private static Bounds window(SeatBox seat, List<Seen> hardware, View view) {
    Bounds tight = Bounds.around(seat.corners().stream().map(view::project).toList());
    Bounds near = tight.widened(Math.max(tight.width(), tight.height()) / 2);
    List<At> body =
        hardware.stream()
            .flatMap(each -> each.lines().visible().stream())
            .flatMap(Fit::ends)
            .filter(near::contains)
            .toList();
    Bounds all = body.isEmpty() ? tight : tight.with(Bounds.around(body));
    return all.widened(AROUND * Math.max(all.width(), all.height()));
  }

  /** The largest scale at which it goes into a room; empty if none does. */
  Optional<Scale> scale(Unit unit, Size room) {
    return Scales.in(unit).stream()
        .filter(each -> factor(each) * window.width() <= room.widthMm())
        .filter(each -> factor(each) * window.height() <= room.heightMm())
        .findFirst();
  }

  /** Millimetres on paper for one of the view. */
  static double factor(Scale scale) {
    return ALONG_EDGES * scale.factor();
  }

  /** Where it lies on paper, in the middle of a room. */
  Fit fit(Scale scale, Bounds room) {
    double factor = factor(scale);
    return new Fit(
        factor,
        room.middle().x() - factor * window.middle().x(),
        room.middle().y() - factor * window.middle().y());
  }

  /** Its lines and tones, cut off at the frame. */
  List<Element> on(Fit fit, Bounds frame) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      Seen each = seen.get(i);
      boolean isPart = i < parts.size();
      Role standing = each.item().isOpen() ? Role.PHANTOM : Role.THIN;
      if (!isPart) {
        each.regions().forEach(region -> elements.add(area(region, fit)));
      }
      if (!each.item().isOpen()) {
        each.lines().mouths().forEach(mouth -> elements.add(new Line(Role.THIN, fit.on(mouth))));
        elements.addAll(lines(each.lines().edges(), Role.THIN, fit));
      }
      elements.addAll(lines(each.lines().outlines(), isPart ? standing : Role.VISIBLE, fit));
    }
    return elements.stream().flatMap(each -> Clipping.inside(each, frame).stream()).toList();
  }

  private static Element area(Seen.Region region, Fit fit) {
    return new Area(Ink.tone(region.normal()), region.rings().stream().map(fit::on).toList());
  }

  private static List<Element> lines(List<Seen.Stroke> strokes, Role role, Fit fit) {
    return strokes.stream().<Element>map(each -> new Ink(fit).line(role, each)).toList();
  }

  /** The items of a picture, each with the screws and pins that go through it. */
  static List<List<Fitting>> groups(List<Fitting> fittings) {
    Map<Fitting, List<Fitting>> groups = new LinkedHashMap<>();
    for (Fitting each : fittings) {
      Fitting first =
          fittings.stream().filter(other -> holds(other, each)).findFirst().orElse(each);
      groups.computeIfAbsent(first, any -> new ArrayList<>(List.of(first)));
      if (each != first) {
        groups.get(first).add(each);
      }
    }
    return List.copyOf(groups.values());
  }

  private static boolean holds(Fitting larger, Fitting each) {
    return !larger.hardware().placed().item().equals(each.hardware().placed().item())
        && larger.hardware().placed().host().equals(each.hardware().placed().host())
        && SeatBox.holds(larger, each);
  }
}
