package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Note;

/** The leaders of a drawing's notes and balloons, and what they run across. */
final class Leaders {
  private Leaders() {}

  /** A leader by what it leads to. */
  record Leader(String said, Paper.Stretch line) {
    boolean crosses(Paper.Stretch other) {
      return Balloons.cross(line.from(), line.to(), other.from(), other.to());
    }
  }

  static List<Leader> of(Drawing drawing) {
    List<Leader> leaders = new ArrayList<>();
    for (Element element : Clean.flat(drawing.elements())) {
      switch (element) {
        case Balloon b when b.centre().distance(b.tip()) > Lowering.BALLOON_RADIUS ->
            leaders.add(new Leader(b.mark(), new Paper.Stretch(b.centre(), b.tip())));
        case Note n -> {
          At landing = new At(n.text().x(), n.elbow().y());
          leaders.add(new Leader(said(n), new Paper.Stretch(n.tip(), n.elbow())));
          leaders.add(new Leader(said(n), new Paper.Stretch(n.elbow(), landing)));
        }
        default -> {}
      }
    }
    return leaders;
  }

  private static String said(Note note) {
    return String.join(" ", note.lines());
  }

  /** Leaders that cross each other. */
  static List<String> crossings(Drawing drawing) {
    List<String> found = new ArrayList<>();
    List<Leader> all = of(drawing);
    for (int i = 0; i < all.size(); i++) {
      for (Leader other : all.subList(i + 1, all.size())) {
        if (all.get(i).crosses(other.line)) {
          found.add("the leader of '" + all.get(i).said + "' crosses that of '" + other.said + "'");
        }
      }
    }
    return found;
  }

  /** Leaders that cross a dimension line; extension lines may be crossed. */
  static List<String> overDimensions(Drawing drawing) {
    List<String> found = new ArrayList<>();
    for (Element element : Clean.flat(drawing.elements())) {
      Optional<Paper.Stretch> line = DimensionLayout.line(element);
      for (Leader leader : of(drawing)) {
        if (line.filter(leader::crosses).isPresent()) {
          found.add("the leader of '" + leader.said + "' crosses " + element);
        }
      }
    }
    return found;
  }
}
