package storyrod.cli;

import java.util.Arrays;
import java.util.Locale;
import storyrod.description.Description;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostics;
import storyrod.description.Library;
import storyrod.description.SourceText;

/**
 * Times the reading of ever larger descriptions, warm: half of the parts stand in the description
 * itself, each placed by the one before it, half come in boxes of five by {@code use:}.
 */
final class ReadingBenchmark {
  private static final int[] PARTS = {50, 500, 5000};
  private static final int ROUNDS = 9;
  private static final String BOX =
      """
      project: Box
      units: inch
      sizes: {width: 12, depth: 10, height: 4}
      stock:
        wood: {kind: solid, species: "ash, white", thickness: 1/2}
      parts:
        left: {stock: wood, x: 0 to wood.thickness, y: 0 to depth, z: 0 to height, grain: y}
        right: {stock: wood, x: width - wood.thickness to width, y: 0 to depth, z: 0 to height, grain: y}
        front: {stock: wood, x: left.right to right.left, y: 0 to wood.thickness, z: 0 to height, grain: x}
        back: {stock: wood, x: left.right to right.left, y: depth - wood.thickness to depth, z: 0 to height, grain: x}
        base: {stock: wood, x: left.right to right.left, y: front.back to back.front, z: 0 to wood.thickness, grain: x}
      joints:
        - rabbet: {end: front.left, into: left, depth: 1/4, glue: yes}
        - rabbet: {end: front.right, into: right, depth: 1/4, glue: yes}
        - butt: {end: base.front, to: front, glue: yes}
      """;

  private ReadingBenchmark() {}

  /** Prints the median for each size, and how it grows from one size to the next. */
  static void run() {
    System.out.printf(Locale.ROOT, "%n%-12s %8s %14s%n", "parts read", "ms", "µs for a part");
    for (int parts : PARTS) {
      double ms = median(text(parts), parts);
      System.out.printf(Locale.ROOT, "%-12d %8.1f %14.1f%n", parts, ms, 1000 * ms / parts);
    }
  }

  private static double median(String text, int parts) {
    double[] millis = new double[ROUNDS];
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      long start = System.nanoTime();
      Description description = read(text);
      if (description.parts().size() != parts) {
        throw new IllegalStateException("bug: read " + description.parts().size() + " parts");
      }
      millis[Math.max(0, round)] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(millis);
    return millis[ROUNDS / 2];
  }

  private static Description read(String text) {
    Library boxes = (path, from) -> Library.Found.of(new SourceText(path, BOX));
    Diagnostics diagnostics = new Diagnostics();
    return new DescriptionReader(Pipeline.VOCABULARY, codePoint -> true, boxes)
        .read(new SourceText("rack.yaml", text), diagnostics)
        .orElseThrow(() -> new IllegalStateException("bug: " + diagnostics.sorted()));
  }

  private static String text(int parts) {
    StringBuilder text =
        new StringBuilder(
            """
            project: Rack
            units: inch
            stock:
              ash: {kind: solid, species: "ash, white", thickness: 3/4}
            parts:
              slat-0: {stock: ash, x: 0 to 20, y: 0 to 3, z: 0 to ash.thickness, grain: x}
            """);
    for (int i = 1; i < parts / 2; i++) {
      text.append(
          "  slat-%d: {stock: ash, x: 0 to 20, y: 0 to 3, z: slat-%d.top to slat-%d.top + ash.thickness, grain: x}\n"
              .formatted(i, i - 1, i - 1));
    }
    text.append("assemblies:\n");
    for (int i = 0; i < parts / 10; i++) {
      text.append(
          "  box-%d: {use: box.yaml, in: {x: 30 to 50, y: 0 to 12, z: %d to %d}}\n"
              .formatted(i, 6 * i, 6 * i + 5));
    }
    text.append("joints:\n");
    for (int i = 1; i < parts / 2; i++) {
      text.append("  - butt: {end: slat-%d.bottom, to: slat-%d, glue: yes}\n".formatted(i, i - 1));
    }
    return text.toString();
  }
}
