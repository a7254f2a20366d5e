package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/**
 * The joints of a piece that are made alike: of one kind, with the same figures.
 *
 * @param places where each of them is, the one that is drawn first
 * @param lines what is said of the cuts of the first part and of the second
 * @param likeness what is the same of all of them
 */
public record JointKind(List<JointPlace> places, List<JointLine> lines, Likeness likeness) {
  public JointKind {
    places = List.copyOf(places);
    lines = List.copyOf(lines);
  }

  /** The one that is drawn. */
  public JointPlace shown() {
    return places.getFirst();
  }

  /** All kinds of a piece, in the order in which its joints are described. */
  public static List<JointKind> of(Piece piece) {
    Notation notation = Notation.of(piece);
    Map<Likeness, List<JointPlace>> alike = new LinkedHashMap<>();
    for (Joint joint : piece.joints()) {
      JointPlace place = JointPlace.of(piece, joint);
      alike.computeIfAbsent(likeness(place, notation), key -> new ArrayList<>()).add(place);
    }
    return alike.entrySet().stream()
        .map(each -> of(each.getValue(), each.getKey(), notation))
        .toList();
  }

  private static JointKind of(List<JointPlace> places, Likeness likeness, Notation notation) {
    return new JointKind(places, lines(places.getFirst(), notation).toList(), likeness);
  }

  /** The same with the places of another. */
  JointKind and(JointKind other) {
    List<JointPlace> all = Stream.concat(places.stream(), other.places.stream()).toList();
    return new JointKind(all, lines, likeness);
  }

  /** What has to be the same of two joints for one drawing to do. */
  record Likeness(
      String type,
      boolean glued,
      List<Joint.ItemCount> fasteners,
      List<String> first,
      List<String> second,
      List<String> figures) {

    /** The same with those figures alone that are drawn. */
    Likeness showing(List<String> drawn) {
      return new Likeness(type, glued, fasteners, first, second, drawn);
    }
  }

  private static Likeness likeness(JointPlace place, Notation notation) {
    Joint joint = place.joint();
    return new Likeness(
        joint.type(),
        joint.glued(),
        joint.fasteners(),
        words(place.first(), notation),
        words(place.second(), notation),
        JointFigures.of(place, notation).stream().map(Wanted::text).sorted().toList());
  }

  private static List<String> words(JointPart part, Notation notation) {
    return JointLines.of(part, notation).stream().map(JointLine::words).sorted().toList();
  }

  private static Stream<JointLine> lines(JointPlace place, Notation notation) {
    return place.parts().stream().flatMap(part -> JointLines.of(part, notation).stream());
  }
}
