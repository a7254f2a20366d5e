package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.StockKind;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.piece.Part;
import storyrod.words.Words;

/** The mark and the grain arrow: on the face where they find room, else beside it. */
final class FaceLabels {
  private static final double GRID = 2;
  private static final double ARROW = 16;
  private static final double BETWEEN = 2;
  private static final double CLEAR = 1.2;
  private static final double PER_HEIGHT = 1.5;

  /** More than what rounding makes of a cost. */
  private static final double ROUNDING = 1e-6;

  private final Paper paper;
  private final Bounds face;
  private final Size area;

  FaceLabels(Paper paper, PlacedView front, Size area) {
    this.paper = paper;
    this.face = front.bounds();
    this.area = area;
  }

  /** Puts mark and grain on the paper; false if there is no room. */
  boolean place(Part part, String mark, Words words) {
    double ring = 2 * Lowering.BALLOON_RADIUS;
    Optional<At> corner = put(ring, ring, true);
    corner
        .map(at -> at.plus(ring / 2, ring / 2))
        .ifPresent(centre -> paper.add(new Balloon(centre, centre, mark)));
    boolean grained = part.stock().kind() == StockKind.SOLID || part.stock().grained();
    return corner.isPresent() && (!grained || placeGrain(words.say("grain")));
  }

  private boolean placeGrain(String word) {
    double width = ARROW + BETWEEN + TextSetting.of(TextStyle.SMALL, word).width();
    Optional<At> corner = put(width, TextStyle.SMALL.sizeMm(), false);
    corner.ifPresent(at -> grain(at, word).forEach(paper::add));
    return corner.isPresent();
  }

  /** Says which face is seen and which way up it lies; false if there is no room. */
  boolean name(FlatPart flat, Words words) {
    String face = words.say("part.face." + flat.shown().word());
    String said = words.say("part.shown", face, words.say("part.up." + flat.up().word()));
    double size = TextStyle.SMALL.sizeMm();
    Optional<At> corner = put(TextSetting.of(TextStyle.SMALL, said).width(), size, false);
    corner
        .map(at -> at.plus(0, size * TextSetting.ASCENT))
        .ifPresent(at -> paper.add(new Text(TextStyle.SMALL, at, Anchor.START, true, said)));
    return corner.isPresent();
  }

  private static List<Element> grain(At corner, String word) {
    double middle = corner.y() + TextStyle.SMALL.sizeMm() / 2;
    List<Element> elements = new ArrayList<>();
    elements.add(new Arrow(new At(corner.x(), middle), new At(corner.x() + ARROW, middle), true));
    At base = new At(corner.x() + ARROW + BETWEEN, middle + 0.85);
    elements.add(new Text(TextStyle.SMALL, base, Anchor.START, true, word));
    return elements;
  }

  /** The top left corner of a free rectangle: on the face, lowest and leftmost, else near by. */
  private Optional<At> put(double width, double height, boolean high) {
    Optional<At> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    Bounds now = paper.bounds();
    double wanted = high ? face.top() + 4 : face.bottom() - 4 - height;
    for (double y = now.top() - 12; y < now.bottom() + 12; y += GRID) {
      boolean near = Math.abs(y - wanted) * PER_HEIGHT < least + ROUNDING;
      double end = near ? now.left() + area.widthMm() : Double.NEGATIVE_INFINITY;
      for (double x = now.left(); x + width < end; x += GRID) {
        double cost = cost(new Bounds(x, y, x + width, y + height), now, high);
        if (cost < least && isFree(new Bounds(x, y, x + width, y + height))) {
          least = cost;
          best = Optional.of(new At(x, y));
        }
      }
    }
    return best;
  }

  private double cost(Bounds room, Bounds now, boolean high) {
    boolean inside =
        room.left() > face.left() + 1
            && room.right() < face.right() - 1
            && room.top() > face.top() + 1
            && room.bottom() < face.bottom() - 1;
    Bounds all = now.with(room);
    double growth = all.width() - now.width() + all.height() - now.height();
    double fromSide = Math.abs(room.left() - face.left() - 6);
    double wantedY = high ? face.top() + 4 : face.bottom() - 4 - room.height();
    double fromHeight = Math.abs(room.top() - wantedY);
    return fromSide + fromHeight * PER_HEIGHT + (inside ? 0 : 60 + growth * 3);
  }

  private boolean isFree(Bounds room) {
    return paper.isFree(
        new PlacedText("", 1, room.left(), room.top(), room.right(), room.bottom()).widened(CLEAR));
  }
}
