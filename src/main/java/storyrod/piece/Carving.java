package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import storyrod.geometry.Box;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Fineness;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;

/** What is left of a box after its cuts. */
public final class Carving {
  private static final Length PAST = Length.mm(1);

  private Carving() {}

  /** The solid, with its round bores; arcs are facets of some fineness. */
  public static Solid of(Box box, List<Cut> cuts, Fineness fineness) {
    List<Box> trenches = new ArrayList<>();
    List<Solid> housings = new ArrayList<>();
    List<Slanted.Slope> slopes = new ArrayList<>();
    List<Cylinder> bores = new ArrayList<>();
    Solid solid = Solid.of(box);
    for (Cut cut : cuts) {
      if (cut instanceof Cut.Shaped shaped && !shaped.inside()) {
        solid = Solid.of(shaped.contour(), box.on(shaped.from().axis()), fineness);
      }
    }
    for (Cut cut : cuts) {
      switch (cut) {
        case Cut.Trench trench -> trenches.addAll(trench.boxes());
        case Cut.Tenon tenon -> trenches.addAll(tenon.boxes());
        case Cut.Comb comb -> trenches.addAll(comb.boxes());
        case Cut.Shaped shaped ->
            solid = shaped.inside() ? cut(solid, box, shaped, fineness) : solid;
        case Cut.Roundover roundover -> {}
        case Cut.Holes holes -> bores.addAll(Drilling.of(holes));
        case Cut.PocketHoles pockets -> bores.addAll(Drilling.of(pockets, box));
        case Slanted.Slope slope -> slopes.add(slope);
        case Slanted.Housing housing -> housings.add(housing.solid());
        case Slots slots -> housings.addAll(slots.solids(fineness));
        case Dovetails dovetails -> housings.addAll(dovetails.solids());
        case SplineSlot slot -> housings.add(slot.solid());
        case Cut.InPlace inPlace -> bores.addAll(Drilling.of(inPlace));
      }
    }
    solid = solid.minus(trenches).without(housings);
    for (Slanted.Slope slope : slopes) {
      solid = solid.trimmed(slope.first().toMm(), slope.normal());
    }
    return solid.bored(bores);
  }

  private static Solid cut(Solid solid, Box box, Cut.Shaped shaped, Fineness fineness) {
    Range through = box.on(shaped.from().axis()).extended(1, PAST).extended(-1, PAST);
    return solid.minus(Solid.of(shaped.contour(), through, fineness));
  }
}
