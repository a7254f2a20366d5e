package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import storyrod.description.Description.PartEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** A description used as a sub-assembly by another. The pieces are invented. */
class UseTest {
  private static final String TRAY =
      """
      project: Tray
      units: mm
      sizes: {width: 300, depth: 200, height: 60, lip: 5}
      choices: {handle: [none, slot]}
      stock:
        wood: {kind: solid, species: "ash, white", thickness: 10}
      limits:
        - {that: width >= 100, say: a tray narrower than 100 mm holds nothing}
      parts:
        left: {stock: wood, x: 0 to wood.thickness, y: 0 to depth, z: 0 to height, grain: y}
        base:
          stock: wood
          x: left.right to width
          y: 0 to depth
          z: lip to lip + wood.thickness
          grain: x
        grip:
          when: handle = slot
          stock: wood
          x: width - wood.thickness to width
          y: 20 to 120
          z: base.top to height
          grain: y
      joints:
        - dado: {end: base.left, into: left, depth: 3}
        - butt: {end: grip.bottom, to: base}
      cuts:
        - holes: {in: left.left, at: {y: 30, z: 40}, along: y, step: 50, count: 2, diameter: 5, depth: 4}
      """;

  private static final String HEAD =
      """
      project: Rack
      units: mm
      sizes: {gap: 20}
      numbers: {trays: 3}
      stock:
        oak: {kind: solid, species: "oak, red", thickness: 12}
      """;

  private static final Library LIBRARY =
      (path, from) ->
          Optional.ofNullable(
                  Map.of(
                          "tray.yaml",
                          TRAY,
                          "stack.yaml",
                          "project: Stack\nunits: mm\nassemblies: {one: {use: tray.yaml},"
                              + " other: {use: tray.yaml, in: {z: one.top}}}",
                          "loop.yaml",
                          "assemblies: {again: {use: loop.yaml}}")
                      .get(path))
              .map(text -> Library.Found.of(new SourceText(path, text)))
              .orElseGet(() -> Library.Found.none("there is no file '" + path + "'", "write it"));

  private static Optional<Description> read(String text, Optional<String> option, Diagnostics to) {
    IntPredicate all = codePoint -> true;
    return new DescriptionReader(TestVocabulary.ALL, all, LIBRARY)
        .read(new SourceText("rack.yaml", text), option, to);
  }

  private static Description described(String body) {
    return described(body, Optional.empty());
  }

