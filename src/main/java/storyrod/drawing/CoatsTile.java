package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.description.FinishEntry;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.piece.Piece;

/**
 * An offcut of one wood on which a finish is tried: a field that stays bare and one for each coat,
 * which begins one field further on, so the last field has them all.
 *
 * @param coats how many coats in all
 */
record CoatsTile(int coats, List<String> captions) implements Tile {
  private static final double LEAST_MM = 9;
  private static final double MOST_MM = 14;

  CoatsTile {
    captions = List.copyOf(captions);
  }

  /** One for each wood of a piece that is finished. */
  static List<CoatsTile> of(Piece piece) {
    int coats = piece.description().finish().map(FinishEntry::allCoats).orElse(0);
    return piece.parts().stream()
        .map(part -> part.stock().wood(piece.description().words()))
        .distinct()
        .filter(any -> coats > 0)
        .map(wood -> new CoatsTile(coats, List.of(wood)))
        .toList();
  }

  private int fields() {
    return coats + 1;
  }

  @Override
  public double shape() {
    return fields();
  }

  @Override
  public double leastMm() {
    return LEAST_MM;
  }

  @Override
  public double mostMm() {
    return MOST_MM;
  }

  @Override
  public int inARow() {
    return Strip.IN_A_ROW;
  }

  @Override
  public List<Element> in(Bounds room) {
    double side = Math.min(room.height(), room.width() / fields());
    List<Element> elements = new ArrayList<>();
    IntStream.range(0, fields())
        .forEach(at -> elements.addAll(field(fields(room, side, at, 1), at)));
    elements.add(new Line(Role.VISIBLE, fields(room, side, 0, fields()).outline()));
    return elements;
  }

  /** Some fields side by side. */
  private static Bounds fields(Bounds room, double side, int from, int count) {
    double left = room.left() + from * side;
    return new Bounds(left, room.top(), left + count * side, room.top() + side);
  }

  /** What has all coats looks as the piece will, and is toned most. */
  private List<Element> field(Bounds field, int coatsOn) {
    Tone tone = coatsOn == 0 ? Tone.WHITE : coatsOn < coats ? Tone.FRONT : Tone.SIDE;
    List<Element> elements = new ArrayList<>();
    elements.add(new Area(tone, List.of(field.corners())));
    elements.add(new Line(Role.THIN, field.outline()));
    Label count = Label.of(TextStyle.SMALL, Integer.toString(coatsOn));
    elements.addAll(Label.place(List.of(count), field, Optional.empty()));
    return elements;
  }
}
