package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.cli.Pipeline;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.PlanSet;
import storyrod.planset.PrintedDrawings;

/** Parts of which little or nothing is left: told as an error, or drawn cleanly; never broken. */
class DegenerateDrawingTest {
  private static final String HEAD =
      """
      project: Degenerate
      units: mm
      stock:
        oak: {kind: solid, species: "oak, northern red", thickness: 20}
      parts:
        side: {stock: oak, x: 0 to 20, y: 0 to 300, z: 0 to 600, grain: z}
      """;
  private static final String CUT = "cuts:\n  - ";
  private static final String HOLE = CUT + "holes: {in: side.right, diameter: 8, ";
  private static final String JOINED =
      "  shelf: {stock: oak, x: 20 to 420, y: 0 to 300, z: 200 to 220, grain: x}\njoints:\n  - ";
  private static final String GRAIN = ", grain: z}\n";

  /** What is added to a side of 20 by 300 by 600, and the error that it gives. */
  static Stream<Arguments> bad() {
    return Stream.of(
        with(CUT + "notch: {in: side, y: 0 to 300, z: 0 to 600}", "cut-place"),
        with(CUT + "cutout: {in: side, y: 0 to 100, z: 50 to 100}", "cut-place"),
        with(CUT + "cutout: {in: side, y: 0 to 300, z: 0 to 600}", "cut-place"),
        with(HOLE + "depth: 20, at: {y: 40, z: 200}}", "cut-too-deep"),
        with(
            twice("holes: {in: side.right, at: {y: 40, z: 9}, diameter: 8, depth: 9}"),
            "hole-edge"),
        with(CUT + "taper: {end: side.bottom, faces: [back], from: 300, off: 300}", "taper-off"),
        with("  same: {stock: oak, x: 0 to 20, y: 0 to 300, z: 0 to 600" + GRAIN, "parts-overlap"),
        with("  inner: {stock: oak, x: 0 to 20, y: 9 to 99, z: 9 to 99" + GRAIN, "parts-overlap"),
        with("  across: {stock: oak, x: 0 to 20, y: 0 to 300, z: 9 to 99" + GRAIN, "parts-overlap"),
        with("  none: {stock: oak, x: 20 to 20, y: 0 to 300, z: 0 to 600" + GRAIN, "range"),
        with("  none: {stock: oak, x: 20 to 40, y: 5 to 5, z: 0 to 600" + GRAIN, "range"),
        with("  speck: {stock: oak, x: 20 to 40, y: 0 to 0.0001, z: 0 to 0.0001" + GRAIN, "range"),
        with(CUT + "notch: {in: side, y: 0 to 0.0001, z: 0 to 600}", "range"),
        with(JOINED + "dado: {end: shelf.left, into: side, depth: 20}", "cut-too-deep"),
        with(JOINED + "dado: {end: shelf.left, into: side, depth: 0}", "not-positive"),
        with(JOINED + "rabbet: {end: shelf.left, into: side, depth: 20}", "cut-too-deep"));
  }

  private static Arguments with(String more, String code) {
    return Arguments.of(more, code);
  }

  @ParameterizedTest
  @MethodSource("bad")
  void isRefused(String more, String code) {
    Diagnostics diagnostics = new Diagnostics();
    SourceText source = new SourceText("degenerate.yaml", HEAD + more);
    assertEquals(Optional.empty(), Pipeline.planSet(source, diagnostics));
    assertTrue(codes(diagnostics).contains(code), diagnostics.sorted().toString());
  }

  private static List<String> codes(Diagnostics diagnostics) {
    return diagnostics.sorted().stream().map(Diagnostic::code).toList();
  }

