package storyrod.drawing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slots;

/**
 * Holes and slots made again: where they lie by dimensions, how wide and how deep by their notes.
 *
 * @param box the part's box as it is made again
 * @param at where a coordinate lies by the drawing
 */
record RemadeHoles(Figures figures, Supplier<Box> box, BiFunction<Axis, Length, Length> at) {
  private static final Pattern ROUND = Pattern.compile("Ø (" + Figures.NUMBER + ")");
  private static final Pattern SUNK = Pattern.compile("countersunk to Ø (" + Figures.NUMBER + ")");
  private static final Pattern DEEP = Pattern.compile(", (" + Figures.NUMBER + ") deep");
  private static final Pattern ANGLE = Pattern.compile("(\\d+)°");
  private static final Pattern SLOT =
      Pattern.compile("(" + Figures.NUMBER + ") × (" + Figures.NUMBER + ") ");

  private Length length(String text) {
    return Length.nearest(figures.length(text).mm());
  }

  private Length bit(String text) {
    return Length.nearest(figures.bit(text).mm());
  }

  private static Length step(Length way, int count) {
    return count == 1 ? Length.ZERO : way.dividedBy(count - 1L, RoundingMode.HALF_EVEN);
  }

  Cut made(Cut.Holes h, String text) {
    boolean through = text.contains(", through");
    Axis axis = h.from().axis();
    Point first = onFace(h.from(), h.centres().getFirst());
    Point last = onFace(h.from(), h.centres().getLast());
    Length way = last.on(h.along()).minus(first.on(h.along()));
    return new Cut.Holes(
        h.term(),
        h.from(),
        first,
        h.along(),
        step(way, h.count()),
        h.count(),
        bit(Figures.found(ROUND, text, 1)),
        through ? box.get().size(axis) : length(Figures.found(DEEP, text, 1)),
        through,
        text.contains("countersunk") ? bit(Figures.found(SUNK, text, 1)) : Length.ZERO,
        h.forWhat(),
        h.at());
  }

  private Point onFace(Face face, Point centre) {
    Point on = centre;
    for (Axis axis : Axis.values()) {
      on =
          on.with(axis, axis == face.axis() ? box.get().at(face) : at.apply(axis, centre.on(axis)));
    }
    return on;
  }

  /** A pocket hole leaves at the middle of the thickness; its narrow step is its bit's own. */
  Cut made(PocketHoles p, String text) {
    Length wide = bit(Figures.found(ROUND, text, 1));
    Axis across = Axis.other(p.from().axis(), p.end().axis());
    Box whole = box.get();
    List<Point> centres = new ArrayList<>();
    for (Point centre : p.centres()) {
      centres.add(
          whole
              .middle()
              .with(p.end().axis(), whole.at(p.end()))
              .with(across, at.apply(across, centre.on(across))));
    }
    return new PocketHoles(
        p.term(),
        p.from(),
        p.end(),
        centres,
        wide,
        wide.dividedBy(2, RoundingMode.HALF_EVEN),
        Integer.parseInt(Figures.found(ANGLE, text, 1)),
        p.forWhat(),
        p.at());
  }

  Cut made(Slots s, String text) {
    boolean through = text.contains(", through");
    Point first = onFace(s.from(), s.centres().getFirst());
    Point last = onFace(s.from(), s.centres().getLast());
    Length way = last.on(s.along()).minus(first.on(s.along()));
    return new Slots(
        s.term(),
        s.form(),
        s.from(),
        first,
        s.along(),
        step(way, s.count()),
        s.count(),
        new Slots.Size(
            length(Figures.found(SLOT, text, 2)),
            length(Figures.found(SLOT, text, 1)),
            through ? box.get().size(s.from().axis()) : length(Figures.found(DEEP, text, 1))),
        through,
        s.forWhat(),
        s.at());
  }
}
