package storyrod.drawing;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Note;

/**
 * Whether a note could stand elsewhere on its drawing, all else as it is, with a leader that keeps
 * clear of all dimensions, of texts and of other leaders.
 */
final class WayRound {
  private static final double LONGEST_MM = 60;
  private static final double STEP_MM = 2.5;

  /** How far a leader stays off extension lines beside it. */
  private static final double OFF_MM = 0.5;

  /** What a text keeps clear of lines and texts. */
  private static final double CLEAR_MM = 0.8;

  private final Drawing drawing;
  private final Note note;
  private final Paper paper = new Paper();
  private final List<Paper.Stretch> hindrances = new ArrayList<>();

  WayRound(Drawing drawing, Note note) {
    this.drawing = drawing;
    this.note = note;
    List<Element> others =
        Clean.flat(drawing.elements()).stream().filter(each -> each != note).toList();
    others.forEach(paper::add);
    hindrances.addAll(paper.dimensions().lines());
    hindrances.addAll(paper.dimensions().extensions());
    Leaders.of(new Drawing("others", 1, 1, drawing.scale(), others))
        .forEach(each -> hindrances.add(each.line()));
  }

  /** Where the leader could end. */
  Optional<At> elbow() {
    for (double away = 5; away <= LONGEST_MM; away += STEP_MM) {
      for (int degrees = 20; degrees <= 340; degrees += degrees == 160 ? 40 : 10) {
        double turned = Math.toRadians(degrees);
        At elbow = note.tip().plus(away * Math.cos(turned), away * Math.sin(turned));
        if (isFree(elbow)) {
          return Optional.of(elbow);
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(At elbow) {
    boolean isRight = elbow.x() >= note.tip().x();
    At text = elbow.plus(isRight ? 2.8 : -2.8, Lowering.LEADER_ABOVE);
    Note moved =
        new Note(note.tip(), elbow, text, isRight ? Anchor.START : Anchor.END, note.lines());
    return Lowering.texts(moved).map(PlacedText::of).allMatch(this::isFree)
        && isFree(NotePlacer.leader(moved))
        && isFree(NotePlacer.landing(moved));
  }

  private boolean isFree(PlacedText text) {
    PlacedText room = text.widened(CLEAR_MM);
    return room.left() > 0
        && room.top() > 0
        && room.right() < drawing.widthMm()
        && room.bottom() < drawing.heightMm()
        && paper.isFree(room);
  }

  private boolean isFree(Paper.Stretch line) {
    return paper.missesTexts(line)
        && hindrances.stream().noneMatch(line::crosses)
        && paper.dimensions().extensions().stream().allMatch(each -> isOff(line, each));
  }

  /**
   * Whether none of two lines that do not cross ends so near to the other that they look as one.
   */
  private static boolean isOff(Paper.Stretch one, Paper.Stretch other) {
    return Stream.of(other.from(), other.to()).allMatch(each -> isOff(each, one))
        && Stream.of(one.from(), one.to()).allMatch(each -> isOff(each, other));
  }

  private static boolean isOff(At at, Paper.Stretch line) {
    At from = line.from();
    At to = line.to();
    return Line2D.ptSegDist(from.x(), from.y(), to.x(), to.y(), at.x(), at.y()) > OFF_MM;
  }
}
