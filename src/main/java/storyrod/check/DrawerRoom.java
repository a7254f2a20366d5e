package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The room above, below and behind the box of a drawer on slides. */
final class DrawerRoom implements Check {
  private static final Length ABOVE = Length.mm(6);
  private static final Length BELOW = Length.mm(3);
  private static final Length BEHIND = Length.mm(6);
  private static final Length GIVE = Length.inch(1, 32);

  @Override
  public String code() {
    return "drawer-room";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The box of a drawer has 6 mm (1/4 in) or more above it, to be hung and lifted off, 3 mm"
            + " (1/8 in) or more below it, or what an under-mounted slide asks for within 1/32 in,"
            + " and 6 mm or more behind it and behind the end of its slides, or it stops on the"
            + " back instead of its front.",
        "Common practice, from memory; the slide's maker says what holds.",
        "It measures to the nearest part above, below and behind the box's sides.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return Hung.drawers(piece).stream().flatMap(drawer -> findings(piece, drawer)).toList();
  }

  private Stream<Diagnostic> findings(Piece piece, Hung drawer) {
    List<Part> sides = drawer.parts().stream().filter(part -> part.thickness() == Axis.X).toList();
    if (sides.isEmpty()) {
      return Stream.empty();
    }
    Box box = sides.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    ItemEntry slide = piece.item(drawer.by().item().value()).orElseThrow();
    Room room = new Room(piece, drawer, slide);
    List<Diagnostic> found = new ArrayList<>();
    tight(room, box, Face.TOP, ABOVE).ifPresent(found::add);
    tight(room, box, Face.BOTTOM, below(slide)).ifPresent(found::add);
    tight(room, withSlides(box, slide), Face.BACK, BEHIND).ifPresent(found::add);
    return found.stream();
  }

  private record Room(Piece piece, Hung drawer, ItemEntry slide) {}

  private static Length below(ItemEntry slide) {
    return slide.kind() == ItemKind.UNDER_SLIDE
        ? slide.sizes().bottomClearance().map(least -> least.minus(GIVE)).orElse(BELOW)
        : BELOW;
  }

  private static Box withSlides(Box box, ItemEntry slide) {
    Length longer =
        slide.length().map(length -> length.minus(box.size(Axis.Y))).orElse(Length.ZERO);
    return box.extended(Face.BACK, longer.max(Length.ZERO));
  }

  private Optional<Diagnostic> tight(Room room, Box box, Face side, Length least) {
    return room.piece().parts().stream()
        .filter(part -> !room.drawer().has(part) && faces(box, part.bounds(), side))
        .reduce((one, two) -> nearer(box, one, two, side))
        .filter(part -> width(box, part, side).isShorterThan(least))
        .map(part -> finding(room, part, side, width(box, part, side)));
  }

  private static Part nearer(Box box, Part one, Part two, Face side) {
    return width(box, two, side).isShorterThan(width(box, one, side)) ? two : one;
  }

  private static boolean faces(Box box, Box part, Face side) {
    boolean isBeyond =
        !part.on(side.axis()).end(side.sign()).minus(box.at(side)).times(side.sign()).isNegative()
            && !part.on(side.axis()).contains(box.on(side.axis()).middle());
    return isBeyond
        && Stream.of(Axis.values())
            .filter(axis -> axis != side.axis())
            .allMatch(axis -> box.on(axis).overlaps(part.on(axis)));
  }

  private static Length width(Box box, Part part, Face side) {
    return part.bounds().at(side.opposite()).minus(box.at(side)).times(side.sign());
  }

  private Diagnostic finding(Room room, Part part, Face side, Length width) {
    String where =
        switch (side) {
          case TOP -> "above the box of";
          case BOTTOM -> "below the box of";
          default -> "behind the box and the slides of";
        };
    String message =
        width.isPositive()
            ? "there is only %s %s `%s`, up to %s"
                .formatted(print(room, width), where, room.drawer().unit(), part.name())
            : "there is no room %s `%s`: %s is in the way"
                .formatted(where, room.drawer().unit(), part.name());
    return Diagnostic.warning(code(), room.drawer().parts().getFirst().at(), message)
        .also(part.at(), part.name() + " is defined here")
        .hint(
            side == Face.BACK
                ? "make the box shallower with shorter slides, or the case deeper: leave %s behind it"
                    .formatted(print(room, BEHIND))
                : "make the box lower: leave %s".formatted(asked(room, side)));
  }

  private static String asked(Room room, Face side) {
    if (side == Face.TOP) {
      return print(room, ABOVE) + " above it";
    }
    return room.slide()
        .sizes()
        .bottomClearance()
        .map(least -> print(room, least) + " below it, which the slide asks for")
        .orElse(print(room, BELOW) + " below it");
  }

  private static String print(Room room, Length length) {
    return room.piece().description().format().formatWithUnit(length);
  }
}
