package storyrod.description;

import java.util.List;
import java.util.Optional;
import storyrod.measure.Rational;

/**
 * The air of the room in which the piece will stand.
 *
 * @param room the word for a usual one; what is measured below comes first
 * @param dryCelsius temperature in the driest season
 * @param dryHumidity relative humidity in the driest season, in per cent
 * @param dampCelsius temperature in the dampest season
 * @param dampHumidity relative humidity in the dampest season, in per cent
 */
public record ClimateEntry(
    String room,
    Optional<Rational> dryCelsius,
    Optional<Rational> dryHumidity,
    Optional<Rational> dampCelsius,
    Optional<Rational> dampHumidity) {
  /** The words for rooms, the usual one first; a test holds them to the table of climates. */
  public static final List<String> ROOMS =
      List.of("heated", "conditioned", "dry", "damp", "unheated");

  /** The usual room. */
  public static final ClimateEntry USUAL =
      new ClimateEntry(
          ROOMS.getFirst(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
