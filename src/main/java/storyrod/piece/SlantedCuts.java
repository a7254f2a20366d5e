package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import storyrod.description.Description;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.geometry.Face;
import storyrod.geometry.Solid;
import storyrod.piece.JointEffect.CutIn;

/** The slanted cuts of all parts: read before the joints, for they say where parts end. */
final class SlantedCuts implements SolidContacts.Slants {
  private final List<Slant> slants = new ArrayList<>();

  private SlantedCuts() {}

  /** Reads them all; blanks that are cut to a plane are made to end there. */
  static SlantedCuts read(
      Description description, Map<String, Blank> blanks, Diagnostics diagnostics) {
    SlantedCuts found = new SlantedCuts();
    EndReader ends = new EndReader(blanks, description.format(), diagnostics);
    SlantReader sides = new SlantReader(blanks, description.format(), diagnostics);
    for (Entry entry : description.cuts()) {
      switch (entry.kind()) {
        case "bevel", "mitre" -> ends.read(entry).ifPresent(found.slants::add);
        case "taper" -> found.slants.addAll(sides.tapers(entry));
        case "chamfer" -> found.slants.addAll(sides.chamfers(entry));
        default -> {}
      }
    }
    return found;
  }

  /** The cuts on blanks that have their full size. */
  List<CutIn> on(Map<String, Blank> blanks) {
    return slants.stream()
        .map(slant -> new CutIn(slant.part(), slant.on().apply(blanks.get(slant.part()))))
        .toList();
  }

  @Override
  public Solid solid(Blank blank) {
    Solid solid = Solid.of(blank.box());
    for (Slanted.Slope slope : on(blank)) {
      solid = solid.trimmed(slope.first().toMm(), slope.normal());
    }
    return solid;
  }

  @Override
  public boolean touch(Blank blank, Face face) {
    return on(blank).stream()
        .filter(slope -> slope.kind() != Slanted.Slope.Kind.CHAMFER)
        .anyMatch(slope -> slope.from() == face || slope.towards() == face);
  }

  private List<Slanted.Slope> on(Blank blank) {
    return slants.stream()
        .filter(slant -> slant.part().equals(blank.name()))
        .map(slant -> slant.on().apply(blank))
        .toList();
  }
}
