package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Detail.Moves;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;

/**
 * Which dimensions of a drawing stand in one of its details: those that its view shows there, and
 * those of its joints that another view showed. The overall sizes stay where they are.
 */
record DetailDimensions(FlatPart flat, DetailView view, List<FineFeature> features) {
  List<Moves> of(List<Wanted> wanted) {
    List<Moves> moves = new ArrayList<>();
    for (Wanted each : wanted) {
      now(each)
          .filter(now -> moves.stream().noneMatch(other -> other.now().repeats(now)))
          .ifPresent(now -> moves.add(new Moves(each, now)));
    }
    return moves;
  }

  private Optional<Wanted> now(Wanted each) {
    Face face = view.face();
    boolean isOverall = flat.full(each.range(), each.axis());
    if (isOverall || each.axis() == face.axis() || !shows(each.axis(), each.range())) {
      return Optional.empty();
    }
    if (each.view() == face) {
      return view.shows(each.from()) && view.shows(each.to())
          ? Optional.of(each)
          : Optional.empty();
    }
    return features.stream()
        .filter(feature -> isOf(feature, each))
        .map(feature -> beside(feature, each.axis(), each.range(), each.text()))
        .findFirst();
  }

  private boolean shows(Axis axis, Range range) {
    return view.window().on(axis).contains(range);
  }

  /** Whether a dimension is a joint's size, or where the joint is dimensioned its distance. */
  private boolean isOf(FineFeature feature, Wanted each) {
    Range own = feature.box().on(each.axis());
    boolean isBeside = own.from().equals(each.range().to()) || own.to().equals(each.range().from());
    return own.equals(each.range())
        || isBeside && PlacedView.home(flat, feature.cut()) == each.view();
  }

  /**
   * The depths of trenches that no dimension tells, in brackets: the notes tell them (ISO 129-1).
   */
  List<Wanted> depths(Notation notation, List<Moves> moves) {
    List<Wanted> depths = new ArrayList<>();
    for (FineFeature feature : features) {
      if (feature.cut() instanceof Cut.Trench trench
          && trench.from().axis() != view.face().axis()) {
        Axis axis = trench.from().axis();
        Range range = feature.box().on(axis);
        String text = told(range, notation);
        Wanted depth = beside(feature, axis, range, text);
        boolean isTold =
            Stream.concat(moves.stream().map(Moves::now), depths.stream()).anyMatch(depth::repeats);
        if (!isTold && shows(axis, range) && !flat.full(range, axis)) {
          depths.add(depth);
        }
      }
    }
    return depths;
  }

  private static String told(Range range, Notation notation) {
    return notation.words().say("part.auxiliary", notation.format().format(range.length()));
  }

  /** On the side of the view on which the joint is open, or nearer to the edge. */
  private Wanted beside(FineFeature feature, Axis axis, Range range, String text) {
    Axis other = Axis.other(view.face().axis(), axis);
    boolean high = isHigh(feature, other);
    Length at = feature.box().on(other).end(high ? 1 : -1);
    Point base = feature.box().middle().with(other, at);
    Side side = high == isFarSide(other) ? farSide(other) : farSide(other).opposite();
    return new Wanted(
        view.face(), side, axis, base.with(axis, range.from()), base.with(axis, range.to()), text);
  }

  private boolean isHigh(FineFeature feature, Axis other) {
    if (feature.cut().from().axis() == other) {
      return feature.cut().from().sign() > 0;
    }
    Range own = feature.box().on(other);
    Length before = own.from();
    Length after = flat.size(other).minus(own.to());
    return after.isShorterThan(before);
  }

  /** Whether an axis grows to the right or upwards on the paper. */
  private boolean isFarSide(Axis axis) {
    Point low = Point.ORIGIN;
    Point high = low.with(axis, flat.size(axis));
    return axis == view.across()
        ? view.at(high).x() > view.at(low).x()
        : view.at(high).y() < view.at(low).y();
  }

  private Side farSide(Axis axis) {
    return axis == view.across() ? Side.RIGHT : Side.ABOVE;
  }
}
