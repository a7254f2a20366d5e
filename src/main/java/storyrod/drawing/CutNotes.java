package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.FrontHoles;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;
import storyrod.words.Words;

/** What a note says of each cut: the trade's word, how many, how deep, and for what. */
final class CutNotes {
  private static final List<String> SIZED = List.of("mortise", Cut.Trench.HAUNCH_SOCKET);

  private final FlatPart flat;
  private final Piece piece;
  private final Words words;
  private final CutTerms terms;
  private final CutUses uses;
  private final Map<String, Equal> notes = new LinkedHashMap<>();

  private CutNotes(FlatPart flat, Piece piece, Words words) {
    this.flat = flat;
    this.piece = piece;
    this.words = words;
    this.terms = new CutTerms(words);
    this.uses = new CutUses(piece, words);
  }

  /**
   * A note on equal cuts.
   *
   * @param tips where its leader may point, in the frame of the flat part
   * @param rimMm how far from there the arrow ends, in mm of the part
   */
  record CutNote(Face view, String words, List<Point> tips, double rimMm) {}

  /** Equal cuts. */
  private record Equal(List<Cut> cuts, int count, List<Point> tips, double rimMm) {
    Equal(Cut cut, int count, List<Point> tips, double rimMm) {
      this(List.of(cut), count, tips, rimMm);
    }

    Equal and(Equal other) {
      return new Equal(both(cuts, other.cuts), count + other.count, both(tips, other.tips), rimMm);
    }

    private static <T> List<T> both(List<T> some, List<T> others) {
      return Stream.concat(some.stream(), others.stream()).toList();
    }
  }

  static List<CutNote> of(FlatPart flat, Piece piece, Words words) {
    CutNotes notes = new CutNotes(flat, piece, words);
    flat.cuts().stream().filter(cut -> !isCurve(cut)).forEach(notes::add);
    List<CutNote> all = new ArrayList<>(notes.notes.values().stream().map(notes::counted).toList());
    all.addAll(CurveNotes.of(flat, piece.description().printed(), words));
    return all;
  }

  /** Whether {@link CurveNotes} speak of it. */
  private static boolean isCurve(Cut cut) {
    return cut instanceof Cut.Shaped || cut instanceof Cut.Roundover;
  }

  private CutNote counted(Equal equal) {
    Cut first = equal.cuts.getFirst();
    String said =
        first instanceof Cut.Tenon tenon
            ? forParts(tenon(tenon, equal.count), equal.cuts)
            : said(first, equal.count);
    String counted = equal.count == 1 ? said : words.say("part.times", equal.count, said);
    return new CutNote(PlacedView.home(flat, first), counted, equal.tips, equal.rimMm);
  }

  private void add(Cut cut) {
    Face view = PlacedView.home(flat, cut);
    Equal one =
        switch (cut) {
          case Cut.Trench t -> new Equal(t, 1, TrenchTips.of(flat, view, t), 0);
          case Cut.Tenon t -> new Equal(t, 1, List.of(Tenons.middle(t)), 0);
          case Comb c -> new Equal(c, 1, CombNotes.tips(c), 0);
          case Cut.Holes h -> new Equal(h, h.count(), h.centres(), h.mouth().toMm() / 2);
          case Cut.Shaped s -> throw curve(s);
          case Cut.Roundover r -> throw curve(r);
          case PocketHoles p -> new Equal(p, p.centres().size(), mouths(p), 0);
          case Slanted.Slope s -> new Equal(s, 1, SlantedNotes.tips(flat, s), 0);
          case Dovetails d -> new Equal(d, 1, DovetailNotes.tips(d), 0);
          case SplineSlot s -> new Equal(s, 1, SplineNotes.tips(s), 0);
          case Slanted.Housing h -> new Equal(h, 1, TrenchTips.along(view, h.removed()), 0);
          case Slots s -> new Equal(s, s.count(), s.centres(), s.width().toMm() / 2);
          case InPlace i ->
              new Equal(
                  i, i.bores().size(), i.bores().stream().map(InPlace.Bore::mouth).toList(), 0);
        };
    notes.merge(view + said(cut, 1), one, Equal::and);
  }

  private String said(Cut cut, int count) {
    return switch (cut) {
      case Cut.Trench t -> trench(t, count);
      case Cut.Tenon t -> tenon(t, count);
      case Comb c -> CombNotes.said(cutFor(c, count), c, words, piece.description().printed());
      case Cut.Holes h -> holes(h, count);
      case Cut.Shaped s -> throw curve(s);
      case Cut.Roundover r -> throw curve(r);
      case PocketHoles p -> pockets(p, count);
      case Slanted.Slope s -> new SlantedNotes(words, piece.description().printed()).said(s);
      case Dovetails d ->
          new DovetailNotes(piece.description().printed(), words).said(d, uses.of(d).orElse(""));
      case SplineSlot s -> new SplineNotes(piece.description().printed(), words).said(flat, s);
      case Slanted.Housing h -> terms.leaning(deep(cutFor(h, count), h, h.depth()), h);
      case Slots s -> slots(s, count);
      case InPlace i -> inPlace(i, count);
    };
  }

