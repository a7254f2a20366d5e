package storyrod.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import storyrod.check.Check;
import storyrod.check.Checks;
import storyrod.description.Description;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/**
 * Times all checks of a piece of 200 parts, warm, and the slowest of them: a wall of cabinets, each
 * with a drawer on slides, a door on hinges and holes for shelf pins. Each round checks a piece
 * that was built anew, so that nothing it keeps is there already.
 */
final class CheckBenchmark {
  private static final int CABINETS = 20;
  static final int PARTS_EACH = 10;
  private static final int ROUNDS = 9;
  private static final int SLOWEST = 8;

  private CheckBenchmark() {}

  private record Timed(String code, double ms) {}

  /** Prints the median of all checks together and of each of the slowest. */
  static void run() {
    Description description = description(CABINETS);
    System.out.printf(Locale.ROOT, "%n%-24s %8s%n", "checks of 200 parts", "ms");
    print(new Timed("all", median(description, piece -> Checks.run(piece, new Diagnostics()))));
    List<Timed> times = new ArrayList<>();
    for (Check check : Checks.ALL) {
      times.add(new Timed(check.code(), median(description, check::findings)));
    }
    times.stream()
        .sorted(Comparator.comparingDouble(Timed::ms).reversed())
        .limit(SLOWEST)
        .forEach(CheckBenchmark::print);
  }

  private static void print(Timed timed) {
    System.out.printf(Locale.ROOT, "%-24s %8.1f%n", timed.code(), timed.ms());
  }

  private static double median(Description description, Consumer<Piece> work) {
    double[] millis = new double[ROUNDS];
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      Piece piece = PieceBuilder.build(description, new Diagnostics()).orElseThrow();
      long start = System.nanoTime();
      work.accept(piece);
      millis[Math.max(0, round)] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(millis);
    return millis[ROUNDS / 2];
  }

  /** A wall of so many cabinets, of ten parts each. */
  static Description description(int cabinets) {
    Diagnostics diagnostics = new Diagnostics();
    Description description =
        Pipeline.reader()
            .read(new SourceText("wall.yaml", text(cabinets)), diagnostics)
            .orElseThrow(() -> new IllegalStateException("bug: " + diagnostics.sorted()));
    if (description.parts().size() != PARTS_EACH * cabinets) {
      throw new IllegalStateException("bug: read " + description.parts().size() + " parts");
    }
    return description;
  }

  private static String text(int cabinets) {
    StringBuilder parts = new StringBuilder();
    StringBuilder drawers = new StringBuilder();
    StringBuilder joints = new StringBuilder();
    StringBuilder cuts = new StringBuilder();
    StringBuilder hardware = new StringBuilder();
    for (int i = 0; i < cabinets; i++) {
      String left = Integer.toString(600 * i);
      parts.append(PARTS_OF_ONE.replace("%", Integer.toString(i)).replace("LEFT", left));
      drawers.append(DRAWER_OF_ONE.replace("%", Integer.toString(i)).replace("LEFT", left));
      joints.append(JOINTS_OF_ONE.replace("%", Integer.toString(i)));
      cuts.append(CUTS_OF_ONE.replace("%", Integer.toString(i)));
      hardware.append(HARDWARE_OF_ONE.replace("%", Integer.toString(i)));
      if (i > 0) {
        joints.append(
            "  - butt: {end: left-%d.left, to: right-%d, glue: yes}\n".formatted(i, i - 1));
      }
    }
    return HEAD
        + "parts:\n"
        + parts
        + "assemblies:\n"
        + drawers
        + "joints:\n"
        + joints
        + "cuts:\n"
        + cuts
        + "hardware:\n"
        + hardware;
  }

  private static final String HEAD =
      """
      project: Wall
      units: mm
      stock:
        ply: {kind: sheet, species: birch plywood, thickness: 18, sheet: 2440 x 1220}
        oak: {kind: solid, species: "oak, northern red", thickness: 20}
      items:
        runner: {kind: slide, length: 450, side-clearance: 13}
        hinge: {kind: concealed-hinge}
        pin: {kind: shelf-pin, diameter: 5}
      """;
  private static final String PARTS_OF_ONE =
      """
        left-%: {stock: ply, x: LEFT to LEFT + 18, y: 0 to 500, z: 0 to 800, grain: z}
        right-%: {stock: ply, x: LEFT + 582 to LEFT + 600, y: 0 to 500, z: 0 to 800, grain: z}
        floor-%: {stock: ply, x: left-%.right to right-%.left, y: 0 to 500, z: 60 to 78, grain: x}
        middle-%: {stock: ply, x: left-%.right to right-%.left, y: 0 to 500, z: 560 to 578, grain: x}
        rail-%: {stock: oak, x: left-%.right to right-%.left, y: 0 to 20, z: 760 to 800, grain: x}
        door-%: {stock: oak, x: left-%.right + 2 to right-%.left - 2, y: 0 to 20, z: floor-%.top + 2 to middle-%.bottom - 2, grain: z}
      """;
  private static final String DRAWER_OF_ONE =
      """
        drawer-%:
          parts:
            left: {stock: ply, x: LEFT + 31 to LEFT + 49, y: 0 to 460, z: 590 to 740, grain: y}
            right: {stock: ply, x: LEFT + 551 to LEFT + 569, y: 0 to 460, z: 590 to 740, grain: y}
            front: {stock: ply, x: left.right to right.left, y: 0 to 18, z: 590 to 740, grain: x}
            back: {stock: ply, x: left.right to right.left, y: 442 to 460, z: 590 to 740, grain: x}
          joints:
            - rabbet: {end: front.left, into: left, depth: 9, glue: yes}
            - rabbet: {end: front.right, into: right, depth: 9, glue: yes}
            - rabbet: {end: back.left, into: left, depth: 9, glue: yes}
            - rabbet: {end: back.right, into: right, depth: 9, glue: yes}
      """;
  private static final String JOINTS_OF_ONE =
      """
        - dado: {end: floor-%.left, into: left-%, depth: 6, glue: yes}
        - dado: {end: floor-%.right, into: right-%, depth: 6, glue: yes}
        - dado: {end: middle-%.left, into: left-%, depth: 6, glue: yes}
        - dado: {end: middle-%.right, into: right-%, depth: 6, glue: yes}
        - butt: {end: rail-%.left, to: left-%, glue: yes}
        - butt: {end: rail-%.right, to: right-%, glue: yes}
      """;
  private static final String CUTS_OF_ONE =
      """
        - holes: {in: [left-%.right, right-%.left], at: {y: 60, z: 200}, along: z, step: 32, count: 8, diameter: 5, depth: 10, for: pin}
        - holes: {in: [left-%.right, right-%.left], at: {y: 440, z: 200}, along: z, step: 32, count: 8, diameter: 5, depth: 10, for: pin}
      """;
  private static final String HARDWARE_OF_ONE =
      """
        - {item: runner, parts: [drawer-%.left, drawer-%.right, left-%, right-%]}
        - {item: hinge, count: 2, parts: [door-%, left-%]}
      """;
}
