package storyrod.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;
import storyrod.words.Words;

/**
 * The strips of a step that works on single boards: blanks that it looks for in boards, one blank
 * that it mills, or the boards that it rips and crosscuts.
 */
record RoughBoards(Piece piece, Step step) {
  /** Single boards are all sawn alike, and their sizes stand beside the sentences. */
  private static final int ALWAYS = 3;

  /** What the longest of single boards takes on the paper: about a third of its width. */
  private static final double RIPPED_MM = 55;

  /** What the longest blank takes that is looked for in a board, beside its balloon in a third. */
  private static final double CHOSEN_MM = 38;

  /** What its caption takes at most: a third of the narrowest paper, less what is between. */
  private static final double CAPTION_MM = 50;

  /** What it mills, or else what it rips; empty where it does neither to single boards. */
  Optional<Strip> worked() {
    return milled().or(this::ripped);
  }

  /** The first blank of single boards that a step mills, at its end. */
  private Optional<Strip> milled() {
    return step.targets().stream()
        .filter(any -> step.verb() == Verb.MILL)
        .flatMap(name -> MillFigure.of(piece, piece.part(name)).stream())
        .findFirst()
        .map(each -> new Strip(List.of(each), Optional.empty(), 1, each.notation().words()));
  }

  /** The boards that a step rips and crosscuts, one of each size, all at one scale. */
  private Optional<Strip> ripped() {
    Map<List<Length>, List<Part>> bySize =
        step.targets().stream()
            .filter(any -> step.verb() == Verb.SIZE)
            .map(piece::part)
            .collect(
                Collectors.groupingBy(
                    part -> List.of(part.finishedLength(), part.finishedWidth()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    List<StripCell> cells =
        bySize.values().stream()
            .flatMap(same -> ripped(same, largest(bySize.keySet())).stream())
            .toList();
    return cells.isEmpty()
        ? Optional.empty()
        : Optional.of(new Strip(cells, Optional.empty(), ALWAYS, Notation.of(piece).words()));
  }

  /** Where it chooses boards: the blanks that are looked for, the longest first. */
  Optional<Strip> chosen() {
    List<Part> solids =
        step.targets().stream()
            .filter(any -> step.verb() == Verb.CHOOSE)
            .map(piece::part)
            .filter(part -> part.stock().kind() == StockKind.SOLID)
            .toList();
    Map<Object, List<GluedPanel>> alike =
        GluedPanel.of(piece, solids).stream()
            .sorted(Comparator.comparing(GluedPanel::length).reversed())
            .collect(
                Collectors.groupingBy(
                    each -> each.isShared() ? each : each.first().mark(),
                    LinkedHashMap::new,
                    Collectors.toList()));
    double longest = alike.values().stream().mapToDouble(RoughBoards::longestMm).max().orElse(1);
    List<StripCell> cells =
        alike.values().stream()
            .<StripCell>map(same -> chosen(same).atMost(largest(longest, CHOSEN_MM)))
            .toList();
    Words words = Notation.of(piece).words();
    return cells.isEmpty()
        ? Optional.empty()
        : Optional.of(new Strip(cells, Optional.empty(), ALWAYS, words));
  }

  private static double longestMm(List<GluedPanel> same) {
    return same.getFirst().length().toMm();
  }

  private BoardFigure chosen(List<GluedPanel> same) {
    Notation notation = Notation.of(piece);
    GluedPanel blank = same.getFirst();
    BoardPlan plan = BoardPlan.chosen(piece, blank);
    String marks =
        blank.parts().stream().map(Part::mark).distinct().collect(Collectors.joining(", "));
    Part part = blank.first();
    Length thick = part.stock().boughtAs().orElse(part.finishedThickness());
    String caption =
        notation
            .words()
            .say(
                "step.choose.blank",
                marks,
                same.size() * piece.blanks(part),
                plan.size(notation),
                notation.format().format(thick));
    return BoardFigure.of(
        plan, notation, SmallLines.within(CAPTION_MM, List.of(caption)), blank.parts());
  }

  private Optional<StripCell> ripped(List<Part> same, double largest) {
    List<String> marks = same.stream().map(Part::mark).distinct().toList();
    List<String> captions = new ArrayList<>(new LongBlanks(piece, step).captions(same));
    if (marks.size() > 1) {
      captions.addFirst(String.join(", ", marks));
    }
    return BoardPlan.ripped(piece, same.getFirst())
        .map(plan -> BoardFigure.of(plan, Notation.of(piece), captions, same).atMost(largest));
  }

  /** The largest usual scale at which the longest of some sizes takes no more than it should. */
  private double largest(Collection<List<Length>> sizes) {
    double longest = sizes.stream().mapToDouble(size -> size.getFirst().toMm()).max().orElse(1);
    return largest(longest, RIPPED_MM);
  }

  private double largest(double longest, double mostMm) {
    return Scales.in(piece.description().format().unit()).stream()
        .mapToDouble(scale -> (double) scale.paper() / scale.real())
        .filter(factor -> factor * longest <= mostMm)
        .findFirst()
        .orElse(mostMm / longest);
  }
}
