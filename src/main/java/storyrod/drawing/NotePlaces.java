package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.TextStyle;

/**
 * The places of one note in rings round the points at which it may point. Each is judged once, when
 * it is asked for first, against what stood on the paper before any note; so notes can be tried in
 * many orders in little time.
 */
final class NotePlaces {
  private static final double RING = 2.5;
  private static final double SHORTEST = 5;
  private static final double LANDING = 2;

  /** What is left free between a landing and its text, in mm. */
  private static final double BESIDE = 0.8;

  private static final double CLEAR = 0.8;
  private static final List<At> DIRECTIONS = directions();

  private final NoteGround ground;
  private final String words;
  private final double rim;
  private final int beams;
  private final List<Beam> open = new ArrayList<>();
  private final List<NoteLines> ways;
  private final double narrowest;
  private final Bounds elbows;
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
    aim.tips.forEach(tip -> DIRECTIONS.forEach(to -> open.add(new Beam(tip, to))));
    this.beams = open.size();
    this.ways = NoteLines.ways(words, widest);
    this.narrowest = ways.stream().mapToDouble(NoteLines::width).min().orElseThrow();
    this.elbows = ground.elbows(BESIDE + LANDING + 0.1);
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
    private final List<Elbow> elbows = new ArrayList<>();

    private Ring(double away) {
      this.away = away;
      open.forEach(beam -> beam.elbow(away).ifPresent(elbows::add));
      open.removeIf(beam -> beam.blocked);
    }

    double away() {
      return away;
    }

    List<Elbow> elbows() {
      return elbows;
    }
  }

  /** A direction of leaders from a point. */
  private final class Beam {
    private final int number = open.size();
    private final HalfLine way;
    private final List<PlacedText> texts;
    private final List<Anchor> anchors;
    private final List<Paper.Stretch> dimensions;
    private Optional<List<Paper.Stretch>> lines = Optional.empty();
    private boolean blocked;

    private Beam(At tip, At to) {
      this.way = new HalfLine(tip, to);
      this.texts = ground.paper().textsOn(way);
      this.dimensions = way.mayMeet(ground.dimensions());
      this.anchors = anchors(to);
    }

    /** Nothing where no text may be; a leader that meets a text stops all longer ones. */
    private Optional<Elbow> elbow(double away) {
      At at = way.at(away);
      if (!elbows.contains(at)) {
        return Optional.empty();
      }
      Elbow elbow = new Elbow(this, at);
      blocked = texts.stream().anyMatch(text -> text.meets(elbow.leader));
      return blocked ? Optional.empty() : Optional.of(elbow);
    }

    /** The text stands on the side to which the leader leans. */
    private static List<Anchor> anchors(At to) {
      if (Math.abs(to.x()) < 1e-9) {
        return List.of(Anchor.START, Anchor.END);
      }
      return List.of(to.x() > 0 ? Anchor.START : Anchor.END);
    }

    private List<Paper.Stretch> lines() {
      if (lines.isEmpty()) {
        lines = Optional.of(ground.paper().linesOn(way));
      }
      return lines.get();
    }
  }

  /** The end of a leader. */
  final class Elbow {
    private final Beam beam;
    private final At at;
    private final double distance;
    private final Paper.Stretch leader;
    private Optional<List<Place>> places = Optional.empty();
    private int dimensionsCrossed = -1;
    private int linesCrossed = -1;

    private Elbow(Beam beam, At at) {
      At from = beam.way.from();
      this.beam = beam;
      this.at = at;
      this.distance = at.distance(from);
      double part = rim / distance;
      At tip = from.plus((at.x() - from.x()) * part, (at.y() - from.y()) * part);
      this.leader = new Paper.Stretch(tip, at);
    }

    /** The number of its direction. */
    int beam() {
      return beam.number;
    }

    double distance() {
      return distance;
    }

    Paper.Stretch leader() {
      return leader;
    }

    int dimensionsCrossed() {
      if (dimensionsCrossed < 0) {
        dimensionsCrossed = NoteGround.crossed(leader, beam.dimensions);
      }
      return dimensionsCrossed;
    }

    int linesCrossed() {
      if (linesCrossed < 0) {
        linesCrossed = NoteGround.crossed(leader, beam.lines());
      }
      return linesCrossed;
    }

    /** The places of texts that have room among what stands before any note. */
    List<Place> places() {
      if (places.isEmpty()) {
        places = Optional.of(found());
      }
      return places.get();
    }

    private List<Place> found() {
      List<Landing> landings =
          beam.anchors.stream()
              .map(anchor -> new Landing(at, anchor))
              .filter(Landing::hasRoom)
              .toList();
      List<Place> found = new ArrayList<>();
      for (NoteLines lines : landings.isEmpty() ? List.<NoteLines>of() : ways) {
        landings.stream()
            .map(landing -> new Place(this, landing, lines))
            .filter(place -> ground.holds(place.text))
            .forEach(found::add);
      }
      return found;
    }
  }

  /** The level stretch from a leader to its text. */
  final class Landing {
    private final Anchor anchor;
    private final At text;
    private final Paper.Stretch line;
    private int dimensionsCrossed = -1;

    private Landing(At elbow, Anchor anchor) {
      double side = anchor == Anchor.START ? 1 : -1;
      this.anchor = anchor;
      this.text = elbow.plus(side * (BESIDE + LANDING), Lowering.LEADER_ABOVE);
      this.line = new Paper.Stretch(elbow, text.plus(0, -Lowering.LEADER_ABOVE));
    }

    Paper.Stretch line() {
      return line;
    }

    int dimensionsCrossed() {
      if (dimensionsCrossed < 0) {
        dimensionsCrossed = NoteGround.crossed(line, ground.dimensions());
      }
      return dimensionsCrossed;
    }

    /** Whether there is room for what all ways to break the words have in common. */
    private boolean hasRoom() {
      return ground.isFree(room(bounds(narrowest, ways.getFirst().lines().size())))
          && ground.paper().missesTexts(line);
    }

    private Bounds bounds(double width, int lines) {
      double size = TextStyle.NOTE.sizeMm();
      double left = anchor == Anchor.START ? text.x() : text.x() - width;
      double below = TextSetting.DESCENT + (lines - 1) * Lowering.LINE_SPACING;
      double bottom = text.y() + size * below;
      return new Bounds(left, text.y() - size * TextSetting.ASCENT, left + width, bottom);
    }
  }

  /** A text with the room about it. */
  private static PlacedText room(Bounds text) {
    return new PlacedText(
            "", TextStyle.NOTE.sizeMm(), text.left(), text.top(), text.right(), text.bottom())
        .widened(CLEAR);
  }

  /** A place of the text at the end of a leader. */
  final class Place {
    private final Elbow elbow;
    private final Landing landing;
    private final NoteLines set;
    private final Bounds text;
    private boolean judged;
    private boolean free;

    private Place(Elbow elbow, Landing landing, NoteLines set) {
      this.elbow = elbow;
      this.landing = landing;
      this.set = set;
      this.text = landing.bounds(set.width(), set.lines().size());
    }

    Landing landing() {
      return landing;
    }

    Bounds text() {
      return text;
    }

    int lines() {
      return set.lines().size();
    }

    PlacedText room() {
      return NotePlaces.room(text);
    }

    /** Whether it is free of all that stands before any note. */
    boolean isFree() {
      if (!judged) {
        free = ground.isFree(room());
        judged = true;
      }
      return free;
    }

    boolean isBlocked() {
      return judged && !free;
    }

    Note note() {
      return new Note(elbow.leader.from(), elbow.at, landing.text, landing.anchor, set.lines());
    }
  }
}
