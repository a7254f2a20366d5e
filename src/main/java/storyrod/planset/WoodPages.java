package storyrod.planset;

import java.util.List;
import java.util.Locale;
import storyrod.check.Sag;
import storyrod.check.WoodMovement;
import storyrod.check.WoodMovement.Fastened;
import storyrod.check.WoodMovement.Free;
import storyrod.check.WoodMovement.Grooves;
import storyrod.check.WoodMovement.Held;
import storyrod.check.WoodMovement.Joined;
import storyrod.check.WoodMovement.Moving;
import storyrod.check.WoodMovement.Room;
import storyrod.check.WoodMovement.Slotted;
import storyrod.check.WoodMovement.Travel;
import storyrod.measure.Unit;
import storyrod.planset.TableFlow.Table;
import storyrod.planset.TableHeights.Cell;

/** How the solid wood of a piece moves, and how far what bears a load bends. */
public record WoodPages(
    String lead, List<TableFlow.Part<MovingRow>> moving, List<TableFlow.Part<LoadRow>> loads) {
  static final WoodPages NONE = new WoodPages("", List.of(), List.of());

  private static final double PART_SHARE = 0.17;
  private static final double WOOD_SHARE = 0.12;
  private static final double ROOM_SHARE = 0.25;
  private static final double WIDTH_SHARE = 0.1;
  private static final double MOVED_SHARE = 0.09;
  private static final double FIGURE_SHARE = 0.12;
  private static final double MM_PER_INCH = 25.4;

  public WoodPages {
    moving = List.copyOf(moving);
    loads = List.copyOf(loads);
  }

  /** The key of its title, which names loads only where there are any. */
  public String title() {
    return loads.isEmpty() ? "wood.title.moving" : "wood.title";
  }

  boolean hasAny() {
    return !moving.isEmpty() || !loads.isEmpty();
  }

  /** A part across its grain. */
  public record MovingRow(
      String mark,
      String part,
      String wood,
      String width,
      String swells,
      String shrinks,
      String room) {}

  /** A part under its load. */
  public record LoadRow(
      String mark,
      String part,
      String load,
      String span,
      String bends,
      String inTime,
      String limit) {}

  /** The rows before they are set on pages. */
  record Rows(String lead, List<MovingRow> moving, List<LoadRow> loads, Print print) {
    static Rows of(PlanSet set, Print print) {
      WoodMovement wood = new WoodMovement(set.piece());
      Texts texts = print.texts();
      return new Rows(
          texts.say(
              "wood.lead",
              texts.words().figures(String.format(Locale.ROOT, "%.1f", wood.dryMoisture())),
              texts.words().figures(String.format(Locale.ROOT, "%.1f", wood.dampMoisture()))),
          wood.parts().stream().map(each -> row(each, set, texts)).toList(),
          wood.loads().stream().map(each -> row(each, set, texts)).distinct().toList(),
          print);
    }

    Table<MovingRow> movingTable() {
      double width = print.paper().textWidthMm();
      return new Table<>(
          TableHeights.ABOVE_H1_MM,
          TableHeights.FOLLOWING_H1_MM + TableHeights.text(lead, width) + 2 * TableHeights.ROW_MM,
          2 * TableHeights.ROW_MM,
          moving,
          row ->
              TableHeights.row(
                  List.of(
                      new Cell(row.part(), PART_SHARE * width),
                      new Cell(row.wood(), WOOD_SHARE * width),
                      new Cell(row.width(), WIDTH_SHARE * width),
                      new Cell(row.swells(), MOVED_SHARE * width),
                      new Cell(row.shrinks(), MOVED_SHARE * width),
                      new Cell(row.room(), ROOM_SHARE * width))));
    }

    Table<LoadRow> loadTable() {
      double width = print.paper().textWidthMm();
      return new Table<>(
          TableHeights.ABOVE_H2_MM,
          (moving.isEmpty() ? TableHeights.FOLLOWING_H1_MM : 0)
              + TableHeights.H2_MM
              + TableHeights.text(print.texts().say("wood.loads.lead"), width)
              + TableHeights.ROW_MM,
          TableHeights.ROW_MM,
          loads,
          row ->
              TableHeights.row(
                  List.of(
                      new Cell(row.part(), PART_SHARE * width),
                      new Cell(row.load(), FIGURE_SHARE * width),
                      new Cell(row.span(), FIGURE_SHARE * width),
                      new Cell(row.bends(), FIGURE_SHARE * width))));
    }

    WoodPages on(TableFlow flow) {
      return new WoodPages(lead, flow.place(movingTable()), flow.place(loadTable()));
    }
  }

  private static MovingRow row(Moving moving, PlanSet set, Texts texts) {
    String mark = moving.part().mark();
    return new MovingRow(
        mark,
        set.piece().mark(mark).title(),
        texts.species(moving.part().stock()),
        texts.lengthWithUnit(moving.part().finishedWidth()),
        small(moving.swells(), texts),
        small(moving.shrinks(), texts),
        room(moving.room(), texts));
  }

  private static String room(Room room, Texts texts) {
    return switch (room) {
      case Grooves grooves -> texts.say("wood.room.grooves", small(grooves.mm(), texts));
      case Travel travel -> texts.say("wood.room.travel", small(travel.mm(), texts));
      case Slotted slots -> texts.say("wood.room.slots", small(slots.mm(), texts));
      case Fastened fastened -> texts.say("wood.room.fastened");
      case Held held -> texts.say("wood.room.held", small(held.mm(), texts));
      case Joined joined -> texts.say("wood.room.joined");
      case Free free -> texts.say("wood.room.free");
    };
  }

  private static LoadRow row(Sag sag, PlanSet set, Texts texts) {
    String mark = sag.shelf().mark();
    return new LoadRow(
        mark,
        set.piece().mark(mark).title(),
        Cover.weight(sag.load().value().toDouble(), texts),
        small(sag.span(), texts),
        small(sag.bends(), texts),
        small(sag.inTime(), texts),
        small(sag.limit(), texts));
  }

  /** A computed length, to a hundredth of an inch or a tenth of a millimetre. */
  private static String small(double mm, Texts texts) {
    return texts.inUnits(in -> inUnit(mm, in));
  }

  private static String inUnit(double mm, Texts texts) {
    boolean inch = texts.format().unit() == Unit.INCH;
    String figure =
        inch
            ? String.format(Locale.ROOT, "%.2f", mm / MM_PER_INCH)
            : String.format(Locale.ROOT, "%.1f", mm);
    return texts.say(inch ? "wood.inch" : "wood.mm", texts.words().figures(figure));
  }
}
