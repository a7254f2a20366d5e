package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.Contacts.Path;
import storyrod.geometry.Face;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * A step that puts hardware on what stands, as a picture: the piece thin and untoned, what is not
 * hung in it yet beside it, and the hardware strong and toned on its way to its seats. It is seen
 * from where most of the hardware is seen.
 */
final class MountPicture implements PicturedStep {
  private static final double ENOUGH_SEEN = 0.8;

  /** So much more must be seen for a less usual view. */
  private static final double CLEARLY = 0.1;

  /** From so many sides it can be seen from above, and from as many from below. */
  private static final int VIEWS = 4;

  private static final double LEANING = 0.9;

  /** What counts of hardware that is seen but not where it sits. */
  private static final double OF_UNSEEN_SEATS = 0.5;

  private static final double OF_HIDDEN_SEATS = 0.3;

  /** The share of a way that shows where it ends. */
  private static final double LAST_STRETCH = 0.25;

  private final Step step;
  private final Piece piece;
  private final List<Hardware> hardware;
  private final List<Hardware> on;
  private final List<List<Part>> things;
  private final List<Part> parts;
  private final Shot shot;

  private MountPicture(Step step, Piece piece, List<List<Part>> things, StepHardware hardware) {
    this.step = step;
    this.piece = piece;
    this.hardware = hardware.coming();
    this.on = hardware.on();
    this.things = things;
    this.parts = things.stream().flatMap(List::stream).toList();
    this.shot = best();
  }

  private MountPicture(MountPicture whole, Shot shot) {
    this.step = whole.step;
    this.piece = whole.piece;
    this.hardware = whole.hardware;
    this.on = whole.on;
    this.things = whole.things;
    this.parts = whole.parts;
    this.shot = shot;
  }

  /** Empty if the step mounts nothing that has a place. */
  static Optional<MountPicture> of(
      Supplier<Piece> then, BuildPlan plan, Step step, StepHardware hardware) {
    return hardware.coming().isEmpty()
        ? Optional.empty()
        : Optional.of(clearest(step, then.get(), new Standing(then.get(), plan, step), hardware));
  }

  /** With what hangs in the piece in its place, or out of it where more is seen so. */
  private static MountPicture clearest(
      Step step, Piece piece, Standing standing, StepHardware mounted) {
    List<List<Part>> there = standing.around(hosts(mounted.coming()));
    List<List<Part>> apart = standing.takenOut(hosts(mounted.coming()));
    MountPicture hung = new MountPicture(step, piece, there, mounted);
    if (hung.shot.seen() >= ENOUGH_SEEN || apart.equals(there)) {
      return hung.cleared();
    }
    MountPicture out = new MountPicture(step, piece, apart, mounted);
    return (out.shot.seen() > hung.shot.seen() + CLEARLY ? out : hung).cleared();
  }

  private static List<String> hosts(List<Hardware> mounted) {
    return mounted.stream().map(each -> each.placed().host()).distinct().toList();
  }

  @Override
  public int step() {
    return step.number();
  }

  @Override
  public double heightMm(double widthMm) {
    return shot.inset().heightMm(widthMm);
  }

  @Override
  public Drawing drawn(Size room) {
    return shot.inset().drawn("step-" + step.number(), room);
  }

  /** From where it is seen. */
  View view() {
    return shot.inset().from().view();
  }

  /** How it looks from one side, and the share of the hardware and of its seats that is seen. */
  private record Shot(Inset inset, double seen) {}

  /** The same, opened if too little is seen. */
  private MountPicture cleared() {
    View view = shot.inset().from().view();
    return new MountPicture(this, shot(view, fitted(view).clear(shot.inset().picture()).ready()));
  }

  private Shot best() {
    Shot best = shot(views().getFirst());
    for (View view : views().subList(1, VIEWS)) {
      if (best.seen() >= ENOUGH_SEEN) {
        break;
      }
      Shot other = shot(view);
      best = other.seen() > best.seen() + CLEARLY ? other : best;
    }
    return best;
  }

  /** From below only what is fitted from below while the piece stands. */
  private List<View> views() {
    boolean isBelow =
        step.down() == Face.BOTTOM
            && hardware.stream().allMatch(each -> each.placed().out().getZ() < -LEANING);
    int from = isBelow ? VIEWS : 0;
    return View.AROUND.subList(from, from + VIEWS).stream()
        .map(view -> view.laidOn(step.down()))
        .toList();
  }

  private Shot shot(View view) {
    return shot(view, fitted(view).whole(hardware));
  }

  private Shot shot(View view, Picture picture) {
    Picture.Notes notes =
        new Picture.Notes(List.of(), arrows(picture.fittings()), hosts(hardware))
            .naming(UnitName.of(piece, things));
    return new Shot(
        new Inset(picture, notes, new Viewpoint(view, step.down()), Notation.of(piece), true),
        seen(picture, view));
  }

  private Fitted fitted(View view) {
    Scene scene = Scene.of(parts, SideBySide.placed(view, things)).wearing(on);
    List<String> toned =
        Stream.concat(hosts(hardware).stream(), hardware.stream().map(Hardware::id)).toList();
    return new Fitted(scene, parts, 0, view, toned);
  }

  /** One for what goes into one part. */
  private static List<List<Path>> arrows(List<Fitting> fittings) {
    Map<String, List<Path>> ways = new LinkedHashMap<>();
    fittings.forEach(
        each ->
            ways.computeIfAbsent(each.hardware().placed().host(), any -> new ArrayList<>())
                .add(each.trail()));
    return List.copyOf(ways.values());
  }

  /**
   * The mean share that is seen of the hardware, of its outline or of the end of its way; less
   * where one sees none of the faces on which it sits.
   */
  private static double seen(Picture picture, View view) {
    double seen =
        picture.fittings().stream()
            .mapToDouble(each -> seen(each, picture, view))
            .average()
            .orElse(0);
    boolean isFaced =
        picture.fittings().stream()
            .anyMatch(each -> each.hardware().placed().out().dot(view.toViewer()) > 0);
    return isFaced ? Math.max(seen, hidden(picture, seen)) : OF_UNSEEN_SEATS * seen;
  }

  /** What it counts that hardware is seen whose seats are all hidden, as by an overhang above. */
  private static double hidden(Picture picture, double seen) {
    boolean isAny = picture.fittings().stream().anyMatch(each -> hasLines(picture, each));
    return seen <= 0 && isAny ? OF_HIDDEN_SEATS : 0;
  }

  private static boolean hasLines(Picture picture, Fitting each) {
    return !picture.seen(each).lines().visible().isEmpty();
  }

  /** Its area is worked out only where its way is seen: that takes by far the most time. */
  private static double seen(Fitting each, Picture picture, View view) {
    double way = seenWay(each, picture, view);
    return way > 0 ? Math.min(seenOf(each, picture, view), way) : way;
  }

  private static double seenOf(Fitting each, Picture picture, View view) {
    double whole = Outline.of(List.of(each.hardware().placed().solid()), view).area();
    return picture.seenArea(List.of(each.hardware().id())) / whole;
  }

  private static double seenWay(Fitting each, Picture picture, View view) {
    Path way = each.trail();
    Vector3D before = way.to().lerp(way.from(), LAST_STRETCH);
    return picture.seenShare(new Path(way.part(), before, way.to()), view);
  }
}
