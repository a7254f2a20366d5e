package storyrod.description;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Descriptions that use a small tray, which lies in a library of one file. */
final class Trays {
  static final String TRAY =
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

  static final String HEAD =
      """
      project: Rack
      units: mm
      sizes: {gap: 20}
      numbers: {trays: 3}
      stock:
        oak: {kind: solid, species: "oak, red", thickness: 12}
      """;

  static final Library LIBRARY =
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

  static Optional<Description> read(String text, Optional<String> option, Diagnostics to) {
    IntPredicate all = codePoint -> true;
    return new DescriptionReader(TestVocabulary.ALL, all, LIBRARY)
        .read(new SourceText("rack.yaml", text), option, to);
  }

  static Description described(String body) {
    return described(body, Optional.empty());
  }

  static Description described(String body, Optional<String> option) {
    Diagnostics faults = new Diagnostics();
    return read(HEAD + body, option, faults)
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(faults.sorted())));
  }

  static List<Diagnostic> faults(String body) {
    Diagnostics faults = new Diagnostics();
    read(HEAD + body, Optional.empty(), faults);
    return faults.sorted();
  }

  static String extent(Description description, String part) {
    PartEntry entry = description.part(part).orElseThrow();
    return mm(entry.x().value()) + " " + mm(entry.y().value()) + " " + mm(entry.z().value());
  }

  private static String mm(Range range) {
    return "%s-%s".formatted(plain(range.from()), plain(range.to()));
  }

  private static String plain(Length length) {
    return length.toMmExact().stripTrailingZeros().toPlainString();
  }
}
