package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import storyrod.description.Diagnostic;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.wood.Mass;

/** A door that hangs on fewer hinges than doors of its height usually do. */
final class HingeCount implements Check {
  /** From which height on a door needs how many hinges (common practice, from memory). */
  private static final TreeMap<Length, Integer> NEEDED =
      new TreeMap<>(
          Map.of(
              Length.ZERO,
              2,
              Length.mm(900),
              3,
              Length.mm(1600),
              4,
              Length.mm(2000),
              5,
              Length.mm(2400),
              6));

  /** Up to which weight in kg concealed hinges carry a door: 2, 3, 4, 5 of them (from memory). */
  private static final List<Double> KG = List.of(6.0, 12.0, 17.0, 22.0);

  @Override
  public String code() {
    return "hinge-count";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A door has two hinges up to 900 mm of height, three to 1600, four to 2000, five to 2400."
            + " A door on concealed hinges has two up to 6 kg, three to 12, four to 17, five to 22,"
            + " six above that. The larger number holds.",
        "Common practice, from memory; the hinge's maker says what holds.",
        "A door of a wood whose density is unknown goes by its height alone, and so does one on"
            + " butt hinges, of which larger ones carry more. A door wider than high needs more.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    List<Diagnostic> found = new ArrayList<>();
    for (HardwareEntry entry : piece.description().hardware()) {
      ItemEntry item = piece.description().items().get(entry.item().value());
      List<String> served = entry.parts().stream().map(Located::value).toList();
      List<String> doors = nesting.hungBy(served);
      if (item.kind().isHinge() && !doors.isEmpty()) {
        int each = entry.count() / doors.size();
        doors.stream()
            .map(door -> new Door(nesting.parts(door), item.kind()))
            .filter(door -> each < door.needed())
            .forEach(door -> found.add(finding(piece, entry, door, each)));
      }
    }
    return found;
  }

  private record Door(List<Part> parts, ItemKind hinge) {
    int needed() {
      return Math.max(byHeight(), byWeight());
    }

    private int byHeight() {
      return NEEDED.floorEntry(height()).getValue();
    }

    private int byWeight() {
      return kg().filter(mass -> hinge == ItemKind.CONCEALED_HINGE)
          .map(mass -> 2 + (int) KG.stream().filter(most -> mass > most).count())
          .orElse(0);
    }

    boolean isHeavy() {
      return byWeight() > byHeight();
    }

    Optional<Double> kg() {
      double sum = 0;
      for (Part part : parts) {
        Optional<Double> density = Mass.density(part.stock());
        if (density.isEmpty()) {
          return Optional.empty();
        }
        sum += Mass.kg(part.solid().volumeMm3(), density.get());
      }
      return Optional.of(sum);
    }

    /** How far it reaches along its hinged edge: upwards, or for a lid its longer side. */
    Length height() {
      boolean isLid = parts.stream().allMatch(part -> part.thickness() == Axis.Z);
      return isLid ? size(Axis.X).max(size(Axis.Y)) : size(Axis.Z);
    }

    private Length size(Axis axis) {
      return parts.stream()
          .map(part -> part.box().on(axis))
          .reduce(Range::around)
          .map(Range::length)
          .orElseThrow();
    }
  }

  private Diagnostic finding(Piece piece, HardwareEntry entry, Door door, int each) {
    String size =
        door.isHeavy()
            ? String.format(Locale.ROOT, "of %.1f kg", door.kg().orElseThrow())
            : piece.description().format().formatWithUnit(door.height()) + " high";
    return Diagnostic.warning(
            code(),
            entry.at(),
            "a door %s hangs on %d of `%s`, usual are %d"
                .formatted(size, each, entry.item().value(), door.needed()))
        .also(door.parts().getFirst().at(), "the door is defined here")
        .hint(
            door.isHeavy()
                ? "give it %d hinges, or make it lighter or narrower".formatted(door.needed())
                : "give it %d hinges, and more if it is heavy".formatted(door.needed()));
  }
}
