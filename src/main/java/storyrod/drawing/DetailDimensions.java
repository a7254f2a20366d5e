package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Detail.Moves;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;

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

  /** What notes and chains tell and no dimension of its own does, in brackets (ISO 129-1). */
  List<Wanted> told(Notation notation, List<Moves> moves) {
    List<Wanted> told = new ArrayList<>();
    for (FineFeature feature : features) {
      for (Wanted each : repeated(feature, notation)) {
        boolean isTold =
            Stream.concat(moves.stream().map(Moves::now), told.stream()).anyMatch(each::repeats);
        if (!isTold && shows(each.axis(), each.range()) && !flat.full(each.range(), each.axis())) {
          told.add(each);
        }
      }
    }
    return told;
  }

  private List<Wanted> repeated(FineFeature feature, Notation notation) {
    return switch (feature.cut()) {
      case Cut.Trench trench when trench.from().axis() != view.face().axis() ->
          List.of(depth(feature, trench.from().axis(), notation));
      case Dovetails row ->
          new DovetailDetail(row)
              .repeated().stream()
                  .filter(each -> each.along() != view.face().axis())
                  .map(each -> ofRow(row, each, notation))
                  .toList();
      default -> List.of();
    };
  }

  private Wanted depth(FineFeature feature, Axis axis, Notation notation) {
    Range range = feature.box().on(axis);
    return beside(feature, axis, range, told(range, notation));
  }

  private Wanted ofRow(Dovetails row, DovetailDetail.Stretch stretch, Notation notation) {
    Edge edge = new Edge(row.end(), stretch.side().axis(), stretch.side().sign() > 0);
    return beside(edge, stretch.along(), stretch.range(), told(stretch.range(), notation));
  }

  /** How the sides of tails lean. */
  List<CutNote> slopes(Notation notation) {
    return features.stream()
        .flatMap(each -> each.cut() instanceof Dovetails row ? Stream.of(row) : Stream.empty())
        .map(row -> new DovetailDetail(row).slope(view, notation))
        .toList();
  }

  private static String told(Range range, Notation notation) {
    return notation.words().say("part.auxiliary", notation.format().format(range.length()));
  }

  /** On the side of the view on which the joint is open, or nearer to the edge. */
  private Wanted beside(FineFeature feature, Axis axis, Range range, String text) {
    Axis other = Axis.other(view.face().axis(), axis);
    return beside(new Edge(feature.box(), other, isHigh(feature, other)), axis, range, text);
  }

  /** One side of what is measured, at the high or the low end of an axis. */
  private record Edge(Box box, Axis axis, boolean high) {
    Point middle() {
      return box.middle().with(axis, box.on(axis).end(high ? 1 : -1));
    }
  }

  private Wanted beside(Edge edge, Axis axis, Range range, String text) {
    Point base = edge.middle();
    Side far = farSide(edge.axis);
    Side side = edge.high == isFarSide(edge.axis) ? far : far.opposite();
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
