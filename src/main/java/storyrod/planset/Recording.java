package storyrod.planset;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.Description;
import storyrod.description.OnHandEntry;
import storyrod.description.RecordEntry;
import storyrod.description.RecordEntry.Made;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.planset.CutList.Sizes;
import storyrod.planset.Recorded.Board;
import storyrod.planset.Recorded.Otherwise;
import storyrod.planset.Recorded.Revision;
import storyrod.planset.Recorded.Sized;
import storyrod.planset.Recorded.TestPiece;
import storyrod.wood.Climates;

/**
 * Puts what is recorded beside what is planned.
 *
 * @param lines whether rows to fill in stand where nothing is recorded
 */
record Recording(PlanSet set, Texts texts, boolean lines) {
  private static final Sizes NO_SIZES = new Sizes("", "", "");

  /** A piece has a row of its own, for its board and moisture are; more equal ones are small. */
  private static final int MOST_ROWS = 4;

  /** Rows for handwriting: so many of what is written now and then, and of each stock. */
  private static final int FEW_ROWS = 4;

  private static final int STEP_ROWS = 6;
  private static final int STOCK_ROWS = 3;

  /** What is left free below what is recorded already. */
  private static final int LEAST_BLANK = 2;

  private static final int TENTHS = 10;

  Recorded recorded() {
    RecordedSums sums = new RecordedSums(set, texts);
    return new Recorded(
        withBlank(revisions(), FEW_ROWS, new Revision("", "", "")),
        sizes(),
        withBlank(steps(), STEP_ROWS, new Otherwise("", "", "")),
        boards(),
        percent(Optional.of(target())),
        withBlank(testPieces(), FEW_ROWS, new TestPiece("", "", "", "", "")),
        sums.hours(),
        sums.costs());
  }

  private RecordEntry record() {
    return set.piece().description().record();
  }

  private <T> List<T> withBlank(List<T> rows, int count, T blank) {
    int blanks = lines ? Math.max(LEAST_BLANK, count - rows.size()) : 0;
    return Stream.concat(rows.stream(), Collections.nCopies(blanks, blank).stream()).toList();
  }

  private List<Revision> revisions() {
    return record().revisions().stream()
        .sorted(Comparator.comparing(RecordEntry.Revision::date))
        .map(each -> new Revision(each.date().toString(), each.change(), each.reason().orElse("")))
        .toList();
  }

  private List<Sized> sizes() {
    return set.piece().marks().stream().flatMap(this::sizes).toList();
  }

  private Stream<Sized> sizes(Mark mark) {
    List<String> open = mark.parts().stream().filter(part -> made(part).isEmpty()).toList();
    List<String> single = mark.count() > MOST_ROWS ? List.of() : open;
    Stream<Sized> each =
        mark.parts().stream()
            .flatMap(
                part ->
                    Stream.concat(
                        made(part).stream().map(made -> sized(mark, part, made)),
                        single.stream().filter(part::equals).map(p -> unmeasured(mark, p))));
    return open.size() > single.size()
        ? Stream.concat(each, Stream.of(unmeasured(mark, open.size())))
        : each;
  }

  private List<Made> made(String part) {
    return record().made().stream()
        .filter(each -> each.part().filter(part::equals).isPresent())
        .toList();
  }

  /** Its number is that on its label. */
  private String piece(Mark mark, String part) {
    int number = mark.parts().indexOf(part) + 1;
    return mark.count() == 1
        ? mark.title()
        : texts.say("record.piece", mark.title(), number, mark.count());
  }

  private Sized unmeasured(Mark mark, String part) {
    return blank(mark, piece(mark, part));
  }

  private Sized unmeasured(Mark mark, int count) {
    return blank(mark, texts.say("record.pieces", count, mark.title()));
  }

  private Sized blank(Mark mark, String title) {
    Sizes planned = CutList.finished(mark.shown(), texts);
    return new Sized(mark.mark(), title, planned, NO_SIZES, NO_SIZES, "");
  }

