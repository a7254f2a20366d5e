package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;

/**
 * A picture with one item of its hardware enlarged beside it, where some would be too small to make
 * out: a frame round the item in the picture, and beside it the item in its place, to a scale. In a
 * narrow room the picture has all the width and the item stands below it.
 *
 * @param takesRoom whether it may make the picture smaller; else it stands where that leaves room
 */
record Inset(
    Picture picture, Picture.Notes notes, Viewpoint from, Notation notation, boolean takesRoom) {
  /** Smaller hardware shows no more than that there is some, in mm on paper. */
  private static final double TOO_SMALL_MM = 7;

  /** The same of what is mounted, of which one has to see where it sits. */
  private static final double TOO_SMALL_MOUNTED_MM = 12;

  /** No less enlarged is it worth its room. */
  private static final double ENLARGED = 1.5;

  private static final double HARDLY_SMALLER = 0.9;

  private static final double WIDTH_SHARE = 0.3;
  private static final double MOST_MM = 52;
  private static final double GAP_MM = 4;

  /** A room narrower than this, as beside lists, is too narrow for two. */
  private static final double NARROW_MM = 130;

  /** Below the frame, for the scale. */
  private static final double LINE_MM = 4.6;

  /** What is enlarged, and how it is. */
  private record Enlarged(List<Fitting> group, FittedDetail detail, Scale scale) {}

  /** The drawing, as large as a room allows. */
  Drawing drawn(String name, Size room) {
    Size above = new Size(room.widthMm(), room.heightMm() - captionMm());
    Drawing drawn =
        enlarged(above)
            .map(each -> beside(each, name, above))
            .orElseGet(() -> picture.drawn(name, notes, above));
    return caption().isEmpty() ? drawn : captioned(drawn, room);
  }

  private String caption() {
    return from.caption(notation.words());
  }

  private double captionMm() {
    return caption().isEmpty() ? 0 : LINE_MM;
  }

  private Drawing captioned(Drawing drawn, Size room) {
    List<Element> elements = new ArrayList<>(drawn.elements());
    At middle = new At(room.widthMm() / 2, room.heightMm() - 1);
    elements.add(new Text(TextStyle.SMALL, middle, Anchor.MIDDLE, true, caption()));
    return new Drawing(drawn.name(), room.widthMm(), room.heightMm(), drawn.scale(), elements);
  }

  /** The height in mm that the drawing fills where only its width is given. */
  double heightMm(double widthMm) {
    return shownMm(widthMm) + captionMm();
  }

  private double shownMm(double widthMm) {
    double high = picture.heightMm(notes, widthMm);
    if (!takesRoom || wanted(new Size(widthMm, high)).isEmpty()) {
      return high;
    }
    return isBelow(widthMm)
        ? high + GAP_MM + belowMm(widthMm)
        : Math.max(besideMm(widthMm, high), picture.heightMm(notes, mainMm(widthMm, high)));
  }

  /** Whether what is enlarged stands below the picture. */
  private boolean isBelow(double widthMm) {
    return takesRoom && widthMm < NARROW_MM;
  }

  private Optional<Enlarged> enlarged(Size room) {
    double side = sideMm(room);
    return wanted(room)
        .flatMap(
            group -> {
              FittedDetail detail = FittedDetail.of(picture, group, from.view());
              return detail
                  .scale(notation.format().unit(), new Size(side - 1, side - LINE_MM))
                  .filter(scale -> isEnlarged(scale, room))
                  .filter(scale -> takesRoom || leavesSize(room))
                  .map(scale -> new Enlarged(group, detail, scale));
            });
  }

  private boolean isEnlarged(Scale scale, Size room) {
    return FittedDetail.factor(scale) >= ENLARGED * picture.fit(notes, left(room)).factor();
  }

  /** Whether the picture is hardly smaller beside it. */
  private boolean leavesSize(Size room) {
    double beside = picture.fit(notes, left(room)).factor();
    return beside >= HARDLY_SMALLER * picture.fit(notes, room).factor();
  }

  /** The room of the picture itself. */
  private Size left(Size room) {
    return isBelow(room.widthMm())
        ? new Size(room.widthMm(), room.heightMm() - GAP_MM - sideMm(room))
        : new Size(mainMm(room.widthMm(), room.heightMm()), room.heightMm());
  }

  /** Of what is seen and too small the item with the most that goes in with it. */
  private Optional<List<Fitting>> wanted(Size room) {
    double factor = picture.fit(notes, room).factor();
    return FittedDetail.groups(picture.fittings()).stream()
        .filter(group -> group.stream().anyMatch(each -> isTooSmall(each, factor)))
        .filter(group -> seenMm(group.getFirst()) > 0)
        .filter(group -> isMounted(group.getFirst()) || isFacing(group.getFirst()))
        .min(
            Comparator.comparing((List<Fitting> group) -> !isFacing(group.getFirst()))
                .thenComparing(group -> -group.size())
                .thenComparing(group -> sizeMm(group.getFirst()))
                .thenComparing(group -> -seenMm(group.getFirst())));
  }

  /** Whether one sees the face on which it sits. */
  private boolean isFacing(Fitting each) {
    return each.hardware().placed().out().dot(from.view().toViewer()) > 0;
  }

  private static boolean isTooSmall(Fitting each, double factor) {
    return factor * sizeMm(each) < (isMounted(each) ? TOO_SMALL_MOUNTED_MM : TOO_SMALL_MM);
  }

  /** By a line of the hardware list, not by a joint. */
  private static boolean isMounted(Fitting each) {
    return each.hardware().placed().origin().entry().isPresent();
  }

  private static double sizeMm(Fitting fitting) {
    return Extent.diagonalMm(fitting.hardware().placed().solid().bounds().orElseThrow());
  }

  private double seenMm(Fitting fitting) {
    return picture.seen(fitting).lines().visible().stream().mapToDouble(Seen.Stroke::length).sum();
  }

  private double sideMm(Size room) {
    return isBelow(room.widthMm())
        ? Math.min(belowMm(room.widthMm()), WIDTH_SHARE * room.heightMm())
        : besideMm(room.widthMm(), room.heightMm());
  }

  private static double belowMm(double widthMm) {
    return Math.min(MOST_MM, WIDTH_SHARE * widthMm);
  }

  private static double besideMm(double widthMm, double heightMm) {
    return Math.min(belowMm(widthMm), heightMm);
  }

  private static double mainMm(double widthMm, double heightMm) {
    return widthMm - besideMm(widthMm, heightMm) - GAP_MM;
  }

  private Drawing beside(Enlarged enlarged, String name, Size room) {
    Size left = left(room);
    List<Element> elements = new ArrayList<>(picture.drawn(name, notes, left).elements());
    elements.add(frame(on(picture.fit(notes, left), shown(enlarged.group()))));
    Bounds at = place(room);
    Fit fit = enlarged.detail().fit(enlarged.scale(), at);
    Bounds frame = on(fit, enlarged.detail().window());
    elements.addAll(enlarged.detail().on(fit, frame));
    elements.add(frame(frame));
    elements.add(scale(enlarged.scale(), frame));
    return new Drawing(name, room.widthMm(), room.heightMm(), Optional.empty(), elements);
  }

  /** Where the item stands, without the line for its scale. */
  private Bounds place(Size room) {
    double side = sideMm(room);
    double top = (isBelow(room.widthMm()) ? 1 : 0.5) * (room.heightMm() - side);
    double from = isBelow(room.widthMm()) ? (room.widthMm() - side) / 2 : room.widthMm() - side;
    return new Bounds(from, top, from + side - 1, top + side - LINE_MM);
  }

  private Element scale(Scale scale, Bounds frame) {
    At below = new At(frame.middle().x(), frame.bottom() + LINE_MM - 1);
    String text = notation.words().say("step.inset.scale", scale.toString());
    return new Text(TextStyle.SMALL, below, Anchor.MIDDLE, true, text);
  }

  /** Round an item, what goes in with it, and where they go in, as the picture shows them. */
  private Bounds shown(List<Fitting> group) {
    Bounds tight =
        Bounds.around(
            group.stream()
                .flatMap(
                    each ->
                        Stream.concat(
                            picture.seen(each).lines().visible().stream().flatMap(Fit::ends),
                            Stream.of(from.view().project(each.seat()))))
                .toList());
    return tight.widened(0.1 * Math.max(tight.width(), tight.height()));
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
}
