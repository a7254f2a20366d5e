package storyrod.description;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import storyrod.description.RecordEntry.Board;
import storyrod.description.RecordEntry.Made;
import storyrod.description.RecordEntry.Paid;
import storyrod.description.RecordEntry.Photo;
import storyrod.description.RecordEntry.Revision;
import storyrod.description.RecordEntry.Spent;
import storyrod.description.RecordEntry.TestPiece;
import storyrod.measure.Rational;

/** The record of a piece, made from entries in which everything could be read. */
final class Records {
  private Records() {}

  static RecordEntry of(Entry record) {
    return new RecordEntry(
        all(record, "revisions", Records::revision),
        all(record, "made", Records::made),
        all(record, "boards", Records::board),
        all(record, "test-pieces", Records::testPiece),
        all(record, "hours", Records::spent),
        all(record, "paid", Records::paid),
        all(record, "photos", Records::photo));
  }

  private static <T> List<T> all(Entry record, String key, Function<Entry, T> make) {
    return record.list(key).stream().map(make).toList();
  }

  private static Revision revision(Entry entry) {
    return new Revision(
        entry.expect("date", LocalDate.class), entry.text("change"), text(entry, "reason"));
  }

  private static Made made(Entry entry) {
    return new Made(
        text(entry, "part"),
        entry.findLocated("step", Integer.class),
        entry.findLength("length"),
        entry.findLength("width"),
        entry.findLength("thickness"),
        text(entry, "say"));
  }

  private static Board board(Entry entry) {
    return new Board(
        entry.text("stock"),
        DescriptionBuilder.count(entry, "count", 1),
        text(entry, "from"),
        text(entry, "say"),
        entry.find("moisture", Rational.class),
        date(entry),
        text(entry, "place"));
  }

  private static TestPiece testPiece(Entry entry) {
    return new TestPiece(
        entry.text("wood"),
        entry.text("product"),
        entry.find("sand-to", Integer.class),
        entry.text("verdict"),
        date(entry));
  }

  private static Spent spent(Entry entry) {
    return new Spent(
        entry.located("stage", String.class),
        entry.expect("hours", Rational.class),
        text(entry, "say"));
  }

  private static Paid paid(Entry entry) {
    return new Paid(entry.text("what"), entry.expect("amount", Rational.class), text(entry, "say"));
  }

  private static Photo photo(Entry entry) {
    return new Photo(
        entry.located("picture", String.class),
        entry.text("caption"),
        text(entry, "shows").orElseGet(() -> entry.text("caption")),
        text(entry, "part"),
        entry.findLocated("step", Integer.class),
        date(entry));
  }

  private static Optional<String> text(Entry entry, String key) {
    return entry.find(key, String.class);
  }

  private static Optional<LocalDate> date(Entry entry) {
    return entry.find("date", LocalDate.class);
  }
}
