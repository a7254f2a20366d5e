package storyrod.build;

import java.util.List;
import java.util.Optional;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Joint;

/** A unit that leaves the rest in a direction, and what speaks against building it that way. */
record Leaving(
    Unit unit,
    Face way,
    Optional<FirstMove> firstMove,
    List<Joint> closed,
    int cost,
    boolean tilted) {
  /** Ways to bring a part in from, the handiest first. */
  static final List<Face> HANDY =
      List.of(Face.TOP, Face.FRONT, Face.RIGHT, Face.LEFT, Face.BACK, Face.BOTTOM);

  /** What a drill with its driver needs before the screw (common practice). */
  private static final Length DRIVER = Length.mm(250);

  /** What each fault weighs: glue wiped off, no room for a driver, a group left by itself. */
  static final int WIPED = 4;

  static final int UNDRIVEN = 2;
  static final int SPLIT = 3;

  static Leaving straight(Unit unit, Face way, List<Joint> closed, int cost) {
    int wiped =
        (int) closed.stream().filter(joint -> joint.glued() && !fits(joint, unit, way)).count();
    return new Leaving(unit, way, Optional.empty(), closed, cost + WIPED * wiped, false);
  }

  static Leaving tilted(Unit unit, Face way, List<Joint> closed) {
    return new Leaving(unit, way, Optional.empty(), closed, 0, true);
  }

  /** The same, when a second move has to follow. */
  Leaving inTwo(TwoMoves.Way moves) {
    return new Leaving(unit, way, Optional.of(moves.firstIn()), closed, cost, tilted);
  }

  /** How handy the move is on which it is brought in from outside. */
  int handy() {
    return HANDY.indexOf(firstMove.map(first -> first.enters().opposite()).orElse(way));
  }

  static int drivingCost(Reach reach, List<Joint> closed, List<Unit> rest) {
    return UNDRIVEN
        * (int) closed.stream().filter(joint -> isDriverBlocked(reach, joint, rest)).count();
  }

  /** How many joints do not close in the direction in which the unit comes. */
  int againstJoints() {
    return (int) closed.stream().filter(joint -> !fits(joint, unit, way)).count();
  }

  /** Whether the piece has to be turned for it, which it bears best when all else stands. */
  boolean isFromBelow() {
    return unit.level().equals(Unit.PIECE) && way == Face.BOTTOM;
  }

  /** Whether it lies in grooves: its frame is better stiff and square before it comes. */
  boolean isPanel() {
    return closed.stream().anyMatch(joint -> !joint.holding());
  }

  boolean isGlued() {
    return closed.stream().anyMatch(Joint::glued);
  }

  /** Whether a unit put in later is equal and comes the same way. */
  boolean isTwinOf(Placing later) {
    return later.unit().marks().equals(unit.marks())
        && later.firstMove().equals(firstMove)
        && later.enters().map(Face::opposite).filter(way::equals).isPresent();
  }

  private static boolean fits(Joint joint, Unit unit, Face way) {
    return way == (unit.has(joint.first()) ? joint.entry().opposite() : joint.entry());
  }

  private static boolean isDriverBlocked(Reach reach, Joint joint, List<Unit> rest) {
    return reach.driving().lines(joint).isEmpty()
        ? isSpaceTaken(reach, joint, rest)
        : rest.stream()
            .flatMap(unit -> unit.partNames().stream())
            .anyMatch(reach.driving().inTheWay(joint)::contains);
  }

  /**
   * Where no hole tells the lines of the screws, the tool may need all of the space before them.
   */
  private static boolean isSpaceTaken(Reach reach, Joint joint, List<Unit> rest) {
    return joint
        .driven()
        .map(
            driven -> {
              Box tool = toolSpace(joint, driven.face());
              return rest.stream()
                  .filter(other -> !other.has(joint.first()) && !other.has(joint.second()))
                  .anyMatch(other -> reach.isIn(tool, other));
            })
        .orElse(false);
  }

  private static Box toolSpace(Joint joint, Face face) {
    Length from = joint.contact().at(face);
    return joint.contact().with(face.axis(), new Range(from, from).extended(face.sign(), DRIVER));
  }
}
