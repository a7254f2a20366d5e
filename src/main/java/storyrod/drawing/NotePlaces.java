package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import storyrod.drawing.Drawing.At;

/**
 * The places of one note in rings round the points at which it may point. Each is judged once, when
 * it is asked for first, against what stood on the paper before any note; so notes can be tried in
 * many orders in little time.
 */
final class NotePlaces {
  private static final double RING = 2.5;
  private static final double SHORTEST = 5;
  private static final List<At> DIRECTIONS = directions();

  private final NoteGround ground;
  private final String words;
  private final double rim;
  private final int beams;
  private final List<NoteBeam> open = new ArrayList<>();
  private final NoteElbow.Ways ways;
  private final Bounds texts;
  private final List<Ring> rings = new ArrayList<>();
  private final Map<Double, Integer> fewest = new TreeMap<>();

  /**
   * The places for some words.
   *
   * @param widest the width of a text's lines, in mm
   */
  NotePlaces(NoteGround ground, Aim aim, String words, double widest) {
    this.ground = ground;
    this.words = words;
    this.rim = aim.rim;
    aim.tips.forEach(tip -> DIRECTIONS.forEach(to -> open(new HalfLine(tip, to))));
    this.beams = open.size();
    this.ways = NoteElbow.Ways.of(NoteLines.ways(words, widest));
    this.texts = ground.elbows(NoteElbow.TO_TEXT + 0.1);
  }

  private void open(HalfLine way) {
    open.add(new NoteBeam(ground, new NoteBeam.Lead(way, rim, open.size())));
  }

  /** Points of which a leader may lead to any, and how far from each it ends, in mm. */
  record Aim(List<At> tips, double rim) {}

  /** All round in steps, none of them level. */
  private static List<At> directions() {
    List<At> all = new ArrayList<>();
    for (int degrees = 20; degrees <= 160; degrees += 10) {
      double x = degrees == 90 ? 0 : StrictMath.cos(StrictMath.toRadians(degrees));
      double y = StrictMath.sin(StrictMath.toRadians(degrees));
      all.add(new At(x, -y));
      all.add(new At(x, y));
    }
    return List.copyOf(all);
  }

  NoteGround ground() {
    return ground;
  }

  /** The fewest lines in which the words stand where none is wider than a width in mm. */
  int fewestLines(double widest) {
    return fewest.computeIfAbsent(
        widest, each -> NoteLines.ways(words, each).getFirst().lines().size());
  }

  /** How many directions there are from all points. */
  int beams() {
    return beams;
  }

  /** The places some number of steps away from the points. */
  Ring ring(int number) {
    while (rings.size() <= number) {
      rings.add(new Ring(rings.isEmpty() ? SHORTEST + rim : rings.getLast().away + RING));
    }
    return rings.get(number);
  }

  /** The ends of leaders at a distance from the points, in mm; only those where a text may be. */
  final class Ring {
    private final double away;
    private final List<NoteElbow> elbows = new ArrayList<>();

    /** A leader that meets a text stops all longer ones. */
    private Ring(double away) {
      this.away = away;
      open.removeIf(beam -> !add(beam));
    }

    private boolean add(NoteBeam beam) {
      At at = beam.lead().way().at(away);
      if (!texts.contains(at)) {
        return true;
      }
      NoteElbow elbow = new NoteElbow(beam, at, ways);
      return elbow.missesTexts() && elbows.add(elbow);
    }

    double away() {
      return away;
    }

    List<NoteElbow> elbows() {
      return elbows;
    }
  }
}
