package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.ShowFaces;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.Element;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/**
 * A step that cuts or drills parts, as a strip: the first of each kind of part as it lies to be
 * worked, and beside them the first cut enlarged, seen along its run, with the figures to which the
 * tool is set.
 */
public final class CutPicture implements PicturedStep {
  /** The height of a strip at most, and at least where it has no figures, in mm. */
  static final double MOST_MM = 60;

  static final double LEAST_MM = 20;

  private static final double OF_CUTTING = 0.6;
  private static final double OF_ROUNDING = 0.08;

  /** So many parts stand side by side at most. */
  private static final int MOST_PARTS = 3;

  /** So many marks of those that are not drawn stand in a line. */
  private static final int PER_LINE = 6;

  /** Between what stands side by side. */
  private static final double GAP_MM = 5;

  private final int step;
  private final List<CutPart> parts;
  private final Optional<CutFigure> profile;

  private CutPicture(int step, List<CutPart> parts, Optional<CutFigure> profile) {
    this.step = step;
    this.parts = parts;
    this.profile = profile;
  }

  /** Whether the picture of a step, if it has one, is such a strip. */
  public static boolean isFor(Step step) {
    return step.verb() == Verb.CUT || step.verb() == Verb.DRILL || step.verb() == Verb.TRIM;
  }

  /**
   * The share of a page that may stay white for the picture of a step, 0 if it is no such strip.
   * Which edges are rounded is told in few words.
   */
  public static double worth(Step step) {
    boolean rounds =
        step.operations().stream()
            .flatMap(each -> each.cuts().stream())
            .allMatch(Cut.Roundover.class::isInstance);
    return isFor(step) ? rounds ? OF_ROUNDING : OF_CUTTING : 0;
  }

  /** Empty if the step takes nothing off any part. */
  static Optional<CutPicture> of(Piece piece, BuildPlan plan, Step step) {
    if (!isFor(step)) {
      return Optional.empty();
    }
    Map<String, List<Part>> byMark = new LinkedHashMap<>();
    step.targets().stream()
        .map(piece::part)
        .forEach(part -> byMark.computeIfAbsent(part.mark(), m -> new ArrayList<>()).add(part));
    List<Taken> taken =
        byMark.values().stream()
            .flatMap(same -> Taken.of(shown(piece, same), plan, step).stream())
            .toList();
    return taken.isEmpty() ? Optional.empty() : Optional.of(of(piece, step, taken, byMark));
  }

  /** The part that its mark's drawing shows, if it is among them. */
  private static Part shown(Piece piece, List<Part> same) {
    Part shown = piece.mark(same.getFirst().mark()).shown();
    return same.contains(shown) ? shown : same.getFirst();
  }

  private static CutPicture of(
      Piece piece, Step step, List<Taken> taken, Map<String, List<Part>> byMark) {
    Notation notation = Notation.of(piece);
    ShowFaces faces = new ShowFaces(piece);
    List<CutPart> parts = new ArrayList<>();
    List<Taken> drawn = taken.subList(0, Math.min(MOST_PARTS, taken.size()));
    for (Taken each : drawn) {
      BenchView view = BenchView.of(each);
      Part part = each.flat().part();
      Optional<Face> show = faces.of(part).map(each.flat()::turned);
      Stream<String> captions =
          Stream.concat(
              count(part, byMark.get(part.mark()), notation.words()),
              lying(view, show, notation.words()));
      List<String> below = new ArrayList<>(inOneLine(captions));
      if (each == drawn.getLast()) {
        below.addAll(others(taken.subList(drawn.size(), taken.size()), notation.words()));
      }
      parts.add(CutPart.of(each, view.view(), below));
    }
    return new CutPicture(step.number(), parts, figure(taken.getFirst(), notation));
  }

  private static Optional<CutFigure> figure(Taken taken, Notation notation) {
    return CutProfile.of(taken, notation)
        .map(CutFigure.class::cast)
        .or(() -> EdgeProfile.of(taken, notation));
  }

  /** How many are worked, mirror images of what is shown apart: they would be cut wrong. */
  private static Stream<String> count(Part shown, List<Part> all, Words words) {
    int same = (int) all.stream().filter(each -> each.mirrored() == shown.mirrored()).count();
    if (same < all.size()) {
      return Stream.of(words.say("step.cut.handed", same, all.size() - same));
    }
    return same > 1 ? Stream.of(words.say("step.cut.count", same)) : Stream.empty();
  }

  /** Which way the show face lies, if up or down. */
  private static Stream<String> lying(BenchView view, Optional<Face> show, Words words) {
    return show.filter(each -> each.axis() == view.up().axis()).stream()
        .map(each -> each == view.up() ? "step.cut.show-up" : "step.cut.show-down")
        .map(words::say);
  }

  /** The marks of those for which there is no room, in lines. */
  private static List<String> others(List<Taken> rest, Words words) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < rest.size(); i += PER_LINE) {
      String marks =
          rest.subList(i, Math.min(i + PER_LINE, rest.size())).stream()
              .map(each -> each.flat().part().mark())
              .collect(Collectors.joining(", "));
      lines.add(i == 0 ? words.say("step.cut.others", marks) : marks);
    }
    return lines;
  }

  private static List<String> inOneLine(Stream<String> captions) {
    List<String> all = captions.toList();
    return all.isEmpty() ? List.of() : List.of(String.join(", ", all));
  }

  /** The parts that it shows, with what the step takes off each. */
  List<Taken> taken() {
    return parts.stream().map(CutPart::taken).toList();
  }

  @Override
  public int step() {
    return step;
  }

  /** At no width the least height at which the parts can be made out. */
  @Override
  public double heightMm(double widthMm) {
    List<Double> widths = widths(widthMm, profile);
    double parts = 0;
    for (int i = 0; i < widths.size(); i++) {
      parts = Math.max(parts, this.parts.get(i).heightMm(widths.get(i)));
    }
    double beside = profile.map(each -> each.size().heightMm()).orElse(0.0);
    boolean isLeast = widthMm <= 0;
    return Math.clamp(isLeast ? LEAST_MM : Math.max(parts, beside), LEAST_MM, MOST_MM);
  }

  @Override
  public Drawing drawn(Size room) {
    Optional<CutFigure> beside = profile.filter(each -> each.size().heightMm() <= room.heightMm());
    List<Element> elements = new ArrayList<>();
    double left = 0;
    List<Double> widths = widths(room.widthMm(), beside);
    for (int i = 0; i < widths.size(); i++) {
      Bounds cell = new Bounds(left, 0, left + widths.get(i), room.heightMm());
      elements.addAll(parts.get(i).in(cell));
      left = cell.right() + GAP_MM;
    }
    beside.ifPresent(each -> elements.add(each.in(room)));
    return new Drawing("step-" + step, room.widthMm(), room.heightMm(), Optional.empty(), elements);
  }

  /** The widths of the parts' cells: longer parts take more. */
  private List<Double> widths(double widthMm, Optional<CutFigure> beside) {
    double room =
        widthMm
            - (parts.size() - 1) * GAP_MM
            - beside.map(each -> each.size().widthMm() + GAP_MM).orElse(0.0);
    double all = parts.stream().mapToDouble(CutPicture::weight).sum();
    return parts.stream().map(each -> room * weight(each) / all).toList();
  }

  private static double weight(CutPart part) {
    return Math.sqrt(part.shape());
  }
}
