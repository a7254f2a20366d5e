package storyrod.planset;

import java.util.List;

/** Something that holds for every finished plan set; gives the faults, none if it holds. */
record PageCheck(String name, Find find) {
  /** Looks for faults. */
  interface Find {
    List<String> in(FinishedPdf pdf) throws Exception;
  }

  /** All of them, in the order in which they are told. */
  static final List<PageCheck> ALL =
      List.of(
          new PageCheck("every font is embedded", TextChecks::fonts),
          new PageCheck("no glyph is missing", TextChecks::missing),
          new PageCheck("no text stands outside the margins", TextChecks::outside),
          new PageCheck("no text is smaller than 7 pt", TextChecks::small),
          new PageCheck("no text lies on another", TextOnText::overlaps),
          new PageCheck("no text comes too near to another", TextOnText::tooNear),
          new PageCheck("the cover's picture ends above the name", CoverChecks::apart),
          new PageCheck("no page is nearly empty", FillChecks::nearlyEmpty),
          new PageCheck("every page states its number and their count", PlaceChecks::numbers),
          new PageCheck("every link leads to what it says", PlaceChecks::links),
          new PageCheck("every bookmark leads to what it says", PlaceChecks::bookmarks),
          new PageCheck("the contents state the pages to which they lead", PlaceChecks::contents),
          new PageCheck("there are as many labels as the cut list says", CountChecks::labels),
          new PageCheck("drawings name the counts of the cut list", CountChecks::drawings),
          new PageCheck("steps use up the hardware of its schedule", CountChecks::hardware),
          new PageCheck("nothing tells of the machine", TraceChecks::traces));
}
