package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.geometry.Range;
import storyrod.measure.Coverage;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.measure.Volume;

/** What a piece takes, made from entries in which everything could be read. */
final class Supplies {
  private Supplies() {}

  static StockEntry stock(String name, Entry entry) {
    return new StockEntry(
        name,
        entry.at(),
        DescriptionBuilder.word(StockKind.class, entry),
        entry.text("species"),
        entry.located("thickness", Length.class),
        entry.findLength("bought-as"),
        entry.find("sheet", SheetSize.class),
        entry.find("price", Price.class),
        entry.findLocated("density", Rational.class),
        entry.yes("grained", true),
        new StockFigures(
            entry.find("modulus", Rational.class),
            entry.find("movement", Rational.class),
            entry.find("sawn", String.class).filter("quarter"::equals).isPresent(),
            entry.findLocated("measured", Length.class),
            entry.yes("spalted", false),
            entry.find("boards", SheetSize.class)));
  }

  static List<OnHandEntry> onHand(Entry project) {
    List<OnHandEntry> pieces = new ArrayList<>();
    project.entries("on-hand").forEach((name, entry) -> pieces.add(onHand(name, entry)));
    return pieces;
  }

  private static OnHandEntry onHand(String name, Entry entry) {
    Length width = entry.length("width");
    return new OnHandEntry(
        entry.at(),
        name,
        entry.located("stock", String.class),
        entry.length("length"),
        width,
        DescriptionBuilder.count(entry, "count", 1),
        entry.find("price", Rational.class),
        entry.list("defects").stream()
            .map(
                defect ->
                    new OnHandEntry.Defect(
                        defect.located("x", Range.class).value(),
                        defect
                            .find("y", Range.class)
                            .orElseGet(() -> new Range(Length.ZERO, width))))
            .toList(),
        entry.find("say", String.class));
  }

  static ClimateEntry climate(Entry entry) {
    return new ClimateEntry(
        entry.find("room", String.class).orElse(ClimateEntry.USUAL.room()),
        entry.find("dry-celsius", Rational.class),
        entry.find("dry-humidity", Rational.class),
        entry.find("damp-celsius", Rational.class),
        entry.find("damp-humidity", Rational.class));
  }

  /** Three coats, a day apart, on wood sanded to 180: common practice for wiped varnish. */
  static FinishEntry finish(Entry entry) {
    return new FinishEntry(
        entry.at(),
        entry.text("product"),
        DescriptionBuilder.count(entry, "coats", 3),
        DescriptionBuilder.count(entry, "dry-hours", 24),
        DescriptionBuilder.count(entry, "sand-to", 180),
        entry.find("tried-on", String.class),
        entry.find("how", String.class),
        entry.find("kind", String.class),
        supply(entry),
        entry.find("sandpaper", Entry.class).map(Supplies::sandpaper),
        entry.find("last", Entry.class).map(last -> over(last, entry)),
        entry.find("sheen", String.class),
        entry.find("cure-days", Integer.class));
  }

  private static FinishEntry over(Entry last, Entry finish) {
    return new FinishEntry(
        last.at(),
        last.text("product"),
        DescriptionBuilder.count(last, "coats", 1),
        DescriptionBuilder.count(last, "dry-hours", 24),
        DescriptionBuilder.count(finish, "sand-to", 180),
        finish.find("tried-on", String.class),
        last.find("how", String.class),
        last.find("kind", String.class),
        supply(last),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static SandpaperEntry sandpaper(Entry entry) {
    return new SandpaperEntry(
        DescriptionBuilder.count(entry, "pack", 1),
        entry.find("price", Rational.class).orElseThrow());
  }

  static GlueEntry glue(Entry entry) {
    return new GlueEntry(
        entry.at(),
        entry.text("product"),
        entry.find("kind", String.class),
        entry.find("open-minutes", Integer.class),
        entry.find("clamp-minutes", Integer.class),
        entry.find("cure-hours", Integer.class),
        supply(entry));
  }

  private static Supply supply(Entry entry) {
    return new Supply(
        entry.find("coverage", Coverage.class),
        entry.find("sold-in", Volume.class),
        entry.find("price", Rational.class));
  }
}
