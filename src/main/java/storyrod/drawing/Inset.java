package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;

/**
 * A picture with the smallest of its hardware enlarged beside it, where that would be too small to
 * make out: a frame round the item in the picture, and a larger one of the same shape.
 */
record Inset(Picture picture, Picture.Notes notes, View view) {
  /** Smaller hardware shows no more than that there is some, in mm on paper. */
  private static final double TOO_SMALL_MM = 7;

  private static final double WIDTH_SHARE = 0.26;
  private static final double MOST_MM = 46;
  private static final double GAP_MM = 4;

  /** Round the item and its seat, as a share of their larger side. */
  private static final double AROUND = 0.35;

  private static final double AROUND_ALONE = 1.5;

  /** How many times its own size it may be from its seat, for both to be shown. */
  private static final double FAR = 4;

  /** The drawing, as large as a room allows. */
  Drawing drawn(String name, Size room) {
    return wanted(room)
        .map(item -> beside(item, name, room))
        .orElseGet(() -> picture.drawn(name, notes, room));
  }

  /** The height in mm that the drawing fills where only its width is given. */
  double heightMm(double widthMm) {
    double high = picture.heightMm(notes, widthMm);
    return wanted(new Size(widthMm, high)).isPresent()
        ? Math.max(sideMm(widthMm, high), picture.heightMm(notes, mainMm(widthMm, high)))
        : high;
  }

  /** The smallest item that is seen, if it would be drawn too small. */
  private Optional<Fitting> wanted(Size room) {
    double factor = picture.fit(notes, room).factor();
    return picture.fittings().stream()
        .filter(each -> !picture.seen(each).lines().visible().isEmpty())
        .min(Comparator.comparingDouble(Inset::sizeMm).thenComparing(this::hiddenMm))
        .filter(each -> factor * sizeMm(each) < TOO_SMALL_MM);
  }

  private static double sizeMm(Fitting fitting) {
    return Extent.diagonalMm(fitting.hardware().placed().solid().bounds().orElseThrow());
  }

  /** The less is seen of it, the more. */
  private double hiddenMm(Fitting fitting) {
    return -picture.seen(fitting).lines().visible().stream().mapToDouble(Seen.Stroke::length).sum();
  }

  private static double sideMm(double widthMm, double heightMm) {
    return Math.min(Math.min(MOST_MM, WIDTH_SHARE * widthMm), heightMm);
  }

  private static double mainMm(double widthMm, double heightMm) {
    return widthMm - sideMm(widthMm, heightMm) - GAP_MM;
  }

  private Drawing beside(Fitting item, String name, Size room) {
    double main = mainMm(room.widthMm(), room.heightMm());
    Size left = new Size(main, room.heightMm());
    Drawing drawn = picture.drawn(name, notes, left);
    Bounds shown = shown(item);
    List<Element> elements = new ArrayList<>(drawn.elements());
    elements.add(frame(on(picture.fit(notes, left), shown)));
    double side = sideMm(room.widthMm(), room.heightMm());
    At corner = new At(main + GAP_MM, (room.heightMm() - side) / 2);
    Fit fit = Fit.into(corners(shown), corner, new Size(side - 1, side));
    elements.addAll(enlarged(fit, on(fit, shown)));
    elements.add(frame(on(fit, shown)));
    return new Drawing(name, room.widthMm(), room.heightMm(), Optional.empty(), elements);
  }

  /** A square of the view round an item and its seat, or round it alone where that is far off. */
  private Bounds shown(Fitting item) {
    List<At> body = picture.seen(item).lines().visible().stream().flatMap(Fit::ends).toList();
    At seat = view.project(item.seat());
    Bounds alone = Bounds.around(body);
    Bounds tight = Bounds.around(Stream.concat(body.stream(), Stream.of(seat)).toList());
    Bounds round = largerMm(tight) > FAR * largerMm(alone) ? alone : tight;
    double around = round == alone ? AROUND_ALONE : AROUND;
    double half = (0.5 + around) * largerMm(round);
    At middle = round.middle();
    return new Bounds(middle.x() - half, middle.y() - half, middle.x() + half, middle.y() + half);
  }

  private static double largerMm(Bounds bounds) {
    return Math.max(bounds.width(), bounds.height());
  }

  private static List<At> corners(Bounds bounds) {
    return List.of(new At(bounds.left(), bounds.top()), new At(bounds.right(), bounds.bottom()));
  }

  private static Bounds on(Fit fit, Bounds bounds) {
    At low = fit.on(new At(bounds.left(), bounds.top()));
    At high = fit.on(new At(bounds.right(), bounds.bottom()));
    return new Bounds(low.x(), low.y(), high.x(), high.y());
  }

  private static Element frame(Bounds at) {
    At start = new At(at.left(), at.top());
    return new Line(
        Role.THIN,
        List.of(
            start,
            new At(at.right(), at.top()),
            new At(at.right(), at.bottom()),
            new At(at.left(), at.bottom()),
            start));
  }

  /** All lines of the picture inside the frame, and the tones of hardware that lies all inside. */
  private List<Element> enlarged(Fit fit, Bounds frame) {
    List<Element> elements = new ArrayList<>();
    int parts = picture.parts().size();
    picture.seen().subList(parts, picture.seen().size()).stream()
        .flatMap(each -> each.regions().stream())
        .map(each -> new Area(Ink.tone(each.normal()), each.rings().stream().map(fit::on).toList()))
        .filter(area -> area.rings().getFirst().stream().allMatch(frame::contains))
        .forEach(elements::add);
    for (int i = 0; i < picture.seen().size(); i++) {
      Seen seen = picture.seen().get(i);
      Role standing = seen.item().isOpen() ? Role.PHANTOM : Role.THIN;
      Role outline = i < parts && i >= picture.strong() ? standing : Role.VISIBLE;
      Seen.Lines lines = seen.lines();
      if (!seen.item().isOpen()) {
        elements.addAll(clipped(lines.edges(), Role.THIN, fit, frame));
      }
      elements.addAll(clipped(lines.outlines(), outline, fit, frame));
    }
    List<Seen.Stroke> trails = picture.trails(notes);
    elements.addAll(clipped(trails, Role.TRAIL, fit, frame));
    return elements;
  }

  private static List<Element> clipped(
      List<Seen.Stroke> strokes, Role role, Fit fit, Bounds frame) {
    return strokes.stream()
        .flatMap(each -> Clipping.inside(fit.on(List.of(each.from(), each.to())), frame).stream())
        .map(chain -> (Element) new Line(role, chain))
        .toList();
  }
}
