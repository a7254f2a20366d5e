package storyrod.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slots;

/**
 * What the solid wood of a piece does across its grain in the room under {@code climate}, and what
 * gives it room; the figures are those of the checks. All lengths are in mm.
 */
public final class WoodMovement {
  private final Piece piece;
  private final Seasons seasons;

  public WoodMovement(Piece piece) {
    this.piece = piece;
    this.seasons = new Seasons(piece);
  }

  /**
   * A part.
   *
   * @param swells from the mean of the year, when it is built, to the damp season
   * @param shrinks from the mean of the year to the dry season
   */
  public record Moving(Part part, double swells, double shrinks, Room room) {}

  /** What lets a part move across its grain, or keeps it from that. */
  public sealed interface Room {}

  /** It lies without glue in grooves that leave so much room in all. */
  public record Grooves(double mm) implements Room {}

  /** Its fasteners travel by so much in all, the least of them. */
  public record Travel(double mm) implements Room {}

  /** Fasteners hold it that let it move, nobody says how far. */
  public record Fastened() implements Room {}

  /** Screws or pegs hold it in slots that are longer than they are wide by so much, at least. */
  public record Slotted(double mm) implements Room {}

  /** Glue or screws hold it fast over so much to what does not move with it. */
  public record Held(double mm) implements Room {}

  /** It is glued or screwed to others, but to none that keeps it from moving. */
  public record Joined() implements Room {}

  /** Nothing holds it across its grain. */
  public record Free() implements Room {}

  /** All parts whose movement is known, one for each mark, those that move most first. */
  public List<Moving> parts() {
    return piece.marks().stream()
        .map(mark -> mark.shown())
        .filter(part -> Seasons.moves(part, part.width()))
        .flatMap(part -> moving(part).stream())
        .sorted(Comparator.comparingDouble((Moving each) -> -each.swells() - each.shrinks()))
        .toList();
  }

  private Optional<Moving> moving(Part part) {
    OptionalDouble swells = seasons.swelling(part, part.finishedWidth());
    OptionalDouble shrinks = seasons.shrinking(part, part.finishedWidth());
    return swells.isPresent() && shrinks.isPresent()
        ? Optional.of(new Moving(part, swells.getAsDouble(), shrinks.getAsDouble(), room(part)))
        : Optional.empty();
  }

  private Room room(Part part) {
    OptionalDouble grooves = PanelRoom.room(piece, part);
    if (grooves.isPresent()) {
      return new Grooves(grooves.getAsDouble());
    }
    OptionalDouble travel = TopTravel.least(piece, part);
    if (travel.isPresent()) {
      return new Travel(travel.getAsDouble());
    }
    double held = CrossGrain.widest(piece, part);
    OptionalDouble slots = slotted(part);
    if (slots.isPresent() && held == 0) {
      return new Slotted(slots.getAsDouble());
    }
    if (held > 0) {
      return new Held(held);
    }
    if (CrossGrain.isFastened(piece, part)) {
      return new Fastened();
    }
    return CrossGrain.isRigidlyJoined(piece, part) ? new Joined() : new Free();
  }

  /** Slots along a part's width, in it or in what it is joined to. */
  private OptionalDouble slotted(Part part) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part.name()) || joint.second().equals(part.name()))
        .flatMap(this::slots)
        .filter(slots -> slots.along() == part.width())
        .mapToDouble(slots -> slots.length().minus(slots.width()).toMm())
        .min();
  }

  /** Those that a screw or a peg moves in go through; what is glued into a blind one holds fast. */
  private Stream<Slots> slots(Joint joint) {
    return Stream.of(joint.first(), joint.second())
        .flatMap(name -> piece.part(name).cuts(Slots.class).stream())
        .filter(slots -> slots.through() && slots.at().equals(joint.at()));
  }

  /** The moisture content of wood in the dry season and in the damp one, in per cent. */
  public double dryMoisture() {
    return seasons.climate().dry().moisture();
  }

  public double dampMoisture() {
    return seasons.climate().damp().moisture();
  }

  /** The shelves and rails that have a load. */
  public List<Sag> loads() {
    return ShelfSag.all(piece);
  }
}
