package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.ShowFaces;
import storyrod.build.Verb;
import storyrod.geometry.Face;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/**
 * A step that cuts or drills parts, as a strip: one of each kind of part as it lies to be worked,
 * and beside them the first cut enlarged, seen along its run, with the figures to which the tool is
 * set.
 */
public final class CutPicture implements PicturedStep {
  /** The share that must be seen of what a step takes off the surface of a part. */
  static final double ENOUGH_SEEN = 0.2;

  /** What is taken off a part is too fine to be made out if it is no wider than this... */
  private static final double TOO_FINE_MM = 1.5;

  /** ... where its part has this width on the paper. */
  private static final double USUAL_WIDTH_MM = 58;

  /** No less larger it is worth leaving out what goes on alike. */
  private static final double ENLARGED = 1.4;

  private final int step;
  private final List<CutPart> parts;
  private final Strip strip;

  private CutPicture(int step, List<CutPart> parts, Strip strip) {
    this.step = step;
    this.parts = parts;
    this.strip = strip;
  }

  /** Whether the picture of a step, if it has one, is such a strip. */
  public static boolean isFor(Step step) {
    return step.verb() == Verb.CUT || step.verb() == Verb.DRILL || step.verb() == Verb.TRIM;
  }

  /** Empty if the step takes nothing off any part. */
  static Optional<CutPicture> of(Piece piece, BuildPlan plan, Step step) {
    if (!isFor(step)) {
      return Optional.empty();
    }
    Map<String, List<Part>> byMark = Strips.byMark(piece, step);
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
    for (Taken each : taken) {
      Part part = each.flat().part();
      Optional<Face> show = faces.of(part).map(each.flat()::turned);
      BenchView view = BenchView.of(each, show);
      Stream<String> captions =
          Stream.of(
                  count(part, byMark.get(part.mark()), notation.words()),
                  lying(view, show, notation.words()),
                  together(step, notation))
              .flatMap(words -> words);
      parts.add(shown(each, view, show, inOneLine(captions)));
    }
    Optional<CutFigure> figure = figure(taken.getFirst(), notation);
    Strip strip = new Strip(List.copyOf(parts), figure, Strip.IN_A_ROW, notation.words());
    return new CutPicture(step.number(), parts, strip);
  }

  /** Parts whose edges are shaped when they are together are drawn each by itself. */
  private static Stream<String> together(Step step, Notation notation) {
    return step.verb() == Verb.TRIM
        ? Stream.of(notation.words().say("step.cut.together"))
        : Stream.empty();
  }

  /** A long part has its middle left out where only so what is taken off can be made out. */
  private static CutPart shown(
      Taken taken, BenchView view, Optional<Face> show, List<String> captions) {
    CutPart whole = lying(taken, view, show, captions);
    return whole.finestMm(USUAL_WIDTH_MM) >= TOO_FINE_MM
        ? whole
        : Shortened.of(taken)
            .map(each -> lying(each, BenchView.of(each, show), show, captions))
            .filter(each -> ENLARGED * each.longMm() <= whole.longMm())
            .orElse(whole);
  }

  /** Looked down on more steeply where a groove hides what is taken off, and that shows it. */
  private static CutPart lying(
      Taken taken, BenchView view, Optional<Face> show, List<String> captions) {
    CutPart usual = CutPart.of(taken, view.view(), captions);
    if (usual.seen(view.view()) >= ENOUGH_SEEN) {
      return usual;
    }
    View steep = BenchView.steep(taken, show).view();
    CutPart down = CutPart.of(taken, steep, captions);
    return down.seen(steep) >= ENOUGH_SEEN ? down : usual;
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

  private static List<String> inOneLine(Stream<String> captions) {
    List<String> all = captions.toList();
    return all.isEmpty() ? List.of() : List.of(String.join(", ", all));
  }

  /** The parts that it shows, as it shows them. */
  List<CutPart> parts() {
    return parts;
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
    return strip.heightMm(widthMm);
  }

  @Override
  public Drawing drawn(Size room) {
    return strip.drawn("step-" + step, room);
  }
}
