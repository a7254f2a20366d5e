package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Whatever a hand slips on, in a description or in one that it uses, the reader answers with a
 * description or with an error. The pieces are invented.
 */
class UseFuzzTest {
  private static final int TRIES = Integer.getInteger("fuzz.tries", 300);
  private static final String USED =
      """
      project: Box
      units: mm
      sizes: {width: 300, depth: 200, height: 60, lip: 5}
      numbers: {dividers: 1}
      choices: {lid: [none, flat]}
      meets: {wall: what it stands beside}
      stock:
        wood: {kind: solid, species: "ash, white", thickness: 10}
      items:
        pin: {kind: shelf-pin, diameter: 5}
      limits:
        - {that: width >= 100 and not depth < 50, say: a box this small holds nothing}
      parts:
        left: {stock: wood, x: 0 to wood.thickness, y: 0 to depth, z: 0 to height, grain: y}
        base: {stock: wood, x: left.right to width, y: 0 to depth, z: lip to lip + wood.thickness, grain: x}
        divider:
          stock: wood
          repeat: {count: dividers, along: x, over: left.right to width, size: wood.thickness}
          x: each.left to each.right
          y: 0 to depth
          z: base.top to height - pin.diameter
          grain: y
        cover: {when: lid = flat, stock: wood, x: 0 to width, y: 0 to depth, z: height to height + wood.thickness, grain: x}
      joints:
        - dado: {end: base.left, into: left, depth: 3}
        - butt: {end: divider.bottom, to: base}
        - butt: {end: left.left, to: wall, when: width > 100}
      """;
  private static final String USING =
      """
      project: Rack
      units: mm
      sizes: {gap: 20, wide: 400}
      numbers: {boxes: 3}
      choices: {style: [plain, rich]}
      stock:
        oak: {kind: solid, species: "oak, red", thickness: 12}
      options:
        thin: {say: thinner, sizes: {gap: 15}, stock: {oak: {thickness: 9}}}
      parts:
        post: {stock: oak, x: 0 to oak.thickness, y: 0 to 200, z: 0 to 600, grain: z}
      assemblies:
        box:
          use: box.yaml
          repeat: {count: boxes, along: z, over: 0 to 560, gap: gap, shorter-by: 20}
          in: {x: post.right to post.right + wide, y: 0 to 200, z: each.bottom to each.top}
          with: {lid: flat, wall: post, wood: oak, dividers: 2 when style = rich else 1}
        spare:
          use: box.yaml
          in: {x: box-1.right + gap, y: 0}
          turn: {about: z, by: 90}
          mirror: x
        shelves:
          unit: no
          parts:
            slat:
              stock: oak
              repeat: {count: 3, along: y, first: 0, step: 70, size: 60}
              x: spare.right to spare.right + 300
              y: each.front to each.back
              z: 0 to oak.thickness
              grain: x
          joints:
            - butt: {end: slat.back, to: after}
      joints:
        - butt: {end: box.base.right, to: box.left}
      build:
        - stage: Boxes
          order: [fit box, fit spare]
          say: {box: Look at it twice.}
      """;
  private static final List<String> WORDS =
      List.of("0", "3", "each", "nth", "box", "after", "left", "x", "when", "{", "}", "none", "-");

  @Test
  void slipInTheDescription() {
    Random random = new Random(5);
    for (int i = 0; i < TRIES; i++) {
      check(slipped(USING, random), USED);
    }
  }

  @Test
  void slipInWhatIsUsed() {
    Random random = new Random(6);
    for (int i = 0; i < TRIES; i++) {
      check(USING, slipped(USED, random));
    }
  }

  @Test
  void withoutASlipItIsRead() {
    Diagnostics diagnostics = new Diagnostics();
    Optional<Description> read = read(USING, USED, diagnostics);
    assertTrue(read.isPresent(), DiagnosticPrinter.print(diagnostics.sorted()));
  }

  private static String slipped(String text, Random random) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n")));
    int at = random.nextInt(lines.size());
    switch (random.nextInt(5)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(random.nextInt(lines.size()), lines.get(at));
      case 2 -> lines.set(at, exchanged(lines.get(at), random));
      case 3 -> lines.set(at, lines.get(at).replaceFirst("\\d+", "" + random.nextInt(2000)));
      default -> lines.set(at, lines.get(random.nextInt(lines.size())));
    }
    return String.join("\n", lines);
  }

  private static String exchanged(String line, Random random) {
    List<String> words = new ArrayList<>(Arrays.asList(line.split("(?<=[ :.,])|(?=[ :.,])")));
    words.set(random.nextInt(words.size()), WORDS.get(random.nextInt(WORDS.size())));
    return String.join("", words);
  }

  private static Optional<Description> read(String using, String used, Diagnostics diagnostics) {
    Library library = (path, from) -> Library.Found.of(new SourceText(path, used));
    return new DescriptionReader(TestVocabulary.ALL, codePoint -> true, library)
        .read(new SourceText("rack.yaml", using), diagnostics);
  }

  private static void check(String using, String used) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<Description> description = read(using, used, diagnostics);
    assertEquals(description.isEmpty(), diagnostics.hasErrors(), using + used);
    assertTrue(!DiagnosticPrinter.print(diagnostics.sorted()).contains("follow-up"), using + used);
  }
}
