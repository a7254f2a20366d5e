package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;

/** Names of units on paper, each below what is seen of its unit. */
record UnitNames(List<UnitName> names, List<Seen> seen, Fit fit) {
  /** What a name takes below its unit. */
  static final double HIGH_MM = 4.6;

  private static final double APART_MM = 1.5;

  /**
   * Those that neither a line nor another name is in the way of; a part's gives way to a unit's.
   */
  List<Text> clearOf(List<Element> drawn) {
    List<Paper.Stretch> lines =
        drawn.stream()
            .flatMap(each -> Lowering.simple(each).stream())
            .flatMap(each -> Paper.stretches(each).stream())
            .toList();
    List<Text> clear = new ArrayList<>();
    for (UnitName name : unitsFirst()) {
      Text text = below(name);
      PlacedText placed = PlacedText.of(text);
      if (lines.stream().noneMatch(placed::meets)
          && clear.stream().map(PlacedText::of).noneMatch(placed.widened(APART_MM)::overlaps)) {
        clear.add(text);
      }
    }
    return clear;
  }

  private List<UnitName> unitsFirst() {
    return names.stream().sorted(Comparator.comparing(UnitName::isOfPart)).toList();
  }

  private Text below(UnitName name) {
    Bounds unit =
        Bounds.around(
            fit.on(
                seen.stream()
                    .filter(each -> name.parts().contains(each.item().name()))
                    .flatMap(each -> each.lines().visible().stream())
                    .flatMap(Fit::ends)
                    .toList()));
    At below = new At(unit.middle().x(), unit.bottom() + HIGH_MM - 1);
    return new Text(TextStyle.SMALL, below, Anchor.MIDDLE, true, name.title());
  }
}
