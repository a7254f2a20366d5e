package storyrod.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import storyrod.build.ShowFaces;
import storyrod.description.StockKind;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.TemplateText.Note;
import storyrod.drawing.TemplateText.Side;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Says what stands on a full-size template, in the words of the part's drawing. */
record TemplateWords(Piece piece, ShowFaces shows, Words words) {
  private static final double[] ALONG = {0.25, 0.75, 0.1, 0.9, 0.4, 0.6};

  /** What stands on the template of a whole outline with some of the part's holes. */
  TemplateText outline(Mark mark, FlatPart flat, List<Cut.Holes> holes, List<TruePath> bevels) {
    List<String> facing = new ArrayList<>(List.of(facing(mark, flat)));
    if (mark.mirrored() > 0) {
      facing.add(words.say("fullsize.handed", mark.same(), mark.mirrored()));
    } else if (mark.same() > 1) {
      facing.add(words.say("fullsize.alike", mark.same()));
    }
    String ends = words.say("fullsize.bevel", words.say("part.face." + flat.shown().word()));
    return new TemplateText(
        facing,
        sides(flat),
        grain(flat.part()),
        notes(flat, holes),
        bevels.stream().map(line -> new Note(ends, tips(line))).toList());
  }

  /** What stands on a strip for one row of holes. */
  TemplateText strip(Mark mark, FlatPart flat, Cut.Holes row) {
    return new TemplateText(
        List.of(facing(mark, flat)),
        sides(flat),
        grain(flat.part()),
        notes(flat, List.of(row)),
        List.of());
  }

  /** Points along a straight line. */
  private static List<At> tips(TruePath line) {
    At from = line.points().getFirst();
    At to = line.points().getLast();
    return Arrays.stream(ALONG)
        .mapToObj(share -> from.plus(share * (to.x() - from.x()), share * (to.y() - from.y())))
        .toList();
  }

  private String facing(Mark mark, FlatPart flat) {
    String face = words.say("part.face." + flat.shown().word());
    Optional<Face> show = shows.of(mark.shown());
    if (show.isEmpty() || show.get().axis() != flat.shown().axis()) {
      return words.say("fullsize.up", face);
    }
    return words.say(
        show.get() == flat.shown() ? "fullsize.face-side-up" : "fullsize.face-side-down", face);
  }

  private List<Side> sides(FlatPart flat) {
    return List.of(
        side(flat.right().opposite(), new At(-1, 0), "fullsize.end"),
        side(flat.right(), new At(1, 0), "fullsize.end"),
        side(flat.up(), new At(0, -1), "fullsize.edge"),
        side(flat.up().opposite(), new At(0, 1), "fullsize.edge"));
  }

  private Side side(Face face, At outward, String key) {
    return new Side(outward, words.say(key, words.say("edge." + face.word())));
  }

  private static Optional<At> grain(Part part) {
    boolean grained = part.stock().kind() == StockKind.SOLID || part.stock().grained();
    return grained ? Optional.of(new At(1, 0)) : Optional.empty();
  }

  /** The notes that the part's drawing would have if these were its only cuts. */
  private List<Note> notes(FlatPart flat, List<Cut.Holes> holes) {
    return CutNotes.of(flat.with(List.copyOf(holes)), piece, words).stream()
        .map(
            note ->
                new Note(
                    note.words(),
                    note.tips().stream().map(at -> TemplateShapes.at(flat, at)).toList()))
        .toList();
  }
}
