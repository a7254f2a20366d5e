package storyrod.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.KeptCutout;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The gaps round the fronts of drawers and doors, as notes on the front view. */
final class FrontGaps {
  private static final Length WIDEST = Length.mm(15);

  private final Piece piece;
  private final Words words;
  private final List<Front> fronts;
  private final List<Box> around = new ArrayList<>();

  FrontGaps(Piece piece, HungUnits units, Words words) {
    this.piece = piece;
    this.words = words;
    this.fronts = units.hung().stream().map(this::front).toList();
    Box box = Extent.around(piece.parts());
    Elevation.foremost(units.standing(), box, Face.FRONT)
        .forEach(part -> around.add(part.bounds()));
    fronts.forEach(front -> around.add(front.box));
  }

  /**
   * The front of a unit.
   *
   * @param opening in what it was cut out of and comes back into
   */
  private record Front(Box box, Optional<Box> opening) {}

  private Front front(List<Part> unit) {
    Box box = Extent.around(unit);
    List<Part> front =
        unit.stream().filter(part -> part.bounds().y().from().equals(box.y().from())).toList();
    return new Front(
        Extent.around(front),
        front.stream()
            .flatMap(part -> piece.keptAs(part.name()).stream())
            .map(KeptCutout::opening)
            .findFirst());
  }

  /** One note for fronts with equal gaps. */
  List<CutNote> notes() {
    Map<String, List<Box>> alike = new LinkedHashMap<>();
    for (Front front : fronts) {
      said(gaps(front))
          .ifPresent(said -> alike.computeIfAbsent(said, key -> new ArrayList<>()).add(front.box));
    }
    List<CutNote> notes = new ArrayList<>();
    alike.forEach(
        (said, all) -> {
          String counted = all.size() == 1 ? said : words.say("general.gap-each", all.size(), said);
          List<Point> tips = all.stream().flatMap(box -> edges(box).stream()).toList();
          notes.add(new CutNote(Face.FRONT, counted, tips, 0));
        });
    return notes;
  }

  private static List<Point> edges(Box front) {
    Point middle = front.middle();
    return List.of(
        middle.with(Axis.X, front.x().from()).with(Axis.Z, quarter(front.z())),
        middle.with(Axis.X, front.x().to()).with(Axis.Z, quarter(front.z())));
  }

  private static Length quarter(Range range) {
    return new Range(range.from(), range.middle()).middle();
  }

  private Map<Side, Length> gaps(Front front) {
    Map<Side, Length> gaps = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      gap(front, side).ifPresent(gap -> gaps.put(side, gap));
    }
    return gaps;
  }

  /**
   * The distance to the nearest thing beside a front, or to its opening's side, if that is a gap.
   */
  private Optional<Length> gap(Front front, Side side) {
    Axis axis = side == Side.LEFT || side == Side.RIGHT ? Axis.X : Axis.Z;
    Axis other = Axis.other(Axis.Y, axis);
    int sign = side == Side.RIGHT || side == Side.ABOVE ? 1 : -1;
    Stream<Length> ends =
        front
            .opening
            .map(hole -> Stream.of(hole.on(axis).end(sign)))
            .orElseGet(
                () ->
                    around.stream()
                        .filter(box -> box.on(other).overlaps(front.box.on(other)))
                        .map(box -> box.on(axis).end(-sign)));
    return ends.map(end -> end.minus(front.box.on(axis).end(sign)).times(sign))
        .filter(gap -> gap.isPositive() && !gap.isLongerThan(WIDEST))
        .min(Length::compareTo);
  }

  private Optional<String> said(Map<Side, Length> gaps) {
    LengthFormat format = piece.description().printed();
    Map<String, List<Side>> bySize = new LinkedHashMap<>();
    gaps.forEach(
        (side, gap) ->
            bySize.computeIfAbsent(format.format(gap), key -> new ArrayList<>()).add(side));
    if (bySize.size() == 1 && gaps.size() == Side.values().length) {
      return Optional.of(words.say("general.gap-round", bySize.keySet().iterator().next()));
    }
    return bySize.entrySet().stream()
        .map(each -> words.say("general.gap", each.getKey(), sides(each.getValue())))
        .reduce((one, next) -> words.say("general.gap-and", one, next));
  }

  private String sides(List<Side> sides) {
    List<String> names =
        sides.stream().map(side -> words.say("general.side." + Words.hyphenated(side))).toList();
    return names.size() == 1
        ? names.getFirst()
        : words.say(
            "part.and",
            names.subList(0, names.size() - 1).stream().collect(Collectors.joining(", ")),
            names.getLast());
  }
}
