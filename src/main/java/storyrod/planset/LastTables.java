package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import storyrod.planset.TableFlow.Table;

/** The tables behind the finish, which go on below it and below each other. */
record LastTables(WoodPages wood, Glossary glossary) {
  /** The tables of an edition; {@code endMm} is how far down the page before them is filled. */
  static LastTables of(PlanSet set, Glossary.Source said, Print print, double endMm) {
    Edition edition = print.edition();
    WoodPages.Rows rows = WoodPages.Rows.of(set, print);
    Table<Glossary.Entry> terms = Glossary.table(set, said, print);
    List<Table<?>> tables = new ArrayList<>();
    if (edition.has("wood")) {
      tables.addAll(List.of(rows.movingTable(), rows.loadTable()));
    }
    if (edition.has("glossary")) {
      tables.add(terms);
    }
    boolean follow = edition.follows("finish", "wood") || edition.follows("finish", "glossary");
    double roomMm = print.paper().roomMm();
    TableFlow flow = TableFlow.balanced(roomMm, follow ? endMm : roomMm, tables);
    return new LastTables(
        edition.has("wood") ? rows.on(flow) : WoodPages.NONE,
        edition.has("glossary") ? new Glossary(flow.place(terms)) : Glossary.NONE);
  }
}
