package storyrod.stock;

import java.util.Comparator;
import java.util.List;

/** The better layout: fewer sheets, then the larger offcut. */
final class LayoutRank {
  private LayoutRank() {}

  static Comparator<List<SheetTree>> of(Enlarged sizes) {
    return Comparator.<List<SheetTree>>comparingInt(List::size)
        .thenComparing(sheets -> -largestOffcut(sheets, sizes));
  }

  static long largestOffcut(List<SheetTree> sheets, Enlarged sizes) {
    return sheets.stream().mapToLong(sheet -> sheet.largestOffcut(sizes)).max().orElse(0);
  }
}
