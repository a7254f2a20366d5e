package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import storyrod.geometry.Box;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Solid;

/** The solid that cuts leave of a box. */
public final class PartSolid {
  private PartSolid() {}

  public static Solid of(Box box, List<Cut> all) {
    List<Box> trenches = new ArrayList<>();
    List<Solid> housings = new ArrayList<>();
    List<Cut.Slope> slopes = new ArrayList<>();
    List<Cylinder> bores = new ArrayList<>();
    for (Cut cut : all) {
      switch (cut) {
        case Cut.Trench trench -> trenches.add(trench.removed());
        case Cut.Holes holes -> bores.addAll(Drilling.of(holes));
        case Cut.PocketHoles pockets -> bores.addAll(Drilling.of(pockets, box));
        case Cut.Slope slope -> slopes.add(slope);
        case Cut.Housing housing -> housings.add(housing.solid());
        case Cut.InPlace inPlace -> bores.addAll(Drilling.of(inPlace));
      }
    }
    Solid solid = Solid.of(box).minus(trenches).without(housings);
    for (Cut.Slope slope : slopes) {
      solid = solid.trimmed(slope.first().toMm(), slope.normal());
    }
    return solid.bored(bores);
  }
}
