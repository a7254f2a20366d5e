package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    boolean crossesAny(List<Paper.Stretch> others) {
      return others.stream().anyMatch(this::crosses);
    }
  }

  static List<Leader> of(Drawing drawing) {
    List<Leader> leaders = new ArrayList<>();
    for (Element element : Clean.flat(drawing.elements())) {
      switch (element) {
        case Balloon b when b.centre().distance(b.tip()) > Lowering.BALLOON_RADIUS ->
            leaders.add(new Leader(b.mark(), new Paper.Stretch(b.centre(), b.tip())));
        case Note n -> lines(n).forEach(leaders::add);
        default -> {}
      }
    }
    return leaders;
  }

  /** A note's leader and the landing that leads from it to the text. */
  private static Stream<Leader> lines(Note note) {
    At landing = new At(note.text().x(), note.elbow().y());
    return Stream.of(
        new Leader(said(note), new Paper.Stretch(note.tip(), note.elbow())),
        new Leader(said(note), new Paper.Stretch(note.elbow(), landing)));
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

  /** Notes whose leader crosses an extension line, though another place needs no such crossing. */
  static List<String> overExtensions(Drawing drawing) {
    return notesOverExtensions(drawing).stream().flatMap(note -> wayRound(drawing, note)).toList();
  }

  private static Stream<String> wayRound(Drawing drawing, Note note) {
    return new WayRound(drawing, note)
        .elbow().stream()
            .map(at -> "'" + said(note) + "' crosses an extension line, but not from " + at);
  }

  static List<Note> notesOverExtensions(Drawing drawing) {
    List<Paper.Stretch> extensions =
        Clean.dimensions(drawing).stream()
            .flatMap(each -> DimensionLayout.of(each).extensions().stream())
            .toList();
    return Clean.flat(drawing.elements()).stream()
        .flatMap(each -> each instanceof Note note ? Stream.of(note) : Stream.empty())
        .filter(note -> lines(note).anyMatch(each -> each.crossesAny(extensions)))
        .toList();
  }
}