  /** What may be added, though little is left or hardly touches; and the warning, if any. */
  static Stream<Arguments> odd() {
    return Stream.of(
        with(CUT + "notch: {in: side, y: 0 to 300, z: 0 to 599}", ""),
        with(CUT + "notch: {in: side, y: 0 to 299, z: 0 to 600}", ""),
        with(CUT + "notch: {in: side, y: 0 to 300, z: 200 to 400}", ""),
        with(twice("notch: {in: side, y: 0 to 50, z: 0 to 50}"), ""),
        with(twice("cutout: {in: side, y: 50 to 99, z: 50 to 99}"), ""),
        with(
            pair("notch: {in: side, y: 0 to 50, z: 0 to 50}", "notch", "50 to 99, z: 0 to 50"), ""),
        with(
            pair("notch: {in: side, y: 0 to 50, z: 0 to 50}", "cutout", "50 to 99, z: 50 to 99"),
            ""),
        with(
            pair("cutout: {in: side, y: 9 to 50, z: 9 to 50}", "cutout", "50 to 99, z: 9 to 50"),
            ""),
        with(
            pair("cutout: {in: side, y: 9 to 50, z: 9 to 50}", "cutout", "50 to 99, z: 50 to 99"),
            ""),
        with(CUT + "cutout: {in: side, y: 0.01 to 299.99, z: 0.01 to 599.99}", ""),
        with(HOLE + "depth: 19.99, at: {y: 40, z: 200}}", ""),
        with(HOLE + "depth: 10, at: {y: 0, z: 200}}", "hole-edge"),
        with(HOLE + "depth: 10, at: {y: 4, z: 200}}", "hole-edge"),
        with(HOLE + "depth: 10, at: {y: 4.01, z: 200}}", "hole-edge"),
        with(HOLE + "through: yes, at: {y: 300, z: 600}}", "hole-edge"),
        with(HOLE.replace("8", "400") + "through: yes, at: {y: 150, z: 300}}", "hole-edge"),
        with(CUT + "taper: {end: side.bottom, faces: [back], from: 595, off: 299.9}", ""),
        with("  thin: {stock: oak, x: 20 to 40, y: 5 to 5.01, z: 0 to 600" + GRAIN, "loose-part"),
        with(CUT + "notch: {in: side, y: 0 to 300, z: 0 to 599.9999}", ""),
        with("  dust: {stock: oak, x: 20 to 40, y: 0 to 1, z: 0 to 1" + GRAIN, "loose-part"),
        with("  flush: {stock: oak, x: 20 to 40, y: 0 to 300, z: 0 to 600" + GRAIN, "loose-part"),
        with("  far: {stock: oak, x: 20 to 40, y: 300 to 600, z: 600 to 900" + GRAIN, "loose-part"),
        with(JOINED + "dado: {end: shelf.left, into: side, depth: 19.99}", "dado-depth"));
  }

  private static String twice(String cut) {
    return CUT + cut + "\n  - " + cut;
  }

  private static String pair(String cut, String other, String place) {
    return CUT + cut + "\n  - " + other + ": {in: side, y: " + place + "}";
  }

  @ParameterizedTest
  @MethodSource("odd")
  void isDrawnCleanly(String more, String code) {
    Diagnostics diagnostics = new Diagnostics();
    SourceText source = new SourceText("degenerate.yaml", HEAD + more);
    PlanSet set = Pipeline.planSet(source, diagnostics).orElseThrow();
    assertTrue(code.isEmpty() || codes(diagnostics).contains(code), codes(diagnostics).toString());
    PrintedDrawings.of(set).forEach((name, it) -> assertEquals(List.of(), faults(it), name));
  }

  /** What {@link CleanDrawingsTest} asks of every drawing, and that every number is one. */
  private static List<String> faults(Drawing drawing) {
    List<String> faults = new ArrayList<>(Clean.textFaults(drawing));
    faults.addAll(Covered.textsOnLines(drawing));
    faults.addAll(Clean.linesOutside(drawing));
    faults.addAll(Leaders.crossings(drawing));
    faults.addAll(Leaders.overDimensions(drawing));
    faults.addAll(Arrowheads.overlaps(drawing));
    DimensionLines.assertKeepDistance(Clean.dimensions(drawing));
    if (drawing.toString().matches("(?s).*(NaN|Infinity).*")) {
      faults.add("a place that is none");
    }
    return faults;
  }
}
