package storyrod.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

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

  /** How many clamps one part takes while its glue sets. */
  public int count(Part part) {
    Length rough = part.finishedLength().plus(piece.description().shop().extraLength());
    double spacing = piece.isLaminated(part) ? FACE_MM : EDGE_MM;
    double between = Math.max(0, rough.toMm() - 2 * END_MM);
    return 1 + Math.max(1, (int) Math.ceil(between / spacing));
  }

  /**
   * Where the clamps of a part stand along boards of a length: near both ends, the rest evenly
   * between.
   */
  public List<Double> placesMm(Part part, double lengthMm) {
    int gaps = count(part) - 1;
    double apart = (lengthMm - 2 * END_MM) / gaps;
    return IntStream.rangeClosed(0, gaps).mapToObj(i -> END_MM + i * apart).toList();
  }

  /**
   * What is glued up at once, one round after the other: each part goes into the first round that
   * the shop still has clamps for, those that take the most first.
   */
  public List<List<Part>> rounds(Step step) {
    List<List<Part>> rounds = new ArrayList<>();
    glued(piece, step)
        .sorted(Comparator.comparingInt(part -> -count(part)))
        .forEach(
            part ->
                rounds.stream()
                    .filter(round -> clamps(round) + count(part) <= shop())
                    .findFirst()
                    .orElseGet(
                        () -> {
                          rounds.add(new ArrayList<>());
                          return rounds.getLast();
                        })
                    .add(part));
    return rounds;
  }

  private int clamps(List<Part> parts) {
    return parts.stream().mapToInt(this::count).sum();
  }

  private int shop() {
    return piece.description().shop().clamps();
  }
}
