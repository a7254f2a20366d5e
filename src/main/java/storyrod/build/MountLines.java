package storyrod.build;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import storyrod.build.Driving.Line;
import storyrod.build.MountSites.Site;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What stands in the lines of hardware's pilot holes and screws. Hardware is screwed on when its
 * parts have their place; then a drill needs its whole length before the hole, and a screw at least
 * a short screwdriver and the hand behind it. A hole that no drill reaches by then is drilled while
 * its part still lies on the bench.
 */
public final class MountLines {
  /** A drill with a bit and its holder, as for the screws of joints, in mm. */
  static final double DRILL_MM = Driving.TOOL_MM;

  /** A stubby screwdriver and the hand behind it (common practice, from memory), in mm. */
  static final double HAND_MM = 110;

  /** The word for holes that are drilled on the bench for hardware that is mounted later. */
  public static final String PILOT = "mount pilot";

  private final Piece piece;
  private final Driving driving;
  private final Late late;
  private final Nesting nesting;
  private final List<Site> sites;
  private final Map<Site, Optional<String>> early = new IdentityHashMap<>();

  MountLines(Piece piece, Driving driving, Late late) {
    this.piece = piece;
    this.driving = driving;
    this.late = late;
    this.nesting = Nesting.of(piece);
    MountSites places = new MountSites(piece, nesting);
    this.sites =
        piece.description().hardware().stream()
            .flatMap(entry -> places.of(entry).stream())
            .toList();
  }

  List<Site> sites() {
    return sites;
  }

  /** The holes of a part that are drilled on the bench, for no drill reaches them later. */
  List<Cut> early(Part part) {
    return sites.stream()
        .filter(site -> site.part().name().equals(part.name()) && isEarly(site))
        .flatMap(this::pilots)
        .toList();
  }

  boolean isEarly(Site site) {
    return site.drilled() && inBuilt(site).isPresent();
  }

  private Optional<String> inBuilt(Site site) {
    return early.computeIfAbsent(site, each -> blocker(each, isBuilt(each), DRILL_MM));
  }

  private Stream<Cut> pilots(Site site) {
    Optional<MountHoles.Pilot> pilot = new MountHoles(piece).pilot(site.entry(), site.part());
    return site.choices().getFirst().stream().map(line -> pilot(site, line, pilot));
  }

  private static Cut pilot(Site site, Line line, Optional<MountHoles.Pilot> pilot) {
    Face from = Face.nearest(line.out());
    return new Cut.Holes(
        PILOT,
        from,
        line.start(),
        from.axis() == Axis.X ? Axis.Y : Axis.X,
        Length.ZERO,
        1,
        pilot.map(MountHoles.Pilot::bit).orElse(Length.ZERO),
        pilot.flatMap(MountHoles.Pilot::depth).orElse(Length.ZERO),
        false,
        Optional.of(site.entry().item().value()),
        site.entry().at());
  }

  /**
   * What stands in the way of hardware, by its full name: nothing if one choice of places is free.
   *
   * @param there which parts stand by then
   * @param mm how long the tool is
   */
  Optional<String> blocker(Site site, Predicate<String> there, double mm) {
    List<Optional<String>> found =
        site.choices().stream()
            .map(
                lines ->
                    driving.inTheWay(lines, mm, name -> isOther(name, site) && there.test(name)))
            .toList();
    return found.stream().anyMatch(Optional::isEmpty) ? Optional.empty() : found.getFirst();
  }

  private static boolean isOther(String part, Site site) {
    return !part.equals(site.part().name());
  }

  /**
   * The parts that stand round a site for good when hardware is mounted; a door is open by then.
   */
  Predicate<String> isBuilt(Site site) {
    return isRound(site).and(part -> !isLater(part));
  }

  /** The parts that belong to the same drawer, the same door, or as it does to the piece. */
  Predicate<String> isRound(Site site) {
    Optional<String> body = body(site.part().name());
    return part -> body(part).equals(body);
  }

  /** Whether a part comes when the finish is dry, and so can wait for hardware. */
  private boolean isLater(String part) {
    return nesting.around(part).stream()
        .anyMatch(unit -> late.tops().contains(unit) || late.removable().contains(unit));
  }

  /** The drawer, the door or the like that a part belongs to; none if it is of the piece itself. */
  private Optional<String> body(String part) {
    return nesting.around(part).stream()
        .map(unit -> late.drawers().getOrDefault(unit, unit))
        .filter(late.loose()::contains)
        .findFirst();
  }
}