  private static IllegalStateException curve(Cut cut) {
    return new IllegalStateException("bug: the curve notes speak of a " + cut.term());
  }

  private String trench(Cut.Trench trench, int count) {
    String said = cutFor(trench, count);
    if (PlacedView.home(flat, trench) != trench.from() && trench.from() != Face.BACK) {
      return said;
    }
    return stopping(deep(said, trench, trench.depth()), trench);
  }

  /** Where its ends have no figures, for what else they stand in line; a size tells of both. */
  private String stopping(String said, Cut.Trench trench) {
    Optional<String> other = new SharedStops(flat).of(trench).flatMap(uses::of);
    return SIZED.contains(trench.term()) || other.equals(uses.of(trench))
        ? said
        : other.map(what -> words.say("part.in-line", said, what)).orElse(said);
  }

  /** Equal ones on opposite ends show as one, whatever they go into. */
  private String tenon(Cut.Tenon tenon, int count) {
    String size = Tenons.size(tenon, piece.description().printed(), words);
    return words.say("part.sized", size, terms.tenon(tenon, count));
  }

  private String cutFor(Cut cut, int count) {
    return forParts(sized(cut, terms.of(cut, count)), List.of(cut));
  }

  private String forParts(String said, List<Cut> cuts) {
    return uses.of(cuts).map(what -> words.say("part.for", said, what)).orElse(said);
  }

  /** A mortise, or the socket beside it, is named by its width and its length. */
  private String sized(Cut cut, String term) {
    if (!(cut instanceof Cut.Trench mortise) || !SIZED.contains(cut.term())) {
      return term;
    }
    LengthFormat format = piece.description().printed();
    List<Length> sizes =
        DimensionSides.inPlane(cut.from()).stream().map(mortise.removed()::size).sorted().toList();
    String size =
        words.say("size.two", format.format(sizes.getFirst()), format.format(sizes.getLast()));
    return words.say("part.sized", size, term);
  }

  private String deep(String said, Cut cut, Length depth) {
    boolean through = !depth.isShorterThan(flat.size(cut.from().axis()));
    if (through) {
      return words.say("part.through", said);
    }
    String deep = words.say("part.deep", said, piece.description().printed().format(depth));
    return cut.from() == Face.BACK ? words.say("part.far-face", deep) : deep;
  }

  private String holes(Cut.Holes holes, int count) {
    String said = holesAlone(holes, count);
    return new FrontHoles(piece)
        .guide(flat.part(), holes)
        .map(front -> words.say("part.in-place", said, front.mark()))
        .orElse(said);
  }

  private String holesAlone(Cut.Holes holes, int count) {
    String round = words.say("part.round", bits().format(holes.diameter()));
    String named =
        holes.term().equals("hole")
            ? round
            : words.say("part.named", round, terms.of(holes, count));
    String through =
        holes.through() ? words.say("part.through", named) : deep(named, holes, holes.depth());
    String deep = countersunk(through, holes);
    String use = uses.of(holes).map(what -> words.say("part.use", deep, what)).orElse(deep);
    return uses.isSunkBehind(holes, flat.part()) ? words.say("part.sunk-behind", use) : use;
  }

  /** Width and length, and how the ends are; the depth is that in the middle. */
  private String slots(Slots slots, int count) {
    LengthFormat format = piece.description().printed();
    String size =
        words.say("size.two", format.format(slots.width()), format.format(slots.length()));
    String form = slots.form().name().toLowerCase(Locale.ROOT).replace('_', '-');
    String named = words.say("part." + form, words.say("part.sized", size, cutFor(slots, count)));
    return slots.through() ? words.say("part.through", named) : deep(named, slots, slots.depth());
  }

  private String countersunk(String said, Cut.Holes holes) {
    if (holes.countersink().isZero()) {
      return said;
    }
    String sunk = words.say("part.countersunk", said, bits().format(holes.countersink()));
    boolean farFace = holes.from() == Face.BACK && holes.through();
    return farFace ? words.say("part.far-face", sunk) : sunk;
  }

  private String pockets(PocketHoles pockets, int count) {
    String round = terms.slanted(cutFor(pockets, count), pockets, bits());
    return pockets.from() == Face.BACK
        ? words.say("part.far-face", round)
        : words.say("part.this-face", round);
  }

  private String inPlace(InPlace cut, int count) {
    String round = words.say("part.round", bits().format(cut.diameter()));
    String named = words.say("part.named", round, terms.of(cut, count));
    String said = words.say("part.in-place", named, uses.part(cut.through()));
    return cut.from() == Face.BACK ? words.say("part.far-face", said) : said;
  }

  private LengthFormat bits() {
    return piece.description().printed().forBits();
  }

  private List<Point> mouths(PocketHoles pockets) {
    return pockets.centres().stream().map(centre -> Bores.mouth(flat, pockets, centre)).toList();
  }
}
