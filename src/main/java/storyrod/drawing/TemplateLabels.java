package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.NotePlacer.Terms;
import storyrod.drawing.TemplateText.Note;
import storyrod.words.Words;

/**
 * Says on one sheet what a template on it is: its name with the sheet's letter, the face that looks
 * up, grain, the names of its ends and edges, and notes on its holes.
 *
 * @param frame what the sheet shows, on its paper
 */
record TemplateLabels(Paper paper, Bounds frame, Words words) {
  private static final double GRID = 2;
  private static final double EDGE = 0.9;
  private static final double ARROW_BESIDE = 7.2;
  private static final double ARROW_BELOW = 3.6;
  private static final double ARROW = 18;

  /** How far outside its rectangle a template's notes may stand. */
  private static final double BESIDE = 3.5;

  /** Labels a template that lies on the paper. */
  void place(FullSize shape, String letter) {
    TemplateBody body = TemplateBody.of(shape);
    Paper.State before = paper.state();
    List<EdgeNames.Left> left = new EdgeNames(paper, frame, body).place();
    Notes notes = new Notes(body);
    if (!isNamed(body, letter)) {
      paper.backTo(before);
      name(body, letter, notes);
      left = new EdgeNames(paper, frame, body).place();
    }
    left.forEach(each -> notes.place(each.side().name(), each.points(), 0));
    shape.text().all().forEach(note -> placeNote(note, shape, notes));
  }

  /** Its name comes before the names of its edges, or a sliver on a full sheet has no name left. */
  private void name(TemplateBody body, String letter, Notes notes) {
    if (!isNamed(body, letter)) {
      notes.place(shortest(body.shape(), letter), tips(body), 0);
    }
  }

  /** The middle of what is seen, and points of the template around it. */
  private List<At> tips(TemplateBody body) {
    Bounds seen = visible(body.shape());
    List<At> tips = new ArrayList<>(List.of(seen.middle()));
    for (double way : new double[] {-0.2, 0.2, -0.4, 0.4}) {
      At tip = seen.middle().plus(way * seen.width(), way * seen.height());
      boolean tall = seen.height() > seen.width();
      At along = tall ? new At(seen.middle().x(), tip.y()) : new At(tip.x(), seen.middle().y());
      if (body.contains(new Bounds(along.x(), along.y(), along.x(), along.y()).widened(0.5))) {
        tips.add(along);
      }
    }
    return tips;
  }

  private void placeNote(Note note, FullSize shape, Notes notes) {
    double rim = rim(note, shape);
    List<At> whole = note.tips().stream().filter(frame.widened(-rim - 1)::contains).toList();
    List<At> tips = whole.isEmpty() ? note.tips().stream().filter(frame::contains).toList() : whole;
    if (!tips.isEmpty()) {
      notes.place(note.words(), tips, rim);
    }
  }

  private static double rim(Note note, FullSize shape) {
    return shape.holes().stream()
        .filter(hole -> hole.centre().distance(note.tips().getFirst()) < 1e-6)
        .mapToDouble(hole -> hole.diameterMm() / 2)
        .max()
        .orElse(0);
  }

  private Bounds visible(FullSize shape) {
    return shape.bounds().within(frame);
  }

  private String shortest(FullSize shape, String letter) {
    return words.say("fullsize.short", shape.name(), letter);
  }

  /** Labels from the fullest to the shortest. */
  private List<Label> labels(FullSize shape, String letter) {
    String title = words.say("fullsize.name", shape.name(), shape.mark().title(), letter);
    Label named = Label.of(TextStyle.MARK, title);
    Label brief = Label.of(TextStyle.MARK, shortest(shape, letter));
    List<Label> labels = new ArrayList<>();
    for (Label head : List.of(named, brief)) {
      Label full = head;
      for (String line : shape.text().facing()) {
        full = full.and(TextStyle.SMALL, line);
      }
      labels.add(grained(full, shape));
      labels.add(grained(head.and(TextStyle.SMALL, shape.text().facing().getFirst()), shape));
    }
    labels.add(brief);
    return labels;
  }

  private Label grained(Label label, FullSize shape) {
    return shape.text().grain().isPresent()
        ? label.and(TextStyle.SMALL, words.say("grain"))
        : label;
  }

  private boolean isNamed(TemplateBody body, String letter) {
    for (Label label : labels(body.shape(), letter)) {
      for (boolean level : new boolean[] {true, false}) {
        Optional<Bounds> room = room(body, label, level);
        if (room.isPresent()) {
          Label.place(List.of(label), room.get(), grainAcross(body.shape())).forEach(paper::add);
          return true;
        }
      }
    }
    return false;
  }

  private static Optional<Boolean> grainAcross(FullSize shape) {
    return shape.text().grain().map(along -> Math.abs(along.x()) > 0.5);
  }

  /** Room inside the template for a label with its grain arrow, as near the middle as can be. */
  private Optional<Bounds> room(TemplateBody body, Label label, boolean level) {
    Bounds visible = visible(body.shape());
    Size size = size(label, level, grainAcross(body.shape()));
    List<Bounds> rooms = new ArrayList<>();
    for (double y = visible.top() + EDGE; y + size.heightMm() < visible.bottom(); y += GRID) {
      for (double x = visible.left() + EDGE; x + size.widthMm() < visible.right(); x += GRID) {
        rooms.add(new Bounds(x, y, x + size.widthMm(), y + size.heightMm()));
      }
    }
    return rooms.stream()
        .sorted(Comparator.comparing(room -> room.middle().distance(visible.middle())))
        .filter(room -> isFree(body, room))
        .findFirst();
  }

  private boolean isFree(TemplateBody body, Bounds room) {
    return room.isIn(frame)
        && body.contains(room)
        && paper.isFree(
            new PlacedText("", 1, room.left(), room.top(), room.right(), room.bottom()));
  }

  private static Size size(Label label, boolean level, Optional<Boolean> grainAcross) {
    double along = label.width() + 2 * EDGE;
    double across = label.height() + 2 * EDGE;
    if (grainAcross.isPresent()) {
      boolean beside = grainAcross.get() != level;
      along = beside ? along + ARROW_BESIDE : Math.max(along, ARROW);
      across = beside ? Math.max(across, ARROW) : across + ARROW_BELOW;
    }
    return level ? new Size(along, across) : new Size(across, along);
  }

  /** Places notes beside the template they speak of, and elsewhere only if there is no room. */
  private final class Notes {
    private static final Terms TERMS = new Terms(0, 46);
    private final NotePlacer near;
    private final NotePlacer anywhere;

    Notes(TemplateBody body) {
      Size area = new Size(frame.width() + 2, frame.height() + 2);
      Bounds own = visible(body.shape());
      this.anywhere = new NotePlacer(paper, area);
      this.near = new NotePlacer(paper, area);
      near.keepIn(own.widened(BESIDE));
    }

    void place(String text, List<At> tips, double rim) {
      NotePlaces.Aim aim = new NotePlaces.Aim(tips, rim);
      if (near.place(text, aim, TERMS).isEmpty()) {
        anywhere.place(text, aim, TERMS);
      }
    }
  }
}
