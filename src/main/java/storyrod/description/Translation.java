package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import storyrod.description.RecordEntry.Board;
import storyrod.description.RecordEntry.Made;
import storyrod.description.RecordEntry.Paid;
import storyrod.description.RecordEntry.Photo;
import storyrod.description.RecordEntry.Revision;
import storyrod.description.RecordEntry.Spent;
import storyrod.description.RecordEntry.TestPiece;
import storyrod.words.Words;

/**
 * What a maker wrote for readers, in the words of a language as far as it has names for it: titles,
 * and what is said beside parts, stages and hardware. Names by which a description speaks of its
 * own entries, and woods and products, of which tables know more, stay as they are.
 */
record Translation(Words words) {
  About about(About about) {
    return new About(
        located(about.project()),
        about.maker().map(words::name),
        about.summary().map(words::name),
        about.edition(),
        about.date(),
        about.licence().map(words::name),
        about.currency());
  }

  PartEntry part(PartEntry part) {
    return part.told(words.name(part.title()), part.say().map(words::name));
  }

  AssemblyEntry assembly(AssemblyEntry unit) {
    return new AssemblyEntry(
        unit.name(), words.name(unit.title()), unit.at(), unit.loose(), unit.parts());
  }

  ItemEntry item(ItemEntry item) {
    return new ItemEntry(
        item.name(),
        item.at(),
        words.name(item.title()),
        item.kind(),
        item.length(),
        item.diameter(),
        item.sideClearance(),
        item.pack(),
        item.price(),
        item.sizes(),
        item.from());
  }

  HardwareEntry hardware(HardwareEntry entry) {
    Optional<String> say = entry.say().map(words::name);
    return new HardwareEntry(
        entry.at(),
        entry.item(),
        entry.count(),
        entry.parts(),
        entry.screw(),
        entry.screwsEach(),
        say);
  }

  OnHandEntry onHand(OnHandEntry entry) {
    return new OnHandEntry(
        entry.at(),
        entry.name(),
        entry.stock(),
        entry.length(),
        entry.width(),
        entry.count(),
        entry.price(),
        entry.defects(),
        said(entry.story()));
  }

  StageEntry stage(StageEntry stage) {
    Map<String, String> say = each(stage.say(), words::name);
    return new StageEntry(located(stage.title()), stage.order(), say, stage.unit());
  }

  RecordEntry record(RecordEntry record) {
    return new RecordEntry(
        each(record.revisions(), this::revision),
        each(record.made(), this::made),
        each(record.boards(), this::board),
        each(record.testPieces(), this::testPiece),
        each(record.hours(), each -> new Spent(each.stage(), each.hours(), said(each.say()))),
        each(record.paid(), each -> new Paid(each.group(), each.amount(), said(each.say()))),
        each(record.photos(), this::photo));
  }

  private Revision revision(Revision each) {
    return new Revision(each.date(), words.name(each.change()), said(each.reason()));
  }

  private Made made(Made each) {
    Optional<String> say = said(each.say());
    return new Made(each.part(), each.step(), each.length(), each.width(), each.thickness(), say);
  }

  private Board board(Board each) {
    return new Board(
        each.stock(),
        each.count(),
        said(each.from()),
        said(each.story()),
        each.moisture(),
        each.date(),
        said(each.place()));
  }

  private TestPiece testPiece(TestPiece each) {
    return new TestPiece(
        words.name(each.wood()),
        words.name(each.product()),
        each.sandTo(),
        words.name(each.verdict()),
        each.date());
  }

  private Photo photo(Photo each) {
    return new Photo(
        each.file(),
        words.name(each.caption()),
        words.name(each.shows()),
        each.part(),
        each.step(),
        each.date());
  }

  private Optional<String> said(Optional<String> text) {
    return text.map(words::name);
  }

  /** All values of a map, its keys as they are. */
  static <T> Map<String, T> each(Map<String, T> values, Function<T, T> change) {
    Map<String, T> changed = new LinkedHashMap<>();
    values.forEach((key, value) -> changed.put(key, change.apply(value)));
    return changed;
  }

  static <T> List<T> each(List<T> values, Function<T, T> change) {
    return values.stream().map(change).toList();
  }

  private Located<String> located(Located<String> text) {
    return new Located<>(words.name(text.value()), text.at());
  }
}
