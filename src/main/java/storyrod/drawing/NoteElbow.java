package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.TextStyle;

/**
 * The end of a note's leader with the places of the text there. What it costs is worked out once,
 * when it is asked for first, for what stands on the paper before any note.
 */
final class NoteElbow {
  private static final double LANDING = 2;

  /** What is left free between a landing and its text, in mm. */
  private static final double BESIDE = 0.8;

  /** How far from it a text begins, in mm. */
  static final double TO_TEXT = BESIDE + LANDING;

  private static final double CLEAR = 0.8;

  private final NoteBeam beam;
  private final At at;
  private final Ways ways;
  private final double distance;
  private final Paper.Stretch leader;
  private Optional<List<Place>> places = Optional.empty();
  private double dimensionsCrossed = -1;
  private int linesCrossed = -1;

  NoteElbow(NoteBeam beam, At at, Ways ways) {
    this.beam = beam;
    this.at = at;
    this.ways = ways;
    this.distance = at.distance(beam.lead().way().from());
    this.leader = beam.leader(at, distance);
  }

  /** The ways to break the words, the fewest lines first, and the width of the narrowest in mm. */
  record Ways(List<NoteLines> all, double narrowest) {
    static Ways of(List<NoteLines> all) {
      return new Ways(all, all.stream().mapToDouble(NoteLines::width).min().orElseThrow());
    }
  }

  /** The number of its direction. */
  int beam() {
    return beam.lead().number();
  }

  double distance() {
    return distance;
  }

  Paper.Stretch leader() {
    return leader;
  }

  boolean missesTexts() {
    return beam.missesTexts(leader);
  }

  double dimensionsCrossed() {
    if (dimensionsCrossed < 0) {
      dimensionsCrossed = beam.dimensionsCrossed(leader);
    }
    return dimensionsCrossed;
  }

  int linesCrossed() {
    if (linesCrossed < 0) {
      linesCrossed = beam.linesCrossed(leader);
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
        beam.anchors().stream().map(Landing::new).filter(Landing::hasRoom).toList();
    List<Place> found = new ArrayList<>();
    for (NoteLines lines : landings.isEmpty() ? List.<NoteLines>of() : ways.all) {
      landings.stream()
          .map(landing -> new Place(landing, lines))
          .filter(place -> beam.ground().holds(place.text))
          .forEach(found::add);
    }
    return found;
  }

  /** The level stretch from a leader to its text. */
  final class Landing {
    private final Anchor anchor;
    private final At text;
    private final Paper.Stretch line;
    private double dimensionsCrossed = -1;

    private Landing(Anchor anchor) {
      double side = anchor == Anchor.START ? 1 : -1;
      this.anchor = anchor;
      this.text = at.plus(side * (BESIDE + LANDING), Lowering.LEADER_ABOVE);
      this.line = new Paper.Stretch(at, text.plus(0, -Lowering.LEADER_ABOVE));
    }

    Paper.Stretch line() {
      return line;
    }

    double dimensionsCrossed() {
      if (dimensionsCrossed < 0) {
        dimensionsCrossed = beam.ground().dimensions().crossed(line);
      }
      return dimensionsCrossed;
    }

    /** Whether there is room for what all ways to break the words have in common. */
    private boolean hasRoom() {
      return beam.ground().isFree(room(bounds(ways.narrowest, ways.all.getFirst().lines().size())))
          && beam.ground().paper().missesTexts(line);
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
    private final Landing landing;
    private final NoteLines set;
    private final Bounds text;
    private boolean judged;
    private boolean free;

    private Place(Landing landing, NoteLines set) {
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
      return NoteElbow.room(text);
    }

    /** Whether it is free of all that stands before any note. */
    boolean isFree() {
      if (!judged) {
        free = beam.ground().isFree(room());
        judged = true;
      }
      return free;
    }

    boolean isBlocked() {
      return judged && !free;
    }

    Note note() {
      return new Note(leader.from(), at, landing.text, landing.anchor, set.lines());
    }
  }
}
