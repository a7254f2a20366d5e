package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.Seen.Stroke;
import storyrod.piece.Cut;

/**
 * A part that a step cuts, as it lies on the bench: what is left of it thin, what the step takes
 * off strong and toned.
 *
 * @param waste what is seen of what is taken off
 * @param left what is seen of the rest
 * @param rounded the seen edges that the step rounds
 * @param broken the seen edges at which wood that goes on is left out
 * @param mouths the seen mouths of the bores that the step makes
 * @param captions what stands below it
 */
record CutPart(
    Taken taken,
    Seen waste,
    Seen left,
    List<Stroke> rounded,
    List<Stroke> broken,
    List<List<At>> mouths,
    List<String> captions)
    implements StripCell {
  /** What its balloon takes at the left. */
  private static final double BESIDE_MM = 13;

  private static final double EDGE_MM = 1;
  private static final double LINE_MM = 3.6;

  static CutPart of(Taken taken, View view, List<String> captions) {
    Scene scene =
        new Scene(
            List.of(
                new Scene.Item("waste", taken.waste(), Vector3D.ZERO),
                new Scene.Item("left", taken.left(), Vector3D.ZERO)));
    HiddenLines lines = HiddenLines.of(scene, view);
    List<Seen> seen = lines.seen();
    seen.forEach(Seen::workOut);
    List<List<At>> mouths = new ArrayList<>(lines.mouths(1, taken.bores()));
    mouths.addAll(lines.mouths(0, taken.bores()));
    List<Stroke> rounded = rounded(taken, seen.getLast(), view);
    List<Stroke> broken =
        seen.stream()
            .flatMap(each -> each.lines().visible().stream())
            .filter(new SawnEdges(taken, view)::have)
            .toList();
    return new CutPart(taken, seen.getFirst(), seen.getLast(), rounded, broken, mouths, captions);
  }

  private static List<Stroke> rounded(Taken taken, Seen left, View view) {
    RoundedEdges edges = new RoundedEdges(taken.left());
    List<RoundedEdges.Stretch> all =
        Cut.only(Cut.Roundover.class, taken.cuts()).stream()
            .flatMap(cut -> edges.of(cut).stream())
            .toList();
    return left.lines().visible().stream()
        .filter(stroke -> all.stream().anyMatch(each -> each.has(stroke, view)))
        .toList();
  }

  /** The share that a view shows of the surface that is taken off; all of bores and roundings. */
  double seen(View view) {
    double area = waste.regions().stream().mapToDouble(Seen.Region::areaMm2).sum();
    return taken.waste().isEmpty() || !mouths.isEmpty() ? 1 : area / BenchView.exposed(taken, view);
  }

  private List<At> points() {
    return Stream.of(waste, left)
        .flatMap(each -> each.lines().visible().stream())
        .flatMap(Fit::ends)
        .toList();
  }

  @Override
  public String mark() {
    return taken.flat().part().mark();
  }

  @Override
  public double shape() {
    Bounds bounds = Bounds.around(points());
    return bounds.width() / Math.max(bounds.height(), 1);
  }

  @Override
  public double heightMm(double widthMm) {
    return (widthMm - BESIDE_MM - EDGE_MM) / shape() + 2 * EDGE_MM + captionsMm();
  }

  @Override
  public double leastMm() {
    return Strip.LEAST_MM;
  }

  private double captionsMm() {
    return captions.size() * LINE_MM;
  }

  @Override
  public List<Element> in(Bounds cell) {
    double high = cell.height() - 2 * EDGE_MM - captionsMm();
    double wide = Math.min(cell.width() - BESIDE_MM - EDGE_MM, high * shape());
    Size room = new Size(wide, high);
    Fit fit = Fit.into(points(), new At(cell.left() + BESIDE_MM, cell.top() + EDGE_MM), room);
    List<Element> elements = new ArrayList<>();
    elements.add(group(fit));
    double left = Bounds.around(fit.on(points())).left() - BESIDE_MM + EDGE_MM;
    double radius = Lowering.BALLOON_RADIUS;
    At centre = new At(left + radius, cell.top() + radius + EDGE_MM);
    tip(fit).ifPresent(tip -> elements.add(new Balloon(centre, tip, taken.flat().part().mark())));
    for (int i = 0; i < captions.size(); i++) {
      double y = cell.bottom() - EDGE_MM - (captions.size() - 1 - i) * LINE_MM;
      elements.add(caption(new At(left, y), captions.get(i), cell));
    }
    return elements;
  }

  /** Where a picture is narrow, a long caption begins further left. */
  private static Text caption(At at, String text, Bounds cell) {
    Text under = new Text(TextStyle.SMALL, at, Anchor.START, true, text);
    double over = Math.max(0, PlacedText.of(under).right() - cell.right());
    double x = Math.max(cell.left() + EDGE_MM, at.x() - over);
    return new Text(TextStyle.SMALL, new At(x, at.y()), Anchor.START, true, text);
  }

  private Optional<At> tip(Fit fit) {
    return Stream.of(left, waste)
        .flatMap(each -> each.regions().stream())
        .max(java.util.Comparator.comparingDouble(Seen.Region::areaMm2))
        .map(region -> new FreeSpot(region, holes()).offRows(fit))
        .map(fit::on);
  }

  private List<List<At>> holes() {
    return Stream.concat(mouths.stream(), left.lines().mouths().stream()).toList();
  }

  /** The width in mm on the paper of the widest thing taken off, where the part has a width. */
  double finestMm(double widthMm) {
    double regions =
        waste.regions().stream()
            .mapToDouble(each -> each.areaMm2() / diagonal(Bounds.around(each.rings().getFirst())))
            .max()
            .orElse(0);
    double bores =
        mouths.stream()
            .map(Bounds::around)
            .mapToDouble(each -> Math.min(each.width(), each.height()))
            .max()
            .orElse(0);
    return Math.max(regions, bores) * (widthMm - BESIDE_MM - EDGE_MM) / longMm();
  }

  /** How long it is in the view, at full size. */
  double longMm() {
    return Bounds.around(points()).width();
  }

  private static double diagonal(Bounds bounds) {
    return Math.hypot(bounds.width(), bounds.height());
  }

  private Group group(Fit fit) {
    List<Element> elements = new ArrayList<>();
    Ink ink = new Ink(fit);
    waste
        .regions()
        .forEach(
            each ->
                elements.add(
                    new Area(
                        Ink.tone(each.normal()), each.rings().stream().map(fit::on).toList())));
    lines(left.lines().visible(), rounded, Role.THIN, ink, elements);
    rounded.forEach(stroke -> elements.add(ink.line(Role.VISIBLE, stroke)));
    lines(waste.lines().edges(), List.of(), Role.THIN, ink, elements);
    lines(waste.lines().outlines(), List.of(), Role.VISIBLE, ink, elements);
    broken.forEach(each -> elements.add(BreakLine.between(fit.on(each.from()), fit.on(each.to()))));
    left.lines().mouths().forEach(mouth -> elements.add(new Line(Role.THIN, fit.on(mouth))));
    for (List<At> mouth : mouths) {
      elements.add(new Area(Tone.SIDE, List.of(fit.on(mouth))));
      elements.add(new Line(Role.CUT, fit.on(mouth)));
    }
    elements.addAll(CentreMarks.of(mouths.stream().map(fit::on).toList()));
    return new Group(
        Ink.id(taken.flat().part()),
        taken.flat().part().mark(),
        taken.flat().part().title(),
        elements);
  }

  /** The lines of one role, without others and without those at which wood is left out. */
  private void lines(
      List<Stroke> strokes, List<Stroke> without, Role role, Ink ink, List<Element> elements) {
    strokes.stream()
        .filter(each -> !without.contains(each) && !broken.contains(each))
        .forEach(each -> elements.add(ink.line(role, each)));
  }
}
