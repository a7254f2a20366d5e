package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.drawing.Balloons.Tip;
import storyrod.drawing.Contacts.Path;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Parallel;
import storyrod.piece.Part;

/**
 * Parts as they are seen, set on a page with trails, arrows and balloons.
 *
 * @param parts in the order of the scene
 * @param strong how many of the parts, from the first, are drawn strong and toned
 * @param fittings hardware on its way in, which stands in the scene after the parts
 * @param on hardware on its parts, which stands last
 */
record Picture(
    List<Part> parts,
    int strong,
    List<Fitting> fittings,
    List<Fitting> on,
    HiddenLines lines,
    List<Seen> seen) {
  private static final double EDGE_MM = Balloons.EDGE_MM;

  /** From the middle of a balloon's ring to the drawing. */
  private static final double BESIDE_MM = Balloons.RADIUS_MM + 7;

  private static final double ARROW_MM = 10;

  /** A shorter arrow is all head, a wedge that says nothing; the trail shows the way without it. */
  static final double WITH_SHAFT_MM = 4.5;

  /** From one arrow's head to the next. */
  private static final double HEADS_MM = 3.2;

  /** A picture with more balloons than these is no longer read at a glance. */
  static final int MOST_BALLOONS = 16;

  /** The most of a way that an arrow takes. */
  private static final double MOST_OF_WAY = 0.8;

  /**
   * What is added to the parts: the ways to their seats, arrows on some of them, and balloons.
   *
   * @param everyArrow whether an arrow is drawn in its full length, and over the parts, where its
   *     way is short or hidden: else no reader would know of the second of two moves
   * @param tagged whether hardware has balloons
   * @param names of what stands side by side, each below it
   */
  record Notes(
      List<Path> trails,
      List<List<Path>> arrows,
      List<String> balloons,
      boolean everyArrow,
      boolean tagged,
      List<UnitName> names) {
    static final Notes NONE = new Notes(List.of(), List.of(), List.of());

    Notes(List<Path> trails, List<List<Path>> arrows, List<String> balloons) {
      this(trails, arrows, balloons, false, true, List.of());
    }

    /** The same without balloons for hardware. */
    Notes untagged() {
      return new Notes(trails, arrows, balloons, everyArrow, false, names);
    }

    /** The same with names below what stands side by side. */
    Notes naming(List<UnitName> others) {
      return new Notes(trails, arrows, balloons, everyArrow, tagged, others);
    }
  }

  static Picture of(Scene scene, List<Part> parts, int strong, View view) {
    return of(scene, parts, strong, view, List.of());
  }

  /** Strong parts and those that get balloons, by their names, have regions. */
  static Picture of(Scene scene, List<Part> parts, int strong, View view, List<String> balloons) {
    return of(scene, List.of(), parts, strong, view, balloons);
  }

  /** The same with hardware, which has no regions. */
  static Picture of(
      Scene scene,
      List<Fitting> fittings,
      List<Part> parts,
      int strong,
      View view,
      List<String> balloons) {
    HiddenLines lines = HiddenLines.of(scene.with(fittings), view);
    Set<String> toned =
        Stream.concat(parts.subList(0, strong).stream().map(Part::name), balloons.stream())
            .collect(Collectors.toSet());
    List<Seen> seen = lines.seen(item -> toned.contains(item.name()) && !item.isOpen());
    return new Picture(parts, strong, fittings, scene.on(), lines, seen);
  }

  /** Itself, with all worked out that it shows: pictures are chosen side by side, drawn in turn. */
  Picture ready() {
    Parallel.each(seen, Seen::workOut);
    return this;
  }

  /** The drawing, as large as a page allows and in its middle. */
  Drawing drawn(String name, Notes notes, Size page) {
    ready();
    List<Stroke> trails = trails(notes);
    List<At> points = points(trails);
    Fit fit = fit(notes, page);
    List<Element> elements = new ArrayList<>(groups(fit));
    trails.forEach(trail -> elements.add(new Ink(fit).line(Role.TRAIL, trail)));
    elements.addAll(arrows(notes, fit));
    elements.addAll(balloons(notes, fit, fit.on(points), page));
    elements.addAll(new UnitNames(notes.names(), seen, fit).clearOf(elements));
    return new Drawing(name, page.widthMm(), page.heightMm(), Optional.empty(), elements);
  }

  /** Where it comes to lie on a page that it fills. */
  Fit fit(Notes notes, Size page) {
    double beside = beside(notes);
    double above = above(notes);
    Size room = new Size(page.widthMm() - 2 * beside, page.heightMm() - 2 * above - below(notes));
    return Fit.into(points(trails(notes)), new At(beside, above), room);
  }

  /** What is seen of a piece of hardware. */
  Seen seen(Fitting fitting) {
    return seen.get(parts.size() + fittings.indexOf(fitting));
  }

  /** What is seen of the way of a piece of hardware to its seat. */
  List<Stroke> seenWay(Fitting fitting) {
    return visible(fitting.trail()).toList();
  }

  /** The height in mm that the drawing fills where only its width is given. */
  double heightMm(Notes notes, double widthMm) {
    List<At> points = points(trails(notes));
    DoubleSummaryStatistics x = points.stream().mapToDouble(At::x).summaryStatistics();
    DoubleSummaryStatistics y = points.stream().mapToDouble(At::y).summaryStatistics();
    double factor = (widthMm - 2 * beside(notes)) / Math.max(x.getMax() - x.getMin(), 1);
    return factor * (y.getMax() - y.getMin()) + 2 * above(notes) + below(notes);
  }

  List<Stroke> trails(Notes notes) {
    return Stream.concat(notes.trails().stream(), Fitting.trails(fittings).stream())
        .flatMap(this::visible)
        .toList();
  }

  private List<At> points(List<Stroke> trails) {
    return Stream.concat(seen.stream().flatMap(s -> s.lines().visible().stream()), trails.stream())
        .flatMap(Fit::ends)
        .toList();
  }

  private boolean isPlain(Notes notes) {
    return notes.balloons().isEmpty() && fittings.isEmpty();
  }

  private double beside(Notes notes) {
    return isPlain(notes) ? 1 : EDGE_MM + BESIDE_MM;
  }

  private double above(Notes notes) {
    return isPlain(notes) ? 1 : EDGE_MM;
  }

  private static double below(Notes notes) {
    return notes.names().isEmpty() ? 0 : UnitNames.HIGH_MM;
  }

  /** The area in mm², in the view, that is seen of some parts. */
  double seenArea(List<String> names) {
    return seen.stream()
        .filter(each -> names.contains(each.item().name()))
        .flatMap(each -> each.regions().stream())
        .mapToDouble(Seen.Region::areaMm2)
        .sum();
  }

  /** The longest stretch that is seen of a path, as a share of all of it. */
  double seenShare(Path path, View view) {
    double whole = view.project(path.from()).distance(view.project(path.to()));
    return visible(path).mapToDouble(Stroke::length).max().orElse(0) / Math.max(whole, 1);
  }

  /** The least that is seen of any way, each of several paths of which the best is seen. */
  double leastSeen(List<List<Path>> ways, View view) {
    return ways.stream()
        .mapToDouble(way -> way.stream().mapToDouble(each -> seenShare(each, view)).max().orElse(1))
        .min()
        .orElse(1);
  }

  private Stream<Stroke> visible(Path path) {
    return lines.visible(path.from(), path.to()).stream();
  }

  private List<Element> groups(Fit fit) {
    Ink ink = new Ink(fit);
    List<Element> groups = new ArrayList<>();
    for (int i = parts.size() - 1; i >= 0; i--) {
      groups.add(
          i < strong ? ink.strong(parts.get(i), seen.get(i)) : ink.thin(parts.get(i), seen.get(i)));
    }
    for (int i = 0; i < fittings.size(); i++) {
      groups.add(ink.hardware(fittings.get(i).hardware(), seen.get(parts.size() + i)));
    }
    for (int i = 0; i < on.size(); i++) {
      groups.add(ink.worn(on.get(i).hardware(), seen.get(parts.size() + fittings.size() + i)));
    }
    return groups;
  }

  /** The arrows with a shaft, none so near to one before it that their heads would meet. */
  private List<Arrow> arrows(Notes notes, Fit fit) {
    List<Arrow> arrows = new ArrayList<>();
    for (List<Path> paths : notes.arrows()) {
      arrow(paths, notes, fit)
          .filter(each -> each.from().distance(each.to()) > WITH_SHAFT_MM)
          .filter(
              each -> arrows.stream().allMatch(other -> each.to().distance(other.to()) > HEADS_MM))
          .ifPresent(arrows::add);
    }
    return arrows;
  }

  /** An arrow in the middle of the longest stretch that is seen of some paths. */
  private Optional<Arrow> arrow(List<Path> paths, Notes notes, Fit fit) {
    Optional<Stroke> seen =
        paths.stream().flatMap(this::visible).max(Comparator.comparingDouble(Stroke::length));
    return notes.everyArrow()
        ? seen.or(() -> paths.stream().map(way -> lines.whole(way.from(), way.to())).findFirst())
            .map(stroke -> arrow(stroke, Double.POSITIVE_INFINITY, fit))
        : seen.map(stroke -> arrow(stroke, MOST_OF_WAY, fit));
  }

  private static Arrow arrow(Stroke stroke, double most, Fit fit) {
    double share = Math.min(most, ARROW_MM / (fit.factor() * stroke.length()));
    Stroke shaft = stroke.between(0.5 - share / 2, 0.5 + share / 2);
    return new Arrow(fit.on(shaft.from()), fit.on(shaft.to()), false);
  }

  private List<Drawing.Balloon> balloons(Notes notes, Fit fit, List<At> drawn, Size page) {
    List<Part> named = new ArrayList<>();
    List<Seen> theirs = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (notes.balloons().contains(parts.get(i).name())) {
        named.add(parts.get(i));
        theirs.add(seen.get(i));
      }
    }
    List<Tip> tips = new ArrayList<>(new Tips(fit).of(named, theirs));
    if (notes.tagged()) {
      tips.addAll(new HardwareTips(fit, this).upTo(MOST_BALLOONS - tips.size()));
    }
    if (!Balloons.canStand(tips.size(), page.heightMm())) {
      return List.of(); // the exploded views have them, a page for each sixteen
    }
    double left = drawn.stream().mapToDouble(At::x).min().orElse(0) - BESIDE_MM;
    double right = drawn.stream().mapToDouble(At::x).max().orElse(0) + BESIDE_MM;
    return new Balloons(left, right, EDGE_MM, page.heightMm() - EDGE_MM).placed(tips);
  }
}
