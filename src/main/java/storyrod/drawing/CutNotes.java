package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** What a note says of each cut: the trade's word, how many, how deep, and for what. */
final class CutNotes {
  private final FlatPart flat;
  private final Piece piece;
  private final Words words;
  private final Map<String, CutNote> notes = new LinkedHashMap<>();

  private CutNotes(FlatPart flat, Piece piece, Words words) {
    this.flat = flat;
    this.piece = piece;
    this.words = words;
  }

  /**
   * A note on equal cuts.
   *
   * @param tips where its leader may point, in the frame of the flat part
   * @param rimMm how far from there the arrow ends, in mm of the part
   */
  record CutNote(Face view, int count, String words, List<Point> tips, double rimMm) {}

  static List<CutNote> of(FlatPart flat, Piece piece, Words words) {
    CutNotes notes = new CutNotes(flat, piece, words);
    flat.cuts().forEach(notes::add);
    return notes.notes.values().stream().map(notes::counted).toList();
  }

  private CutNote counted(CutNote note) {
    String said =
        note.count == 1 ? note.words : words.say("part.times", note.count, note.words);
    return new CutNote(note.view, note.count, said, note.tips, note.rimMm);
  }

  private void add(Cut cut) {
    Face view = PlacedView.home(flat, cut);
    CutNote note =
        switch (cut) {
          case Cut.Trench t -> new CutNote(view, 1, trench(t), tips(view, t.removed()), 0);
          case Cut.Holes h ->
              new CutNote(view, h.count(), holes(h), h.centres(), h.diameter().toMm() / 2);
          case Cut.PocketHoles p ->
              new CutNote(view, p.centres().size(), pockets(p), mouths(p), 0);
        };
    notes.merge(view + note.words, note, CutNotes::joined);
  }

  private static CutNote joined(CutNote one, CutNote other) {
    List<Point> tips = new ArrayList<>(one.tips);
    tips.addAll(other.tips);
    return new CutNote(one.view, one.count + other.count, one.words, tips, one.rimMm);
  }

  private String trench(Cut.Trench trench) {
    String said = cutFor(trench);
    if (PlacedView.home(flat, trench) != trench.from() && trench.from() != Face.BACK) {
      return said;
    }
    return deep(said, trench, trench.depth());
  }

  private String cutFor(Cut cut) {
    String term = term(cut);
    return forWhat(cut).map(what -> words.say("part.for", term, what)).orElse(term);
  }

  private String deep(String said, Cut cut, Length depth) {
    boolean through = !depth.isShorterThan(flat.size(cut.from().axis()));
    if (through) {
      return words.say("part.through", said);
    }
    String deep = words.say("part.deep", said, piece.description().format().format(depth));
    return cut.from() == Face.BACK ? words.say("part.far-face", deep) : deep;
  }

  private String holes(Cut.Holes holes) {
    String round =
        words.say("part.round", piece.description().format().format(holes.diameter()));
    String named =
        holes.term().equals("hole") ? round : words.say("part.named", round, term(holes));
    String deep =
        holes.through() ? words.say("part.through", named) : deep(named, holes, holes.depth());
    return forWhat(holes).map(what -> words.say("part.use", deep, what)).orElse(deep);
  }

  private String pockets(Cut.PocketHoles pockets) {
    String round =
        words.say(
            "part.slanted",
            cutFor(pockets),
            piece.description().format().format(pockets.diameter()),
            pockets.angleDegrees());
    return pockets.from() == Face.BACK
        ? words.say("part.far-face", round)
        : words.say("part.this-face", round);
  }

  private String term(Cut cut) {
    String key = "cut." + cut.term().replace(' ', '-');
    return words.has(key) ? words.say(key) : cut.term();
  }

  /** The mark of the part that goes in, or the title of the item. */
  private Optional<String> forWhat(Cut cut) {
    return cut.forWhat()
        .map(
            name ->
                piece.parts().stream()
                    .filter(part -> part.name().equals(name))
                    .map(Part::mark)
                    .findFirst()
                    .or(() -> item(name))
                    .orElse(name));
  }

  private Optional<String> item(String name) {
    return Optional.ofNullable(piece.description().items().get(name)).map(ItemEntry::title);
  }

  private List<Point> mouths(Cut.PocketHoles pockets) {
    return pockets.centres().stream()
        .map(centre -> Bores.mouth(flat, pockets, centre))
        .toList();
  }

  /** Points in the middle of a trench, along it. */
  private static List<Point> tips(Face view, Box removed) {
    List<Axis> axes = Measures.inPlane(view);
    Axis run =
        removed.size(axes.get(0)).isLongerThan(removed.size(axes.get(1)))
            ? axes.get(0)
            : axes.get(1);
    Point middle = new Point(at(removed.x(), 6), at(removed.y(), 6), at(removed.z(), 6));
    List<Point> tips = new ArrayList<>();
    for (int twelfths : new int[] {6, 3, 9, 1, 11}) {
      tips.add(middle.with(run, at(removed.on(run), twelfths)));
    }
    return tips;
  }

  private static Length at(Range range, int twelfths) {
    return range
        .from()
        .plus(range.length().times(twelfths).dividedBy(12, java.math.RoundingMode.FLOOR));
  }
}
