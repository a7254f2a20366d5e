package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.stock.StockPlan.RoughPart;

/** The cut list: one row for each mark, in the order of the marks. */
public record CutList(List<Row> rows) {
  public CutList {
    rows = List.copyOf(rows);
  }

  /**
   * A mark with its finished and its rough size, as printed.
   *
   * @param all how many there are, mirror images with the others
   * @param blankOf the mark of the part out of whose blank it is cut, or empty; then the rough
   *     sizes are empty too
   * @param note what the reader has to know of its blank, or empty
   */
  public record Row(
      String mark,
      String part,
      String count,
      int all,
      String stock,
      Sizes finished,
      Sizes rough,
      String grain,
      String blankOf,
      String note) {
    /** How many of each hand, {@code 1 + 1}, or empty where all are alike. */
    String handed() {
      return count.equals(Integer.toString(all)) ? "" : count;
    }
  }

  /** Three sizes as printed. */
  public record Sizes(String length, String width, String thickness) {}

  static CutList of(PlanSet set, Texts texts) {
    Map<String, RoughPart> rough = new LinkedHashMap<>();
    set.stock().rough().forEach(each -> rough.put(each.mark(), each));
    KeptNotes notes = new KeptNotes(set.piece(), texts);
    return new CutList(
        set.piece().marks().stream()
            .map(mark -> row(mark, rough(rough, mark, notes), notes))
            .toList());
  }

  /** The rows of the marks that are chosen, with those out of whose blanks they are cut. */
  CutList only(Chosen chosen) {
    return new CutList(
        rows.stream()
            .filter(
                row ->
                    chosen.marks().contains(row.mark())
                        || rows.stream()
                            .filter(other -> chosen.marks().contains(other.mark()))
                            .anyMatch(other -> other.blankOf().equals(row.mark())))
            .toList());
  }

  private static Optional<RoughPart> rough(
      Map<String, RoughPart> rough, Mark mark, KeptNotes notes) {
    Optional<RoughPart> found = Optional.ofNullable(rough.get(mark.mark()));
    if (found.isPresent() == notes.blankOf(mark).isPresent()) {
      throw new IllegalStateException("bug: no one rough size for " + mark.mark());
    }
    return found;
  }

  private static Row row(Mark mark, Optional<RoughPart> rough, KeptNotes notes) {
    Texts texts = notes.texts();
    return new Row(
        mark.mark(),
        mark.title(),
        count(mark),
        mark.count(),
        texts.stock(mark.shown().stock()),
        finished(mark.shown(), texts),
        rough.map(each -> sizes(each, texts)).orElse(new Sizes("", "", "")),
        grain(mark.shown().stock(), texts),
        notes.blankOf(mark).map(Mark::mark).orElse(""),
        notes.note(mark).isEmpty() ? boards(mark, notes) : notes.note(mark));
  }

  /** From how many boards of the rough size it is glued up, where its description says so. */
  private static String boards(Mark mark, KeptNotes notes) {
    int staves = notes.piece().staves(mark.shown()).orElse(1);
    int layers = notes.piece().layers(mark.shown());
    if (layers == 1) {
      return staves == 1 ? "" : notes.texts().say("cutlist.staves", staves);
    }
    return staves == 1
        ? notes.texts().say("cutlist.layers", layers)
        : notes.texts().say("cutlist.staves-in-layers", layers, staves);
  }

  private static Sizes sizes(RoughPart rough, Texts texts) {
    return new Sizes(
        texts.length(rough.length()), texts.length(rough.width()), texts.length(rough.thickness()));
  }

  static Sizes finished(Part part, Texts texts) {
    return new Sizes(
        texts.length(part.finishedLength()),
        texts.length(part.finishedWidth()),
        texts.length(part.finishedThickness()));
  }

  /** How many, with mirror images counted apart: {@code 1 + 1}. */
  static String count(Mark mark) {
    return mark.mirrored() == 0
        ? Integer.toString(mark.same())
        : mark.same() + " + " + mark.mirrored();
  }

  static String grain(StockEntry stock, Texts texts) {
    return texts.say(hasGrain(stock) ? "grain.along" : "grain.any");
  }

  static boolean hasGrain(StockEntry stock) {
    return stock.kind() == StockKind.SOLID || stock.grained();
  }
}
