package storyrod.drawing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.words.Words;

/**
 * An enlarged detail of a part's drawing.
 *
 * @param features the joints that it shows
 */
record Detail(Name name, Scale scale, DetailView view, List<FineFeature> features, Said said) {
  private static final double LEAST_RING = 2.5;
  private static final double ROUND = 1;
  private static final double ABOVE = 3;
  private static final double NOTE_ROOM = 20;

  Detail {
    features = List.copyOf(features);
  }

  /**
   * What stands in a detail.
   *
   * @param moved dimensions that the drawing had and that stand in the detail instead
   * @param told further dimensions in brackets, which repeat what a note says
   * @param notes how sides lean
   */
  record Said(List<Moves> moved, List<Wanted> told, List<CutNote> notes) {
    Said {
      moved = List.copyOf(moved);
      told = List.copyOf(told);
      notes = List.copyOf(notes);
    }

    private List<Wanted> dimensions() {
      return Stream.concat(moved.stream().map(Moves::now), told.stream()).toList();
    }
  }

  /** What a detail is called: its part's mark and a number. */
  record Name(String mark, int number) {
    @Override
    public String toString() {
      return mark + number;
    }
  }

  /** A dimension as the drawing had it, and as it stands in the detail. */
  record Moves(Wanted before, Wanted now) {}

  /** The view's outline, its dimensions and its caption; nothing where these find no room. */
  Optional<Group> drawn(Shown shown, Words words) {
    Paper paper = new Paper();
    view.elements(shown).forEach(paper::add);
    if (!Tiers.place(paper, view, said.dimensions()) || !annotate(paper)) {
      return Optional.empty();
    }
    String title = words.say("part.detail", name.toString(), scale.toString());
    Bounds bounds = paper.bounds();
    double foot = bounds.top() - ABOVE;
    Drawing.At at = new Drawing.At(view.bounds().left(), foot);
    paper.add(new Text(TextStyle.MARK, at, Anchor.START, true, title));
    return Optional.of(new Group("detail-" + name, name.mark, title, paper.elements()));
  }

  private boolean annotate(Paper paper) {
    Bounds bounds = paper.bounds();
    Size room = new Size(bounds.width() + 2 * NOTE_ROOM, bounds.height() + 2 * NOTE_ROOM);
    return new AllNotes(paper, new NotePlacer(paper, room), Map.of(view.face(), view))
        .place(said.notes, () -> true);
  }

  /** The ring in the drawing round what the detail shows. */
  Ellipse ring(PlacedView in) {
    double radius = radius(in.factor());
    return new Ellipse(Role.DIMENSION, in.at(middle()), radius, radius, 0, Optional.empty());
  }

  /** The name at the ring. */
  CutNote reference(double factor, Words words) {
    String text = words.say("part.detail-at", name.toString());
    return new CutNote(view.face(), text, List.of(middle()), radius(factor) / factor);
  }

  private double radius(double factor) {
    Box box = box();
    double[] half =
        DimensionSides.inPlane(view.face()).stream()
            .mapToDouble(axis -> box.size(axis).toMm() * factor / 2)
            .toArray();
    return Math.max(LEAST_RING, Math.hypot(half[0], half[1]) + ROUND);
  }

  private Point middle() {
    return box().middle();
  }

  /** What of the joints the detail shows. */
  private Box box() {
    Box all = features.stream().map(FineFeature::box).reduce(Box::around).orElseThrow();
    return all.shared(view.window()).orElse(view.window());
  }
}