  private static Description described(String body, Optional<String> option) {
    Diagnostics faults = new Diagnostics();
    return read(HEAD + body, option, faults)
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(faults.sorted())));
  }

  private static List<Diagnostic> faults(String body) {
    Diagnostics faults = new Diagnostics();
    read(HEAD + body, Optional.empty(), faults);
    return faults.sorted();
  }

  private static String extent(Description description, String part) {
    PartEntry entry = description.part(part).orElseThrow();
    return mm(entry.x().value()) + " " + mm(entry.y().value()) + " " + mm(entry.z().value());
  }

  private static String mm(Range range) {
    return "%s-%s".formatted(plain(range.from()), plain(range.to()));
  }

  private static String plain(Length length) {
    return length.toMmExact().stripTrailingZeros().toPlainString();
  }

  @Test
  void whereAllPartsComeFromWhatIsUsedNoStockIsNeeded() {
    Diagnostics faults = new Diagnostics();
    Description stacks =
        read(
                "project: Stacks\nunits: mm\nassemblies: {stack: {use: stack.yaml}}",
                Optional.empty(),
                faults)
            .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(faults.sorted())));
    assertEquals(List.of("wood"), List.copyOf(stacks.stock().keySet()));
    assertEquals("0-10 0-200 60-120", extent(stacks, "stack.other.left"));
  }

  @Test
  void placeGivesExtentAndOrigin() {
    Description rack =
        described("assemblies: {tray: {use: tray.yaml, in: {x: 100 to 500, y: 50, z: 7}}}");
    assertEquals("100-110 50-250 7-67", extent(rack, "tray.left"));
    assertEquals("110-500 50-250 12-22", extent(rack, "tray.base"));
    assertEquals(List.of("tray.left", "tray.base"), rack.assemblies().get("tray").parts());
  }

  @Test
  void quarterTurnTakesFacesAxesAndPlacesAlong() {
    Description rack =
        described(
            "assemblies: {tray: {use: tray.yaml, in: {x: 0 to 200, y: 0 to 300},"
                + " turn: {about: z, by: 90}}}");
    assertEquals("0-200 0-10 0-60", extent(rack, "tray.left"));
    assertEquals(Axis.X, rack.part("tray.left").orElseThrow().grain().value());
    Entry dado = rack.joints().getFirst();
    assertEquals(new FaceRef("tray.base", Face.FRONT), dado.face("end"));
    Entry holes = rack.cuts().getFirst();
    assertEquals(Axis.X, holes.expect("along", Axis.class));
    assertEquals(Length.mm(-50), holes.length("step"));
    assertEquals(Optional.of(Length.mm(170)), holes.expect("at", PointAt.class).x());
  }

  @Test
  void mirrorImageSwapsTheSidesInItsPlace() {
    Description rack =
        described("assemblies: {tray: {use: tray.yaml, in: {x: 100 to 400}, mirror: x}}");
    assertEquals("390-400 0-200 0-60", extent(rack, "tray.left"));
    assertEquals("100-390 0-200 5-15", extent(rack, "tray.base"));
    assertEquals(new FaceRef("tray.base", Face.RIGHT), rack.joints().getFirst().face("end"));
  }

  @Test
  void facesOfPartsAndOfTheWholeAreNamesOutside() {
    Description rack =
        described(
            """
            assemblies:
              tray: {use: tray.yaml, in: {x: 100 to 400}, mirror: x}
            parts:
              post:
                stock: oak
                x: tray.base.left - oak.thickness to tray.base.left
                y: tray.back to tray.back + 40
                z: 0 to tray.top + gap
                grain: z
            """);
    assertEquals("88-100 200-240 0-80", extent(rack, "post"));
  }

  @Test
  void valuesChoicesAndStockAreGiven() {
    Description rack =
        described(
            "assemblies: {tray: {use: tray.yaml,"
                + " with: {lip: gap, handle: slot, wood: oak, depth: 150}}}");
    assertEquals("12-300 0-150 20-32", extent(rack, "tray.base"));
    assertEquals("oak", rack.part("tray.grip").orElseThrow().stock().value());
    assertEquals(2, rack.joints().size());
    assertEquals(List.of("oak"), List.copyOf(rack.stock().keySet()));
  }

  @Test
  void whatIsLeftOutTakesItsJointsAlong() {
    Description rack = described("assemblies: {tray: {use: tray.yaml}}");
    assertTrue(rack.part("tray.grip").isEmpty());
    assertEquals(1, rack.joints().size());
    assertEquals(List.of("oak", "wood"), List.copyOf(rack.stock().keySet()));
  }

  @Test
  void repeatedTraysGrowByAStep() {
    Description rack =
        described(
            """
            assemblies:
              tray:
                use: tray.yaml
                repeat: {count: trays, along: z, over: 0 to 320, gap: 10, shorter-by: 20}
                in: {z: each.bottom to each.top}
            """);
    // 320 = 3 h - 20 - 40 + 2 * 10, so h = 120: then 100, then 80
    assertEquals("0-10 0-200 0-120", extent(rack, "tray-1.left"));
    assertEquals("0-10 0-200 130-230", extent(rack, "tray-2.left"));
    assertEquals("0-10 0-200 240-320", extent(rack, "tray-3.left"));
    assertEquals(List.of("oak", "wood"), List.copyOf(rack.stock().keySet()));
  }

  @Test
  void jointOfARepeatedPartStandsForEachOfThem() {
    Description rack =
        described(
            """
            parts:
              side: {stock: oak, x: 0 to 12, y: 0 to 100, z: 0 to 400, grain: z}
              shelf:
                stock: oak
                repeat: {count: 3, along: z, over: 0 to 400, size: oak.thickness}
                x: side.right to 300
                y: 0 to 100
                z: each.bottom to each.top
                grain: x
            joints:
              - dado: {end: shelf.left, into: side, depth: 4}
            """);
    assertEquals("12-300 0-100 91-103", extent(rack, "shelf-1"));
    assertEquals(
        List.of("shelf-1", "shelf-2", "shelf-3"),
        rack.joints().stream().map(joint -> joint.face("end").part()).toList());
  }

  @Test
  void equalCentresStepOn() {
    Description rack =
        described(
            """
            parts:
              slat:
                stock: oak
                repeat: {count: 2, along: x, first: 10, step: 60, size: 40}
                x: each.left to each.right
                y: 0 to 12
                z: 0 to 100 * nth
                grain: z
            """);
    assertEquals("10-50 0-12 0-100", extent(rack, "slat-1"));
    assertEquals("70-110 0-12 0-200", extent(rack, "slat-2"));
  }

  @Test
  void optionChangesSizesAndStock() {
    String body =
        """
        options:
          thin: {say: thinner boards, sizes: {gap: 30}, stock: {oak: {thickness: 9}}}
        parts:
          board: {stock: oak, x: gap to 200, y: 0 to 50, z: 0 to oak.thickness, grain: x}
        """;
    assertEquals("20-200 0-50 0-12", extent(described(body), "board"));
    assertEquals("30-200 0-50 0-9", extent(described(body, Optional.of("thin")), "board"));
    assertEquals(Map.of("thin", "thinner boards"), described(body).options());
  }

  @Test
  void valueMayDependOnACondition() {
    Description rack =
        described(
            """
            choices: {style: [plain, heavy]}
            parts:
              board:
                stock: oak
                x: 0 to (100 when style = heavy else 80)
                y: 0 to (30 when gap > 10 and not gap > 20 else 40)
                z: 0 to oak.thickness
                grain: x
            """);
    assertEquals("0-80 0-30 0-12", extent(rack, "board"));
  }

  @Test
  void eachBayKnowsTheWallsBesideIt() {
    Description rack =
        described(
            """
            parts:
              side: {stock: oak, x: 0 to 12, y: 0 to 100, z: 0 to 400, grain: z}
              end: {stock: oak, x: 600 to 612, y: 0 to 100, z: 0 to 400, grain: z}
              post:
                stock: oak
                repeat: {count: 2, along: x, over: side.right to end.left, size: oak.thickness}
                x: each.left to each.right
                y: 0 to 100
                z: 0 to 400
                grain: z
            assemblies:
              bay:
                unit: no
                repeat:
                  count: 3
                  along: x
                  over: side.right to end.left
                  gap: oak.thickness
                  beside: {left-wall: [side, post], right-wall: [post, end]}
                parts:
                  shelf:
                    stock: oak
                    x: left-wall.right to right-wall.left
                    y: 0 to 100
                    z: 100 to 100 + oak.thickness
                    grain: x
                joints:
                  - dado: {end: shelf.left, into: left-wall, depth: 4}
                  - dado: {end: shelf.right, into: right-wall, depth: 4}
            """);
    assertEquals("212-400 0-100 100-112", extent(rack, "bay-2.shelf"));
    assertEquals(
        List.of("side", "post-1", "post-1", "post-2", "post-2", "end"),
        rack.joints().stream().map(joint -> joint.text("into")).toList());
    assertTrue(rack.assemblies().isEmpty());
  }

  @Test
  void jointToTheOneAfterStopsAtTheLast() {
    Description rack =
        described(
            """
            parts:
              stave:
                stock: oak
                repeat: {count: 4, along: y, over: 0 to 400}
                x: 0 to 900
                y: each.front to each.back
                z: 0 to oak.thickness
                grain: x
            joints:
              - butt: {end: stave.back, to: after}
            """);
    assertEquals(
        List.of("stave-1 stave-2", "stave-2 stave-3", "stave-3 stave-4"),
        rack.joints().stream()
            .map(joint -> joint.face("end").part() + " " + joint.text("to"))
            .toList());
  }

  @Test
  void usedDescriptionIsJoinedToPartsThatItIsGiven() {
    String hook =
        """
        project: Hook
        units: mm
        meets: {wall: what it hangs on}
        stock:
          wood: {kind: solid, species: "ash, white", thickness: 10}
        parts:
          board: {stock: wood, x: 0 to 10, y: 0 to 50, z: 0 to 90, grain: z}
        joints:
          - butt: {end: board.left, to: wall}
        """;
    Library library = (path, from) -> Library.Found.of(new SourceText(path, hook));
    String body =
        HEAD
            + """
            parts:
              post: {stock: oak, x: 0 to 12, y: 0 to 50, z: 0 to 90, grain: z}
            assemblies:
              hook: {use: hook.yaml, in: {x: post.right}, with: {wall: post}}
              spare: {use: hook.yaml, in: {x: 300}}
            """;
    Description rack =
        new DescriptionReader(TestVocabulary.ALL, codePoint -> true, library)
            .read(new SourceText("rack.yaml", body), new Diagnostics())
            .orElseThrow();
    assertEquals(1, rack.joints().size());
    assertEquals("post", rack.joints().getFirst().text("to"));
  }

  @Test
  void faultInsideTellsHowItCameToBeUsed() {
    List<Diagnostic> faults = faults("assemblies:\n  tray: {use: tray.yaml, in: {x: 0 to 50}}\n");
    assertEquals(1, faults.size());
    String printed = DiagnosticPrinter.print(faults.getFirst());
    assertTrue(printed.startsWith("tray.yaml:8:12: error: a tray narrower than"), printed);
    assertTrue(printed.contains("in use: tray.yaml, line 8, from rack.yaml:8"), printed);
  }

  @Test
  void descriptionThatUsesItselfIsRefused() {
    List<Diagnostic> faults = faults("assemblies: {loop: {use: loop.yaml}}");
    assertTrue(
        faults.stream().anyMatch(fault -> fault.message().contains("loop.yaml -> loop.yaml")),
        () -> DiagnosticPrinter.print(faults));
  }
}
