package storyrod.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A row of parts that touch, whose printed sizes do not add up to the printed whole. */
final class RoundedRow implements Check {
  /** Less than this no tape shows. */
  static final Length SEEN = Length.inch(1, 64);

  private static final int FINEST = 128;

  /** Rows looked at for one whole; more would say the same again. */
  private static final int ROWS = 200;

  @Override
  public String code() {
    return "rounded-row";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Where parts lie end to end, as stiles and rails across a face frame, and another part or"
            + " the whole piece is as long as the row, the sizes as they are printed add up to the"
            + " printed whole, or miss it by less than 1/64 in (0.4 mm).",
        "Follows from rounding: each printed size is off by up to half of the finest fraction.",
        "It follows parts that touch face to face along an axis and have no cut that lengthens"
            + " them into the next one. Parts that lean are left out.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return Stream.of(Axis.values()).flatMap(axis -> findings(piece, axis).stream()).toList();
  }

  private List<Diagnostic> findings(Piece piece, Axis axis) {
    List<Part> parts =
        piece.parts().stream()
            .filter(part -> !part.pose().isTurned())
            .filter(part -> part.box().on(axis).equals(part.shoulder().on(axis)))
            .toList();
    Rows rows = new Rows(parts, axis);
    Set<String> told = new LinkedHashSet<>();
    List<Diagnostic> found = new ArrayList<>();
    for (Whole whole : wholes(piece, parts, axis)) {
      rows.of(whole.range()).stream()
          .filter(row -> !off(row, axis, piece.description().format()).abs().isShorterThan(SEEN))
          .filter(row -> told.add(sizes(row, axis, piece.description().format())))
          .forEach(row -> found.add(finding(piece, whole, row, axis)));
    }
    return found;
  }

  /** A size that is printed: that of a part, or of the piece. */
  private record Whole(Optional<Part> part, Range range) {}

  private static List<Whole> wholes(Piece piece, List<Part> parts, Axis axis) {
    List<Whole> wholes = new ArrayList<>();
    Set<Range> known = new LinkedHashSet<>();
    for (Part part : parts) {
      if (known.add(part.box().on(axis))) {
        wholes.add(new Whole(Optional.of(part), part.box().on(axis)));
      }
    }
    piece.parts().stream()
        .map(part -> part.bounds().on(axis))
        .reduce(Range::around)
        .filter(known::add)
        .ifPresent(all -> wholes.add(new Whole(Optional.empty(), all)));
    return wholes;
  }

  /** The rows of parts that touch each other along an axis. */
  private record Rows(List<Part> parts, Axis axis) {
    /** Rows of two parts or more from one end of a range to the other. */
    List<List<Part>> of(Range whole) {
      List<List<Part>> rows = new ArrayList<>();
      Deque<List<Part>> open = new ArrayDeque<>();
      parts.stream()
          .filter(part -> part.box().on(axis).from().equals(whole.from()))
          .filter(part -> part.box().on(axis).to().isShorterThan(whole.to()))
          .forEach(part -> open.add(List.of(part)));
      for (int tried = 0; tried < ROWS && !open.isEmpty(); tried++) {
        List<Part> row = open.removeFirst();
        for (Part next : nextTo(row.getLast())) {
          List<Part> longer = Stream.concat(row.stream(), Stream.of(next)).toList();
          Length end = next.box().on(axis).to();
          if (end.equals(whole.to())) {
            rows.add(longer);
          } else if (end.isShorterThan(whole.to())) {
            open.addLast(longer);
          }
        }
      }
      return rows;
    }

    private List<Part> nextTo(Part part) {
      return parts.stream()
          .filter(next -> next.box().on(axis).from().equals(part.box().on(axis).to()))
          .filter(
              next ->
                  Stream.of(Axis.values())
                      .filter(other -> other != axis)
                      .allMatch(other -> next.box().on(other).overlaps(part.box().on(other))))
          .toList();
    }
  }

  /** What the printed sizes of a row make more than the printed whole. */
  private static Length off(List<Part> row, Axis axis, LengthFormat format) {
    Length printed =
        row.stream()
            .map(part -> format.rounded(part.box().size(axis)))
            .reduce(Length.ZERO, Length::plus);
    return printed.minus(format.rounded(whole(row, axis)));
  }

  private static Length whole(List<Part> row, Axis axis) {
    return row.getLast().box().on(axis).to().minus(row.getFirst().box().on(axis).from());
  }

  private static String sizes(List<Part> row, Axis axis, LengthFormat format) {
    return row.stream()
        .map(part -> format.format(part.box().size(axis)))
        .collect(Collectors.joining(" + "));
  }

  private Diagnostic finding(Piece piece, Whole whole, List<Part> row, Axis axis) {
    LengthFormat format = piece.description().format();
    Length off = off(row, axis, format);
    String names = row.stream().map(Part::name).collect(Collectors.joining(", "));
    String of = whole.part().map(Part::name).orElse("the piece");
    Diagnostic finding =
        Diagnostic.advice(
                code(),
                row.getFirst().at(),
                "the printed sizes of %s along %s are %s, which makes %s %s than the %s of %s"
                    .formatted(
                        names,
                        axis.name().toLowerCase(java.util.Locale.ROOT),
                        sizes(row, axis, format),
                        format.forBits().formatWithUnit(off.abs()),
                        off.isNegative() ? "less" : "more",
                        format.formatWithUnit(whole(row, axis)),
                        of))
            .hint(wayOut(row, axis, format));
    return whole.part().map(part -> finding.also(part.at(), "this is the whole")).orElse(finding);
  }

  private static String wayOut(List<Part> row, Axis axis, LengthFormat format) {
    if (format.unit() == Unit.MM) {
      return "choose sizes in whole tenths of a millimetre, or cut the last part of the row to fit";
    }
    for (int finer = format.denominator() * 2; finer <= FINEST; finer *= 2) {
      LengthFormat other = new LengthFormat(Unit.INCH, finer);
      if (off(row, axis, other).isZero()) {
        return "write `fraction: 1/%d`, with which they add up; or cut the last part of the row to fit"
            .formatted(finer);
      }
    }
    return "choose sizes in whole 64ths of an inch, or cut the last part of the row to fit";
  }
}
