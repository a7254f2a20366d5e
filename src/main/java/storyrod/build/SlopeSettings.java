package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan.Setting;
import storyrod.piece.Dovetails;
import storyrod.piece.Slanted;

/** What is set for slanted cuts, and for the slanted sides of dovetails. */
final class SlopeSettings {
  private SlopeSettings() {}

  /** A chamfer by its size, a taper by what it takes and from where, an end by its angle. */
  static List<Setting> slanted(Slanted.Slope slope) {
    return switch (slope.kind()) {
      case CHAMFER -> List.of(new Setting("chamfer-size", Optional.empty(), slope.run()));
      case TAPER ->
          List.of(
              new Setting("taper-run", Optional.empty(), slope.run()),
              new Setting("taper-off", Optional.empty(), slope.drop()));
      case BEVEL, MITRE -> List.of(Setting.of(slope.term() + "-angle", slope.angle()));
    };
  }

  /** What the marking gauge and the sliding bevel are set to. */
  static List<Setting> dovetailed(Dovetails dovetails) {
    List<Setting> settings = new ArrayList<>();
    settings.add(new Setting("dovetail-baseline", Optional.empty(), dovetails.baseline()));
    if (dovetails.term().equals(Dovetails.HALF_BLIND)) {
      settings.add(new Setting("dovetail-depth", Optional.empty(), dovetails.length()));
    }
    if (dovetails.isTails()) {
      settings.add(Setting.of("dovetail-angle", dovetails.angle()));
    }
    return settings;
  }
}
