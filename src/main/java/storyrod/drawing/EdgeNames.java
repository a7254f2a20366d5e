package storyrod.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.TemplateText.Side;
import storyrod.drawing.TruePath.Stretch;

/**
 * Writes along the lines of a template which end or edge of the part they are: inside, close to the
 * line, once on each sheet for each side that it shows.
 *
 * @param frame what the sheet shows, on its paper
 */
record EdgeNames(Paper paper, Bounds frame, TemplateBody body) {
  private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};
  private static final double NEAREST = 0.9;
  private static final double FARTHEST = 8;
  private static final double STEP = 0.7;
  private static final double CLEAR = 0.4;
  private static final double SHORTEST = 3;
  private static final double BESIDE_LINE = 0.05;

  /** A side's name where none of its lines has room for it, with points for a leader. */
  record Left(Side side, List<At> points) {}

  /** Writes all names that find room; those left need leaders. */
  List<Left> place() {
    return body.shape().text().sides().stream().flatMap(this::place).toList();
  }

  private Stream<Left> place(Side side) {
    List<Run> runs =
        body.outer().stream()
            .flatMap(path -> path.stretches().stream())
            .filter(stretch -> side.equals(side(stretch)))
            .flatMap(this::runs)
            .filter(run -> run.length() > SHORTEST)
            .sorted(
                Comparator.comparing((Run run) -> run.inward(side)).thenComparing(r -> -r.length()))
            .toList();
    boolean placed = runs.stream().anyMatch(run -> isPlaced(side, run));
    return placed || runs.isEmpty()
        ? Stream.empty()
        : Stream.of(new Left(side, List.of(runs.getFirst().at(0.5), runs.getFirst().at(0.3))));
  }

  private Stream<Run> runs(Stretch stretch) {
    TruePath alone = new TruePath(List.of(stretch), false);
    return Clipping.inside(alone.points(), frame).stream().map(Run::new);
  }

  /** The side to which a stretch belongs: the one that looks most nearly the same way. */
  private Side side(Stretch stretch) {
    At out = outward(stretch);
    return body.shape().text().sides().stream()
        .max(Comparator.comparing(side -> dot(side.outward(), out)))
        .orElseThrow();
  }

  private At outward(Stretch stretch) {
    At from = stretch.from();
    At to = stretch.to();
    double length = Math.max(from.distance(to), 1e-9);
    At out = new At((to.y() - from.y()) / length, (from.x() - to.x()) / length);
    At beside = beside(stretch);
    boolean inside = body.contains(beside.plus(out.x() * BESIDE_LINE, out.y() * BESIDE_LINE));
    return inside ? new At(-out.x(), -out.y()) : out;
  }

  private static At beside(Stretch stretch) {
    return switch (stretch) {
      case TruePath.Straight s -> new Seen.Stroke(s.from(), s.to()).at(0.5);
      case TruePath.Round r -> r.at(0.5);
    };
  }

  private static double dot(At one, At other) {
    return one.x() * other.x() + one.y() * other.y();
  }

  /** A line on the sheet, as a chain of points. */
  private record Run(List<At> points) {
    double length() {
      double length = 0;
      for (int i = 0; i + 1 < points.size(); i++) {
        length += points.get(i).distance(points.get(i + 1));
      }
      return length;
    }

    /** How far its middle lies from the outermost, in whole mm from anywhere: less is better. */
    long inward(Side side) {
      return -Math.round(dot(at(0.5), side.outward()));
    }

    At at(double share) {
      double left = share * length();
      for (int i = 0; i + 1 < points.size(); i++) {
        double here = points.get(i).distance(points.get(i + 1));
        if (left <= here && here > 0) {
          return new Seen.Stroke(points.get(i), points.get(i + 1)).at(left / here);
        }
        left -= here;
      }
      return points.getLast();
    }
  }

  private boolean isPlaced(Side side, Run run) {
    for (double share : ALONG) {
      for (double away = NEAREST; away < FARTHEST; away += STEP) {
        Text text = text(side, run.at(share), away);
        if (isFree(text)) {
          paper.add(text);
          return true;
        }
      }
    }
    return false;
  }

  /** The name on the inner side of a point, level along the top and the bottom, else upwards. */
  private static Text text(Side side, At at, double away) {
    double size = TextStyle.SMALL.sizeMm();
    double above = size * TextSetting.ASCENT;
    double below = size * TextSetting.DESCENT;
    boolean level = Math.abs(side.outward().y()) > 0.5;
    double outward = level ? side.outward().y() : side.outward().x();
    double base = outward < 0 ? away + above : -away - below;
    At anchor = level ? at.plus(0, base) : at.plus(base, 0);
    return new Text(TextStyle.SMALL, anchor, Anchor.MIDDLE, level, side.name());
  }

  private boolean isFree(Text text) {
    PlacedText room = PlacedText.of(text).widened(CLEAR);
    Bounds bounds = Bounds.of(room);
    return bounds.isIn(frame) && body.contains(bounds) && paper.isFree(room);
  }
}
