package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

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

  @Override
  public String code() {
    return "hinge-count";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A door has two hinges up to 900 mm of height, three to 1600, four to 2000, "
            + "five to 2400.",
        "Common practice, from memory.",
        "It goes by height alone; a heavy or wide door needs more, and the hinge's "
            + "maker says what holds.");
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
            .filter(door -> each < needed(height(nesting.parts(door))))
            .forEach(door -> found.add(finding(piece, entry, nesting.parts(door), each)));
      }
    }
    return found;
  }

  private static int needed(Length height) {
    return NEEDED.floorEntry(height).getValue();
  }

  /** How far a door reaches along its hinged edge: upwards, or for a lid its longer side. */
  private static Length height(List<Part> door) {
    boolean isLid = door.stream().allMatch(part -> part.thickness() == Axis.Z);
    return isLid ? size(door, Axis.X).max(size(door, Axis.Y)) : size(door, Axis.Z);
  }

  private static Length size(List<Part> door, Axis axis) {
    Length from = door.stream().map(p -> p.box().on(axis).from()).reduce(Length::min).orElseThrow();
    Length to = door.stream().map(p -> p.box().on(axis).to()).reduce(Length::max).orElseThrow();
    return to.minus(from);
  }

  private Diagnostic finding(Piece piece, HardwareEntry entry, List<Part> door, int each) {
    Length height = height(door);
    Part first = door.getFirst();
    return Diagnostic.warning(
            code(),
            entry.at(),
            "a door %s high hangs on %d of `%s`, usual are %d"
                .formatted(
                    piece.description().format().formatWithUnit(height),
                    each,
                    entry.item().value(),
                    needed(height)))
        .also(first.at(), "the door is defined here")
        .hint("give it " + needed(height) + " hinges, and more if it is heavy");
  }
}
