package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;

class FlatPartTest {
  /** Three points of a face that run counter-clockwise still do when the part is laid flat. */
  @Test
  void aPartIsTurnedAndNeverMirrored() {
    Part side = BenchParts.inInches().parts().getFirst();
    for (Axis length : Axis.values()) {
      for (Axis thickness : Axis.values()) {
        for (int sign : new int[] {-1, 1}) {
          if (length != thickness) {
            Cut cut = cutInACorner(side, Face.of(thickness, sign));
            FlatPart flat = FlatPart.of(with(side, length, thickness, cut));
            assertEquals(handedness(side, cut), handedness(flat, flat.cuts().getFirst()));
          }
        }
      }
    }
  }

  private static Part with(Part part, Axis length, Axis thickness, Cut cut) {
    return new Part(
        part.name(),
        part.title(),
        part.mark(),
        false,
        part.assembly(),
        part.stock(),
        part.shoulder(),
        part.box(),
        length,
        thickness,
        List.of(cut),
        part.solid(),
        part.say(),
        part.at());
  }

  private static Cut cutInACorner(Part part, Face face) {
    Length deep = BenchParts.at(4);
    Length wide = BenchParts.at(8);
    var box = part.box();
    Axis one = Axis.values()[(face.axis().ordinal() + 1) % 3];
    Axis other = Axis.other(face.axis(), one);
    Length low = box.on(face.axis()).from();
    Length high = box.on(face.axis()).to();
    Range into =
        face.sign() > 0 ? new Range(high.minus(deep), high) : new Range(low, low.plus(deep));
    var removed =
        box.with(face.axis(), into)
            .with(one, new Range(box.on(one).from(), box.on(one).from().plus(wide)))
            .with(other, new Range(box.on(other).from(), box.on(other).from().plus(wide.times(2))));
    return BenchParts.trench("notch", face, removed, "rail");
  }

  private static int handedness(Part part, Cut cut) {
    return handedness(part.box(), cut);
  }

  private static int handedness(FlatPart part, Cut cut) {
    return handedness(part.box(), cut);
  }

  /** The sign of (way to the corner along the short side) x (along the long side) . (outwards). */
  private static int handedness(storyrod.geometry.Box box, Cut cut) {
    Cut.Trench trench = (Cut.Trench) cut;
    Axis normal = trench.from().axis();
    Axis shorter = Axis.values()[(normal.ordinal() + 1) % 3];
    Axis longer = Axis.other(normal, shorter);
    if (trench.removed().size(shorter).isLongerThan(trench.removed().size(longer))) {
      Axis swap = shorter;
      shorter = longer;
      longer = swap;
    }
    int turn = Math.floorMod(longer.ordinal() - shorter.ordinal(), 3) == 1 ? 1 : -1;
    return turn
        * trench.from().sign()
        * end(trench.removed().on(shorter), box.on(shorter))
        * end(trench.removed().on(longer), box.on(longer));
  }

  private static int end(Range cut, Range whole) {
    return cut.from().equals(whole.from()) ? -1 : 1;
  }
}
