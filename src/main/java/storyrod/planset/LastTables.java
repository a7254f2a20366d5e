package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import storyrod.planset.TableFlow.Table;

/**
 * The tables behind the finish, which go on below it and below each other, and what goes on below
 * them.
 *
 * @param licenceBreaks whether the licence begins a page
 * @param revisionsBreak whether the revisions begin a page; nothing is said where an edition has
 *     them elsewhere
 */
record LastTables(
    WoodPages wood, Glossary glossary, boolean licenceBreaks, List<Boolean> revisionsBreak) {
  private static final String FINISH = "finish";
  private static final String WOOD = "wood";
  private static final String GLOSSARY = "glossary";
  private static final String REVISIONS = RecordPages.FOLDER + RecordPages.REVISIONS;

  LastTables {
    revisionsBreak = List.copyOf(revisionsBreak);
  }

  /** The tables of an edition; {@code endMm} is how far down the page before them is filled. */
  static LastTables of(PlanSet set, Glossary.Source said, Print print, double endMm) {
    Edition edition = print.edition();
    WoodPages.Rows rows = WoodPages.Rows.of(set, print);
    Table<Glossary.Entry> terms = Glossary.table(set, said, print);
    Table<Double> licence = block(Licence.heightMm(set, print), behind(edition, Licence.KEY));
    Table<Double> revisions =
        block(RecordPages.revisionsMm(set, print), behind(edition, REVISIONS));
    List<Table<?>> tables = new ArrayList<>();
    if (edition.has(WOOD)) {
      tables.addAll(List.of(rows.movingTable(), rows.loadTable()));
    }
    if (edition.has(GLOSSARY)) {
      tables.add(terms);
    }
    tables.addAll(List.of(licence, revisions));
    TableFlow flow = TableFlow.balanced(print.paper().roomMm(), startMm(print, endMm), tables);
    return new LastTables(
        edition.has(WOOD) ? rows.on(flow) : WoodPages.NONE,
        edition.has(GLOSSARY) ? new Glossary(flow.place(terms)) : Glossary.NONE,
        flow.place(licence).stream().allMatch(TableFlow.Part::breaks),
        flow.place(revisions).stream().map(TableFlow.Part::breaks).toList());
  }

  private static double startMm(Print print, double endMm) {
    boolean follows =
        Stream.of(WOOD, GLOSSARY, Licence.KEY)
            .anyMatch(section -> print.edition().follows(FINISH, section));
    return follows ? endMm : print.paper().roomMm();
  }

  /** Whether a section stands behind one of those that go on below each other. */
  private static boolean behind(Edition edition, String section) {
    return Stream.of(FINISH, WOOD, GLOSSARY, Licence.KEY)
        .anyMatch(before -> edition.follows(before, section));
  }

  /** What stands on one page, as a table of one row; none where it has no place in this row. */
  private static Table<Double> block(double heightMm, boolean isBehind) {
    return new Table<>(
        TableHeights.ABOVE_H1_MM,
        0,
        0,
        heightMm > 0 && isBehind ? List.of(heightMm) : List.of(),
        height -> height);
  }
}