  private Sized sized(Mark mark, String name, Made made) {
    Part part = mark.shown();
    Differences differences = new Differences(texts);
    return new Sized(
        mark.mark(),
        piece(mark, name),
        CutList.finished(part, texts),
        new Sizes(length(made.length()), length(made.width()), length(made.thickness())),
        new Sizes(
            differences.of(part.finishedLength(), made.length()),
            differences.of(part.finishedWidth(), made.width()),
            differences.of(part.finishedThickness(), made.thickness())),
        made.say().orElse(""));
  }

  private String length(Optional<Length> length) {
    return length.map(texts::length).orElse("");
  }

  private List<Otherwise> steps() {
    return record().made().stream()
        .filter(each -> each.step().isPresent())
        .map(each -> otherwise(each.step().orElseThrow().value(), each.say().orElse("")))
        .toList();
  }

  private Otherwise otherwise(int step, String say) {
    String stage = StepPages.stageTitle(set.build().steps().get(step - 1).stage(), texts);
    return new Otherwise(Integer.toString(step), stage, say);
  }

  /** What was used, then what lies ready with its story, then lines for the rest of the wood. */
  private List<Board> boards() {
    Description description = set.piece().description();
    List<Board> used = record().boards().stream().map(this::board).toList();
    Stream<Board> ready =
        description.onHand().stream().filter(each -> each.story().isPresent()).map(this::ready);
    Stream<Board> blank =
        set.stock().boards().stream().map(need -> need.stock().name()).flatMap(this::blankBoards);
    return Stream.of(used.stream(), ready, blank).flatMap(each -> each).toList();
  }

  private Stream<Board> blankBoards(String name) {
    long used = record().boards().stream().filter(each -> each.stock().equals(name)).count();
    long blanks = lines ? Math.max(1, STOCK_ROWS - used) : 0;
    return Stream.generate(() -> new Board(stock(name, 1), "", planned(name), "", "", ""))
        .limit(blanks);
  }

  private Board board(RecordEntry.Board board) {
    Optional<Rational> planned = isSolid(board.stock()) ? Optional.of(target()) : Optional.empty();
    return new Board(
        stock(board.stock(), board.count()),
        joined(board.from(), board.story(), ". "),
        planned(board.stock()),
        percent(board.moisture()),
        new Differences(texts).of(planned, board.moisture(), 1),
        joined(board.date().map(LocalDate::toString), board.place(), ", "));
  }

  private Board ready(OnHandEntry entry) {
    String name = entry.stock().value();
    return new Board(
        stock(name, entry.count()), entry.story().orElse(""), planned(name), "", "", "");
  }

  private static String joined(Optional<String> first, Optional<String> second, String between) {
    return Stream.concat(first.stream(), second.stream()).collect(Collectors.joining(between));
  }

  private String stock(String name, int count) {
    String stock = texts.stock(entry(name));
    return count == 1 ? stock : texts.say("record.pieces", count, stock);
  }

  private StockEntry entry(String name) {
    return set.piece().description().stock().get(name);
  }

  private boolean isSolid(String name) {
    return entry(name).kind() == StockKind.SOLID;
  }

  private String planned(String name) {
    return isSolid(name) ? percent(Optional.of(target())) : "";
  }

  private String percent(Optional<Rational> moisture) {
    return moisture.map(each -> texts.figures(each, 1)).orElse("");
  }

  /** At which moisture wood stands, on the average of the year, in the piece's room; in tenths. */
  private Rational target() {
    double mean = Climates.of(set.piece().description().climate()).meanMoisture();
    return Rational.of(Math.round(mean * TENTHS), TENTHS);
  }

  private List<TestPiece> testPieces() {
    return record().testPieces().stream()
        .map(
            each ->
                new TestPiece(
                    each.wood(),
                    each.product(),
                    each.sandTo().map(grit -> texts.say("finish.grit", grit)).orElse(""),
                    each.verdict(),
                    each.date().map(LocalDate::toString).orElse("")))
        .toList();
  }
}
