package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.check.Checks;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.EntryType;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.Solid;
import storyrod.piece.RandomJoints.Maker;
import storyrod.piece.RandomJoints.Sample;

/**
 * Random pieces of every joint fit without taking the same space, and whatever disturbs the fit by
 * a tenth of a millimetre or more is found. The seed is fixed.
 */
class RandomJointsTest {
  private static final int TRIES = 20;
  private static final long SEED = 20261126;

  static List<Maker> makers() {
    return RandomJoints.ALL;
  }

  /** Those of which a length can be too great. */
  static List<Maker> limited() {
    return makers().stream().filter(each -> each.make(new Random(SEED)).hasLongest()).toList();
  }

  @ParameterizedTest
  @MethodSource("makers")
  void partsFit(Maker maker) {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIES; i++) {
      Sample sample = sample(maker, random);
      assertFalse(overlaps(Pieces.of(sample.fitting())), sample.body());
    }
  }

  @ParameterizedTest
  @MethodSource("makers")
  void partDescribedElsewhereIsFound(Maker maker) {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIES; i++) {
      Sample sample = sample(maker, random);
      String gap = (random.nextBoolean() ? "0" : "0 - ") + RandomJoints.mm(random, 0.1, 3);
      String wrong = sample.withGap(gap.startsWith("0 -") ? gap : gap.substring(1));
      assertTrue(
          !sample.hasGap() || Pieces.faultsOf(wrong).stream().anyMatch(Diagnostic::isError), wrong);
    }
  }

  @ParameterizedTest
  @MethodSource("makers")
  void partThatStandsElsewhereIsFoundUnlessItIsFreeToLeaveThatWay(Maker maker) {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIES; i++) {
      Sample sample = sample(maker, random);
      Piece piece = Pieces.of(sample.fitting());
      double by = sample.playMm() + 0.1 + 2 * random.nextDouble();
      for (Face way : Face.values()) {
        Piece moved = with(piece, moved(piece.part("rail"), way, by));
        assertEquals(
            !sample.free().contains(way),
            overlaps(moved),
            () -> "moved %.2f mm to the %s%n%s".formatted(by, way.word(), sample.body()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("makers")
  void cutThatIsForgottenIsFound(Maker maker) {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIES; i++) {
      Sample sample = sample(maker, random);
      Piece piece = Pieces.of(sample.fitting());
      for (String name : List.of("rail", "post")) {
        Part part = piece.part(name);
        for (Cut cut : part.cuts()) {
          List<Cut> others = part.cuts().stream().filter(each -> each != cut).toList();
          assertTrue(overlaps(with(piece, withCuts(part, others))), sample.body());
        }
      }
    }
  }

  @Test
  void everyJointHasAMaker() {
    assertEquals(
        JointTypes.words().stream().map(EntryType::name).toList(),
        makers().stream().map(Maker::kind).distinct().sorted().toList());
  }

  @ParameterizedTest
  @MethodSource("limited")
  void lengthThatIsTooGreatIsFound(Maker maker) {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIES; i++) {
      Sample sample = sample(maker, random);
      Set<String> usual = codes(Pieces.of(sample.longerBy(-0.1)));
      String wrong = sample.longerBy(0.1 + 2 * random.nextDouble());
      Set<String> found =
          Pieces.faultsOf(wrong).stream().map(Diagnostic::code).collect(Collectors.toSet());
      if (found.isEmpty()) {
        found.addAll(codes(Pieces.of(wrong)));
      }
      found.removeAll(usual);
      assertFalse(found.isEmpty(), wrong);
    }
  }

  private static Sample sample(Maker maker, Random random) {
    List<Axis> axes = new ArrayList<>(Arrays.asList(Axis.values()));
    Collections.shuffle(axes, random);
    return maker.make(random).turned(axes);
  }

  /** Whether parts take the same space, or a peg has no room in its holes. */
  private static boolean overlaps(Piece piece) {
    List<Part> pegs = piece.parts().stream().filter(RandomJointsTest::isPeg).toList();
    List<Part> others = piece.parts().stream().filter(part -> !isPeg(part)).toList();
    return codes(new Piece(piece.description(), others, piece.marks(), List.of()))
            .contains("parts-overlap")
        || pegs.stream()
            .anyMatch(peg -> others.stream().anyMatch(part -> PegRoom.isInWood(peg, part)));
  }

  private static boolean isPeg(Part part) {
    return part.name().startsWith("peg");
  }

  private static Set<String> codes(Piece piece) {
    Diagnostics found = new Diagnostics();
    Checks.run(piece, found);
    return found.sorted().stream().map(Diagnostic::code).collect(Collectors.toSet());
  }

  private static Piece with(Piece piece, Part other) {
    List<Part> parts =
        piece.parts().stream()
            .map(part -> part.name().equals(other.name()) ? other : part)
            .toList();
    return new Piece(piece.description(), parts, piece.marks(), List.of());
  }

  private static Part moved(Part part, Face way, double mm) {
    Solid solid = part.solid().moved(way.normal().multiply(mm));
    return copy(part, part.cuts(), new Stance(part.pose(), solid, solid.bounds().orElseThrow()));
  }

  private static Part withCuts(Part part, List<Cut> cuts) {
    Solid solid = Carving.of(part.box(), cuts, Fineness.USUAL);
    return copy(part, cuts, Stance.of(part.pose(), solid, part.box()));
  }

  private static Part copy(Part part, List<Cut> cuts, Stance stance) {
    return new Part(
        part.name(),
        part.title(),
        part.mark(),
        part.mirrored(),
        part.assembly(),
        part.stock(),
        part.shoulder(),
        part.box(),
        part.length(),
        part.thickness(),
        cuts,
        stance.placed(),
        stance,
        part.say(),
        part.at());
  }
}
