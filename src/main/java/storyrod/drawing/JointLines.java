package storyrod.drawing;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;
import storyrod.words.Words;

/** Says of the cuts of a joint what they are called and which figures make them. */
record JointLines(Part part, Notation notation) {
  static List<JointLine> of(JointPart part, Notation notation) {
    JointLines lines = new JointLines(part.part(), notation);
    Map<String, List<Cut>> alike =
        part.cuts().stream()
            .collect(
                Collectors.groupingBy(
                    cut -> lines.said(cut, 1), LinkedHashMap::new, Collectors.toList()));
    return alike.values().stream()
        .map(rows -> lines.said(rows.getFirst(), rows.size()))
        .map(said -> new JointLine(part.part().mark(), said))
        .toList();
  }

  /**
   * What is said of a cut.
   *
   * @param rows how many like it the joint has: holes are counted as their fasteners are
   */
  private String said(Cut cut, int rows) {
    return switch (cut) {
      case Cut.Trench trench -> trench(trench);
      case Cut.Tenon tenon -> tenon(tenon);
      case Comb comb -> CombNotes.said(terms().of(comb, 1), comb, words(), format());
      case Cut.Holes holes -> holes(holes, rows);
      case Cut.Shaped shaped -> terms().of(shaped, 1);
      case Cut.Roundover roundover -> words().say("part.roundover", length(roundover.radius()));
      case PocketHoles pockets -> pockets(pockets, rows);
      case Slanted.Slope slope -> new SlantedNotes(words(), format()).said(slope);
      case Dovetails row -> dovetails(row);
      case SplineSlot slot -> new SplineNotes(format(), words()).said(slot);
      case Slanted.Housing housing -> housing(housing);
      case Slots slots -> slots(slots, rows);
      case InPlace bores -> inPlace(bores, rows * bores.bores().size());
    };
  }

  /** Its width and depth, and its length where it ends on both sides inside the part. */
  private String trench(Cut.Trench trench) {
    List<Axis> axes =
        DimensionSides.inPlane(trench.from()).stream()
            .sorted(Comparator.comparing(trench.removed()::size))
            .toList();
    List<Length> sizes =
        axes.stream()
            .filter(axis -> axis == axes.getFirst() || isInside(trench, axis))
            .filter(axis -> !trench.removed().on(axis).equals(part.box().on(axis)))
            .map(trench.removed()::size)
            .toList();
    String named = terms().of(trench, 1);
    String wide =
        switch (sizes.size()) {
          case 0 -> named;
          case 1 -> say("joinery.wide", named, length(sizes.getFirst()));
          default -> say("joinery.long", named, length(sizes.getFirst()), length(sizes.getLast()));
        };
    return deep(wide, trench.depth(), trench.from());
  }

  private boolean isInside(Cut.Trench trench, Axis axis) {
    Range own = trench.removed().on(axis);
    Range whole = part.box().on(axis);
    return own.from().isLongerThan(whole.from()) && own.to().isShorterThan(whole.to());
  }

  private String deep(String said, Length depth, Face from) {
    boolean through = !depth.isShorterThan(part.box().size(from.axis()));
    return through ? say("part.through", said) : say("part.deep", said, length(depth));
  }

  private String tenon(Cut.Tenon tenon) {
    List<Axis> across = DimensionSides.inPlane(tenon.from());
    Axis thin =
        across.stream().min(Comparator.comparing(axis -> tenon.tenon().size(axis))).orElseThrow();
    Axis wide = Axis.other(tenon.from().axis(), thin);
    String said =
        say(
            "joinery.tenon",
            terms().tenon(tenon, 1),
            length(tenon.tenon().size(thin)),
            length(tenon.tenon().size(wide)),
            length(tenon.length()));
    return shoulders(tenon)
        .map(shoulders -> say("joinery.shoulders", said, shoulders))
        .orElse(said);
  }

  /** How far it is set in, each figure once; nothing where it is flush all round. */
  private Optional<String> shoulders(Cut.Tenon tenon) {
    String figures =
        Stream.of(Face.values())
            .filter(face -> face.axis() != tenon.from().axis())
            .map(tenon::shoulder)
            .filter(Length::isPositive)
            .sorted()
            .map(this::length)
            .distinct()
            .collect(Collectors.joining(", "));
    return Optional.of(figures).filter(each -> !each.isEmpty());
  }

  private String holes(Cut.Holes holes, int rows) {
    Rows all = new Rows(rows, holes.count(), holes.step().abs());
    String round = say("joinery.round", terms().of(holes, all.total()), bits(holes.diameter()));
    String deep =
        holes.through() ? say("part.through", round) : deep(round, holes.depth(), holes.from());
    String sunk =
        holes.countersink().isZero()
            ? deep
            : say("part.countersunk", deep, bits(holes.countersink()));
    return counted(sunk, all);
  }

  private String inPlace(InPlace bores, int count) {
    String round = say("joinery.round", terms().of(bores, count), bits(bores.diameter()));
    return count == 1 ? round : say("part.times", count, round);
  }

  private String pockets(PocketHoles pockets, int rows) {
    int count = pockets.centres().size();
    Rows all = new Rows(rows, count, count > 1 ? apart(pockets) : Length.ZERO);
    String named = terms().of(pockets, all.total());
    return counted(terms().slanted(named, pockets, format().forBits()), all);
  }

  private static Length apart(PocketHoles pockets) {
    return Stream.of(Axis.values())
        .map(
            axis ->
                pockets.centres().get(1).on(axis).minus(pockets.centres().get(0).on(axis)).abs())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private String slots(Slots slots, int rows) {
    Rows all = new Rows(rows, slots.count(), slots.step().abs());
    String named =
        say(
            "joinery.long",
            terms().of(slots, all.total()),
            length(slots.width()),
            length(slots.length()));
    String deep =
        slots.through() ? say("part.through", named) : deep(named, slots.depth(), slots.from());
    return counted(deep, all);
  }

  /** Rows of as many holes each, so far apart. */
  private record Rows(int rows, int count, Length step) {
    int total() {
      return rows * count;
    }
  }

  /** How far they are apart, but for a figure that rounding would make wrong over a row. */
  private String counted(String said, Rows all) {
    String times = all.total() == 1 ? said : say("part.times", all.total(), said);
    if (all.count == 1) {
      return times;
    }
    String apart =
        format().rounded(all.step).equals(all.step)
            ? say("joinery.apart", times, length(all.step))
            : say("joinery.evenly", times);
    return all.rows == 1 ? apart : say("joinery.rows", apart, all.rows);
  }

  private String dovetails(Dovetails row) {
    int count = row.tails().size();
    return say(
        "joinery.dovetails",
        terms().of(row, count),
        say(count == 1 ? "part.tail" : "part.tails", count),
        words().figures(row.slopeWord()),
        length(row.length()));
  }

  /** As wide as its dimension in the part's drawing and its step say, in fine fractions. */
  private String housing(Slanted.Housing housing) {
    String mouth = bits(housing.mouth().length());
    String wide = say("joinery.wide-in-face", terms().of(housing, 1), mouth);
    return terms().leaning(deep(wide, housing.depth(), housing.from()), housing);
  }

  private CutTerms terms() {
    return new CutTerms(words());
  }

  private String say(String key, Object... values) {
    return words().say(key, values);
  }

  private String length(Length length) {
    return format().format(length);
  }

  private String bits(Length length) {
    return format().forBits().format(length);
  }

  private Words words() {
    return notation.words();
  }

  private LengthFormat format() {
    return notation.format();
  }
}
