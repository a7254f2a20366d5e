package storyrod.planset;

import java.util.List;
import java.util.stream.Stream;

/** What the contents and the bookmarks name, section by section. */
record Outline(List<Entry> entries) {
  Outline {
    entries = List.copyOf(entries);
  }

  /**
   * A place in the plan set.
   *
   * @param anchor the name by which links find it
   * @param number that of a step, else empty
   * @param listed whether the contents name it; the bookmarks name all
   * @param within the places inside it
   */
  public record Entry(
      String anchor, String number, String title, boolean listed, List<Entry> within) {
    public Entry {
      within = List.copyOf(within);
    }

    static Entry of(String anchor, String title) {
      return new Entry(anchor, "", title, true, List.of());
    }

    static Entry bookmark(String anchor, String title) {
      return new Entry(anchor, "", title, false, List.of());
    }

    Entry with(List<Entry> entries) {
      return new Entry(anchor, number, title, listed, entries);
    }
  }

  /** The lines of the contents, one below the other. */
  List<Entry> lines() {
    return entries.stream()
        .flatMap(each -> Stream.concat(Stream.of(each), each.within().stream()))
        .filter(Entry::listed)
        .toList();
  }

  static Outline of(Pages pages) {
    return new Outline(
        pages.edition().sections().stream()
            .flatMap(section -> Sections.outline(section, pages).stream())
            .toList());
  }
}
