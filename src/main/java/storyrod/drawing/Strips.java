package storyrod.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Which steps have a strip above their sentences in the place of a picture beside the lists. */
public final class Strips {
  private static final double OF_WORKING = 0.6;

  /** No other page shows how boards are glued up, so hardly any white is as bad as none of it. */
  private static final double OF_BOARDS = 0.9;

  /** What a panel is cut to is told by its sizes; its glue-up shows the rest. */
  private static final double OF_PANELS = 0.24;

  private static final double OF_ROUNDING = 0.08;

  /** Where faces, edges and boards are is told by the part drawings and the layouts too. */
  private static final double OF_GRIDS = 0.36;

  /** The next step puts parts together, and its picture wants the room. */
  private static final double OF_SANDING = 0.15;

  /** No other page shows how an offcut is divided. */
  private static final double OF_TESTING = 0.9;

  /** So many marks of those that are not drawn stand in a line. */
  private static final int PER_LINE = 24;

  /** No wider than this is the column beside sentences: there figures stand one below the other. */
  private static final double NARROW_MM = 60;

  private Strips() {}

  /** Whether a room is a column beside sentences. */
  static boolean isNarrow(double widthMm) {
    return widthMm > 0 && widthMm <= NARROW_MM;
  }

  /** Whether the picture of a step, if it has one, is a strip. */
  public static boolean isFor(Step step) {
    return CutPicture.isFor(step) || BoardPicture.isFor(step) || GridPicture.isFor(step);
  }

  /**
   * The share of a page that may stay white for the picture of a step, 0 if it is no strip. Which
   * edges are rounded is told in few words.
   */
  public static double worth(Piece piece, Step step) {
    boolean rounds =
        step.operations().stream()
            .flatMap(each -> each.cuts().stream())
            .allMatch(Cut.Roundover.class::isInstance);
    if (isSmall(piece, step)) {
      return ofSmall(step);
    }
    if (BoardPicture.isFor(step)) {
      return BoardPicture.isOfPanels(piece, step) ? OF_PANELS : OF_BOARDS;
    }
    return CutPicture.isFor(step) ? rounds ? OF_ROUNDING : OF_WORKING : 0;
  }

  private static double ofSmall(Step step) {
    return step.verb() == Verb.SAND ? OF_SANDING : step.verb() == Verb.TEST ? OF_TESTING : OF_GRIDS;
  }

  /** Whether its strip is low: rows of small figures, or the end or the face of a single board. */
  public static boolean isSmall(Piece piece, Step step) {
    return (GridPicture.isFor(step) || step.verb() == Verb.MILL)
        && !BoardPicture.isShown(piece, step);
  }

  /** The parts on which a step works, by their marks in their order. */
  static Map<String, List<Part>> byMark(Piece piece, Step step) {
    return step.targets().stream()
        .map(piece::part)
        .collect(Collectors.groupingBy(Part::mark, LinkedHashMap::new, Collectors.toList()));
  }

  /** The marks of those for which there is no room, in lines. */
  static List<String> others(List<String> marks, Words words) {
    return IntStream.iterate(0, i -> i < marks.size(), i -> i + PER_LINE)
        .mapToObj(
            i -> {
              String line =
                  marks.subList(i, Math.min(i + PER_LINE, marks.size())).stream()
                      .collect(Collectors.joining(", "));
              return i == 0 ? words.say("step.cut.others", line) : line;
            })
        .toList();
  }
}
