package storyrod.description;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** A part is as thick as its stock on one axis, and that axis is not its length. */
final class ThicknessCheck {
  private static final String CODE = "no-thickness";

  private final Context context;
  private final Map<String, Length> thickness;
  private final Collection<String> solid;

  /**
   * A check against what is known of the stock.
   *
   * @param solid the names of the stocks that are boards
   */
  ThicknessCheck(Context context, Map<String, Length> thickness, Collection<String> solid) {
    this.context = context;
    this.thickness = thickness;
    this.solid = solid;
  }

  /** Checks a part of which everything that this needs could be read. */
  void check(String name, Entry part) {
    boolean complete =
        List.of("x", "y", "z", "stock", "grain").stream().allMatch(part::has)
            && thickness.containsKey(part.text("stock"));
    if (complete) {
      matching(name, part);
    }
  }

  private void matching(String name, Entry part) {
    Length wanted = thickness.get(part.text("stock"));
    List<Axis> fitting =
        Arrays.stream(Axis.values()).filter(axis -> size(part, axis).equals(wanted)).toList();
    Axis grain = part.expect("grain", Axis.class);
    if (fitting.isEmpty()) {
      add(none(name, part));
    } else if (fitting.size() > 1 && !isSquare(part, fitting, grain)) {
      add(several(name, part, fitting));
    } else if (fitting.getFirst() == grain) {
      add(alongGrain(name, part, grain));
    }
  }

  /** Whether a solid part is as wide as thick, as a square leg is: then either will do. */
  private boolean isSquare(Entry part, List<Axis> fitting, Axis grain) {
    return solid.contains(part.text("stock")) && fitting.size() == 2 && !fitting.contains(grain);
  }

  private static Length size(Entry part, Axis axis) {
    return part.expect(axis.word(), Range.class).length();
  }

  private Diagnostic none(String name, Entry part) {
    String stock = part.text("stock");
    return error(
            part.at(), "no size of '" + name + "' is the thickness of its stock: " + sizes(part))
        .also(part.at("stock"), stockPlace(part))
        .hint(
            "let it run over `"
                + stock
                + ".thickness` on one axis: `x: 0 to "
                + stock
                + ".thickness`");
  }

  private Diagnostic several(String name, Entry part, List<Axis> fitting) {
    String axes = fitting.stream().map(Axis::word).collect(Collectors.joining(" and "));
    return error(
            part.at(), "'" + name + "' is as thick as its stock on " + axes + ": " + sizes(part))
        .also(part.at("stock"), stockPlace(part))
        .hint("change one of these sizes, or cut it from a stock of another thickness");
  }

  private Diagnostic alongGrain(String name, Entry part, Axis grain) {
    return error(
            part.at("grain"),
            "the grain of '"
                + name
                + "' runs through its thickness on "
                + grain.word()
                + ": "
                + sizes(part))
        .also(part.at("stock"), stockPlace(part))
        .hint("let the grain run along the part's length");
  }

  private String sizes(Entry part) {
    String sizes =
        Arrays.stream(Axis.values())
            .map(axis -> axis.word() + " " + context.figures().of(size(part, axis)))
            .collect(Collectors.joining(", "));
    return sizes + "; '" + part.text("stock") + "' is " + stockThickness(part);
  }

  private String stockThickness(Entry part) {
    return context.figures().of(thickness.get(part.text("stock")));
  }

  private String stockPlace(Entry part) {
    return "'" + part.text("stock") + "' is " + stockThickness(part) + " thick";
  }

  private static Diagnostic error(Span at, String message) {
    return Diagnostic.error(CODE, at, message);
  }

  private void add(Diagnostic diagnostic) {
    context.diagnostics().add(diagnostic);
  }
}
