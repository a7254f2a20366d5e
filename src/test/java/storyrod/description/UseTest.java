package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** A description used as a sub-assembly by another. The pieces are invented. */
class UseTest {
  @Test
  void whereAllPartsComeFromWhatIsUsedNoStockIsNeeded() {
    Diagnostics faults = new Diagnostics();
    Description stacks =
        Trays.read(
                "project: Stacks\nunits: mm\nassemblies: {stack: {use: stack.yaml}}",
                Optional.empty(),
                faults)
            .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(faults.sorted())));
    assertEquals(List.of("wood"), List.copyOf(stacks.stock().keySet()));
    assertEquals("0-10 0-200 60-120", Trays.extent(stacks, "stack.other.left"));
  }

  @Test
  void placeGivesExtentAndOrigin() {
    Description rack =
        Trays.described("assemblies: {tray: {use: tray.yaml, in: {x: 100 to 500, y: 50, z: 7}}}");
    assertEquals("100-110 50-250 7-67", Trays.extent(rack, "tray.left"));
    assertEquals("110-500 50-250 12-22", Trays.extent(rack, "tray.base"));
    assertEquals(List.of("tray.left", "tray.base"), rack.assemblies().get("tray").parts());
  }

  @Test
  void quarterTurnTakesFacesAxesAndPlacesAlong() {
    Description rack =
        Trays.described(
            "assemblies: {tray: {use: tray.yaml, in: {x: 0 to 200, y: 0 to 300},"
                + " turn: {about: z, by: 90}}}");
    assertEquals("0-200 0-10 0-60", Trays.extent(rack, "tray.left"));
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
        Trays.described("assemblies: {tray: {use: tray.yaml, in: {x: 100 to 400}, mirror: x}}");
    assertEquals("390-400 0-200 0-60", Trays.extent(rack, "tray.left"));
    assertEquals("100-390 0-200 5-15", Trays.extent(rack, "tray.base"));
    assertEquals(new FaceRef("tray.base", Face.RIGHT), rack.joints().getFirst().face("end"));
  }

  @Test
  void facesOfPartsAndOfTheWholeAreNamesOutside() {
    Description rack =
        Trays.described(
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
    assertEquals("88-100 200-240 0-80", Trays.extent(rack, "post"));
  }

  @Test
  void valuesChoicesAndStockAreGiven() {
    Description rack =
        Trays.described(
            "assemblies: {tray: {use: tray.yaml,"
                + " with: {lip: gap, handle: slot, wood: oak, depth: 150}}}");
    assertEquals("12-300 0-150 20-32", Trays.extent(rack, "tray.base"));
    assertEquals("oak", rack.part("tray.grip").orElseThrow().stock().value());
    assertEquals(2, rack.joints().size());
    assertEquals(List.of("oak"), List.copyOf(rack.stock().keySet()));
  }

  @Test
  void whatIsLeftOutTakesItsJointsAlong() {
    Description rack = Trays.described("assemblies: {tray: {use: tray.yaml}}");
    assertTrue(rack.part("tray.grip").isEmpty());
    assertEquals(1, rack.joints().size());
    assertEquals(List.of("oak", "wood"), List.copyOf(rack.stock().keySet()));
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
    assertEquals("20-200 0-50 0-12", Trays.extent(Trays.described(body), "board"));
    assertEquals(
        "30-200 0-50 0-9", Trays.extent(Trays.described(body, Optional.of("thin")), "board"));
    assertEquals(Map.of("thin", "thinner boards"), Trays.described(body).options());
  }

  @Test
  void valueMayDependOnACondition() {
    Description rack =
        Trays.described(
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
    assertEquals("0-80 0-30 0-12", Trays.extent(rack, "board"));
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
        Trays.HEAD
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
    List<Diagnostic> faults =
        Trays.faults("assemblies:\n  tray: {use: tray.yaml, in: {x: 0 to 50}}\n");
    assertEquals(1, faults.size());
    String printed = DiagnosticPrinter.print(faults.getFirst());
    assertTrue(printed.startsWith("tray.yaml:8:12: error: a tray narrower than"), printed);
    assertTrue(printed.contains("in use: tray.yaml, line 8, from rack.yaml:8"), printed);
  }

  @Test
  void descriptionThatUsesItselfIsRefused() {
    List<Diagnostic> faults = Trays.faults("assemblies: {loop: {use: loop.yaml}}");
    assertTrue(
        faults.stream().anyMatch(fault -> fault.message().contains("loop.yaml -> loop.yaml")),
        () -> DiagnosticPrinter.print(faults));
  }
}
