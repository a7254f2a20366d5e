package storyrod.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;

/**
 * The clamps of boards that are glued edge to edge or face to face: one near each end, and between
 * them no gap wider than the spacing.
 */
public record PanelClamps(Piece piece) {
  /**
   * From bar to bar over an edge joint, and from cramp to cramp over a face joint, whose boards are
   * thin and spread the pressure less; and from the first to the end (common practice, from
   * memory).
   */
  private static final double EDGE_MM = 305;

  private static final double FACE_MM = 102;
  private static final double END_MM = 51;

  static boolean isGlueUp(Step step) {
    return step.verb() == Verb.MILL || step.verb() == Verb.REJOIN;
  }

  /** The parts that a step glues up from boards or strips. */
  public static Stream<Part> glued(Piece piece, Step step) {
    return step.operations().stream()
        .filter(operation -> isGlueUp(step))
        .map(operation -> piece.part(operation.target()))
        .filter(part -> step.verb() == Verb.REJOIN || piece.isPanel(part));
  }

  /** What a step glues up, each clamped as one. */
  public static List<GluedPanel> panels(Piece piece, Step step) {
    return GluedPanel.of(piece, glued(piece, step).toList());
  }

  /** How many clamps a panel takes while its glue sets. */
  public int count(GluedPanel panel) {
    double spacing = piece.isLaminated(panel.first()) ? FACE_MM : EDGE_MM;
    double between = Math.max(0, panel.length().toMm() - 2 * END_MM);
    return 1 + Math.max(1, (int) Math.ceil(between / spacing));
  }

  /**
   * Where the clamps of a panel stand along boards of a length: near both ends, the rest evenly
   * between.
   */
  public List<Double> placesMm(GluedPanel panel, double lengthMm) {
    int gaps = count(panel) - 1;
    double apart = (lengthMm - 2 * END_MM) / gaps;
    return IntStream.rangeClosed(0, gaps).mapToObj(i -> END_MM + i * apart).toList();
  }

  /**
   * What is glued up at once, one round after the other: each panel goes into the first round that
   * the shop still has clamps for, those that take the most first.
   */
  public List<List<GluedPanel>> rounds(Step step) {
    List<List<GluedPanel>> rounds = new ArrayList<>();
    panels(piece, step).stream()
        .sorted(Comparator.comparingInt(panel -> -count(panel)))
        .forEach(
            panel ->
                rounds.stream()
                    .filter(round -> clamps(round) + count(panel) <= shop())
                    .findFirst()
                    .orElseGet(
                        () -> {
                          rounds.add(new ArrayList<>());
                          return rounds.getLast();
                        })
                    .add(panel));
    return rounds;
  }

  private int clamps(List<GluedPanel> panels) {
    return panels.stream().mapToInt(this::count).sum();
  }

  private int shop() {
    return piece.description().shop().clamps();
  }
}
