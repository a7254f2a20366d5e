package storyrod.piece;

import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/** Holds the part that a kept piece becomes against what the tool leaves of the opening. */
record KeptFit(Entry entry, KeptCutout kept, Blank board, Blank part, LengthFormat format) {
  /** The first thing that is wrong, with the ranges that would be right. */
  Optional<Diagnostic> fault() {
    if (part.name().equals(board.name())) {
      return Optional.of(
          error("kept-twice", "a piece cut out of " + board.name() + " cannot become that part")
              .hint("name another part under `kept-as:`"));
    }
    if (!part.stock().name().equals(board.stock().name())) {
      return Optional.of(
          error(
                  "kept-stock",
                  "%s is of %s, but it is cut out of %s, which is of %s"
                      .formatted(
                          part.name(), part.stock().name(), board.name(), board.stock().name()))
              .also(part.at(), part.name() + " is defined here")
              .hint("write `stock: " + board.stock().name() + "` for " + part.name()));
    }
    if (!kept.keptLength().isPositive() || !kept.keptWidth().isPositive()) {
      return Optional.of(nothingLeft());
    }
    return closesOpening() && part.length() != board.length() ? Optional.of(grain()) : size();
  }

  private Diagnostic error(String code, String message) {
    return Diagnostic.error(code, entry.at("kept-as"), message);
  }

  private Diagnostic nothingLeft() {
    return error(
            "kept-size",
            "nothing is left of an opening of %s with gaps of %s at each end and %s on each side"
                .formatted(
                    sizes(kept.along().length(), kept.across().length()),
                    format.formatWithUnit(kept.endGap()),
                    format.formatWithUnit(kept.sideGap())))
        .hint("make the opening larger or the gap smaller");
  }

  /** Whether the part lies in the opening it comes from, as a front or a door does. */
  private boolean closesOpening() {
    return part.thickness() == board.thickness()
        && part.box().on(kept.length()).overlaps(kept.along())
        && part.box().on(kept.width()).overlaps(kept.across());
  }

  private Diagnostic grain() {
    return error(
            "kept-grain",
            "the grain of %s runs along %s, but the piece it is cut from runs along %s"
                .formatted(part.name(), part.length().word(), board.length().word()))
        .also(part.at(), part.name() + " is defined here")
        .hint("write `grain: " + board.length().word() + "` for " + part.name());
  }

  private Optional<Diagnostic> size() {
    Length length = part.box().size(part.length());
    Length width = part.box().size(Axis.other(part.length(), part.thickness()));
    if (length.equals(kept.keptLength()) && width.equals(kept.keptWidth())) {
      return Optional.empty();
    }
    Diagnostic fault =
        error(
                "kept-size",
                "%s is %s, but the %s leaves %s of this opening"
                    .formatted(
                        part.name(),
                        sizes(length, width),
                        kept.method().word(),
                        sizes(kept.keptLength(), kept.keptWidth())))
            .also(part.at(), part.name() + " is defined here");
    if (!part.box().equals(part.shoulder())) {
      return Optional.of(
          fault.hint("a joint lengthens it: let a joint lengthen only what is not cut out"));
    }
    return Optional.of(fault.hint(closesOpening() ? ranges() : otherSize()));
  }

  private String ranges() {
    return "write `%s: %s` and `%s: %s` for %s"
        .formatted(
            kept.length().word(),
            range(kept.length(), kept.along(), endGap()),
            kept.width().word(),
            range(kept.width(), kept.across(), sideGap()),
            part.name());
  }

  private String otherSize() {
    return "make it %s long and %s wide"
        .formatted(exact(kept.keptLength()), exact(kept.keptWidth()));
  }

  private String endGap() {
    return switch (kept.method()) {
      case SAW, LASER -> written("kerf", kept.kerf());
      case ROUTER -> written("cutter", kept.kerf());
    };
  }

  private String sideGap() {
    return kept.isSawn() ? written("gap", kept.gap()) : endGap();
  }

  /** The cutout's own words for a range, less a gap at each end. */
  private String range(Axis axis, Range opening, String gap) {
    String[] ends =
        entry.has(axis.word()) ? text(entry.at(axis.word())).split("\\s+to\\s+") : new String[0];
    return ends.length == 2
        ? "%s + %s to %s - %s".formatted(ends[0].strip(), gap, ends[1].strip(), gap)
        : "%s + %s to %s - %s".formatted(exact(opening.from()), gap, exact(opening.to()), gap);
  }

  private String written(String key, Length value) {
    String said = entry.has(key) ? text(entry.at(key)).strip() : exact(value);
    return said.matches(".* [+-] .*") ? "(" + said + ")" : said;
  }

  private static String text(Span span) {
    return span.source().text().substring(span.start(), span.end());
  }

  /** A length as it can be written in a description without losing any of it. */
  private String exact(Length length) {
    String printed = format.formatWithUnit(length);
    return Length.parse(printed).equals(length)
        ? printed
        : length.toMmExact().toPlainString() + " mm";
  }

  private String sizes(Length length, Length width) {
    return format.format(length) + " x " + format.formatWithUnit(width);
  }
}
