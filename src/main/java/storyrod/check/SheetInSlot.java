package storyrod.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.wood.SheetTolerances;
import storyrod.wood.SheetTolerances.Tolerance;

/** Sheets that are thinner or thicker than the slots that are cut for them. */
final class SheetInSlot implements Check {
  private static final Length LOOSE = Length.micrometres(300);
  private static final double MM_PER_INCH = 25.4;
  private static final Length TIGHT = Length.micrometres(50);

  @Override
  public String code() {
    return "sheet-in-slot";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A sheet in a dado or groove is at most 0.3 mm (1/64 in and less) thinner than the slot and"
            + " not thicker. Where the sheet is not measured yet, the tolerance of its kind tells how"
            + " far it can be off.",
        "Tolerances after EN 315, PS 1-19, ANSI A208.2 and ANSI/HPVA HP-1 (the last from memory); the"
            + " fit is common practice.",
        "It takes one sheet to be as thick all over, and leaves out lids, which have room to slide.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Map<String, List<Slot>> slots = new LinkedHashMap<>();
    for (Part cut : piece.parts()) {
      for (Cut.Trench trench : cut.cuts(Cut.Trench.class)) {
        trench
            .forWhat()
            .filter(name -> piece.description().part(name).isPresent())
            .map(piece::part)
            .filter(part -> fills(part, trench))
            .ifPresent(
                part ->
                    slots
                        .computeIfAbsent(part.stock().name(), key -> new ArrayList<>())
                        .add(new Slot(trench, part)));
      }
    }
    return slots.values().stream().flatMap(all -> finding(piece, all).stream()).toList();
  }

  private record Slot(Cut.Trench trench, Part part) {
    Length width() {
      return trench.removed().size(part.thickness());
    }
  }

  /** Whether a sheet is to lie in a slot with its whole thickness and without play. */
  private static boolean fills(Part part, Cut.Trench trench) {
    Box removed = trench.removed();
    return part.stock().kind() == StockKind.SHEET
        && !part.pose().isTurned()
        && !trench.term().equals("lid groove")
        && trench.from().axis() != part.thickness()
        && !removed.size(part.thickness()).isShorterThan(part.finishedThickness());
  }

  private Optional<Diagnostic> finding(Piece piece, List<Slot> slots) {
    StockEntry stock = slots.getFirst().part().stock();
    Optional<Located<Length>> measured = stock.figures().measured();
    return measured.isPresent()
        ? misses(piece, slots, measured.get())
        : unmeasured(piece, slots, stock);
  }

  private Optional<Diagnostic> misses(Piece piece, List<Slot> slots, Located<Length> measured) {
    LengthFormat format = piece.description().format();
    return slots.stream()
        .filter(slot -> isOff(slot.width().minus(measured.value())))
        .findFirst()
        .map(
            slot ->
                Diagnostic.warning(
                        code(),
                        slot.trench().at(),
                        "the %s for %s is %s wide, but the sheet measures %s"
                            .formatted(
                                slot.trench().term(),
                                slot.part().name(),
                                format.formatWithUnit(slot.width()),
                                format.formatWithUnit(measured.value())))
                    .also(measured.at(), "the sheet was measured here")
                    .hint(
                        "set the stock's `thickness` to what was measured, and all slots and parts"
                            + " follow"));
  }

  private static boolean isOff(Length room) {
    return room.isLongerThan(LOOSE) || room.negated().isLongerThan(TIGHT);
  }

  private Optional<Diagnostic> unmeasured(Piece piece, List<Slot> slots, StockEntry stock) {
    double nominal = stock.thickness().value().toMm();
    LengthFormat format = piece.description().format();
    return SheetTolerances.of(stock.species(), nominal)
        .filter(tolerance -> tolerance.minus() > LOOSE.toMm() || tolerance.plus() > TIGHT.toMm())
        .map(
            tolerance ->
                Diagnostic.advice(
                        code(),
                        stock.thickness().at(),
                        "%s goes into slots of %s, %d in all, but such sheets come %s"
                            .formatted(
                                stock.name(),
                                format.formatWithUnit(slots.getFirst().width()),
                                slots.size(),
                                range(format, nominal, tolerance)))
                    .hint("measure the sheet before you cut the first slot")
                    .hint("write what it measures to the stock as `measured:`"));
  }

  /** From where to where such sheets come: in decimals, as a calliper shows it. */
  private static String range(LengthFormat format, double nominal, Tolerance tolerance) {
    double thin = nominal - tolerance.minus();
    double thick = nominal + tolerance.plus();
    return format.unit() == Unit.INCH
        ? String.format(
            Locale.ROOT,
            "from %.3f to %.3f in thick (%s)",
            thin / MM_PER_INCH,
            thick / MM_PER_INCH,
            tolerance.source())
        : String.format(
            Locale.ROOT, "from %.1f to %.1f mm thick (%s)", thin, thick, tolerance.source());
  }
}
