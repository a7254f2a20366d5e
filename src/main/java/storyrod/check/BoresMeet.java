package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slots;

/** Holes for dowels, slots and mortises of one part that run into each other inside it. */
final class BoresMeet implements Check {
  @Override
  public String code() {
    return "bores-meet";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Holes for dowels, slots for biscuits and mortises that are cut from different faces of a"
            + " part stay clear of each other, or what lies in them collides.",
        "Follows from the description.",
        "A hole counts as the box round it. Two plain mortises are the matter of mortises-meet.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream().flatMap(part -> findings(piece, part).stream()).toList();
  }

  private record Bore(Cut cut, Box box) {
    boolean isPlainMortise() {
      return cut instanceof Cut.Trench;
    }
  }

  private List<Diagnostic> findings(Piece piece, Part part) {
    List<Diagnostic> found = new ArrayList<>();
    List<Bore> bores = part.cuts().stream().flatMap(BoresMeet::bores).toList();
    for (int i = 0; i < bores.size(); i++) {
      for (Bore other : bores.subList(i + 1, bores.size())) {
        Bore one = bores.get(i);
        if (isOurs(one, other) && found.stream().noneMatch(f -> f.at().equals(other.cut.at()))) {
          one.box
              .shared(other.box)
              .ifPresent(both -> found.add(meet(piece, part, List.of(one, other), both)));
        }
      }
    }
    return found;
  }

  private static boolean isOurs(Bore one, Bore other) {
    boolean isMortises = one.isPlainMortise() && other.isPlainMortise();
    return !isMortises && one.cut.from() != other.cut.from();
  }

  private static Stream<Bore> bores(Cut cut) {
    if (cut instanceof Slots slots && !slots.through()) {
      return slots.centres().stream().map(at -> new Bore(cut, slots.around(at)));
    }
    if (cut instanceof Cut.Trench trench && trench.term().equals("mortise")) {
      return Stream.of(new Bore(cut, trench.removed()));
    }
    return cut instanceof Cut.Holes holes && holes.term().equals("dowel hole")
        ? holes.centres().stream().map(at -> new Bore(cut, around(holes, at)))
        : Stream.empty();
  }

  private static Box around(Cut.Holes holes, Point centre) {
    Face from = holes.from();
    Length radius = new Length(holes.diameter().ticks() / 2);
    Length mouth = centre.on(from.axis());
    Length bottom = mouth.minus(holes.depth().times(from.sign()));
    return new Box(about(centre.x(), radius), about(centre.y(), radius), about(centre.z(), radius))
        .with(from.axis(), new Range(mouth.min(bottom), mouth.max(bottom)));
  }

  private static Range about(Length middle, Length radius) {
    return new Range(middle.minus(radius), middle.plus(radius));
  }

  private Diagnostic meet(Piece piece, Part part, List<Bore> two, Box both) {
    Cut later = two.getLast().cut;
    Cut earlier = two.getFirst().cut;
    Length by = Stream.of(Axis.values()).map(both::size).reduce(Length::min).orElseThrow();
    return Diagnostic.error(
            code(),
            later.at(),
            "the %s for %s and the %s for %s run %s into each other inside %s"
                .formatted(
                    later.term(),
                    later.forWhat().orElse("this"),
                    earlier.term(),
                    earlier.forWhat().orElse("another"),
                    piece.description().format().formatWithUnit(by),
                    part.name()))
        .also(earlier.at(), "the other is asked for here")
        .also(part.at(), part.name() + " is defined here")
        .hint("let one of them go less deep, or move it out of the way of the other");
  }
}
