package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** The dimensions in the section of a joint: the sizes of its cuts, then where they lie. */
final class JointFigures {
  private final JointPlace place;
  private final Notation notation;
  private final Face view;
  private final List<Wanted> all = new ArrayList<>();
  private boolean hasRow;
  private boolean areSizes = true;

  private JointFigures(JointPlace place, Notation notation) {
    this.place = place;
    this.notation = notation;
    this.view = place.sectionFace();
  }

  static List<Wanted> of(JointPlace place, Notation notation) {
    JointFigures figures = new JointFigures(place, notation);
    place.parts().stream().filter(JointPart::isSquare).forEach(figures::addSizes);
    figures.areSizes = false;
    place.parts().stream().filter(JointPart::isSquare).forEach(figures::addPlaces);
    return List.copyOf(figures.all);
  }

  private void addSizes(JointPart part) {
    for (Cut cut : part.cuts()) {
      switch (cut) {
        case Cut.Trench trench -> boxed(trench.removed(), part.part().box());
        case Cut.Tenon tenon -> {
          boxed(tenon.tenon(), tenon.end());
          size(tenon.from().axis(), tenon.tenon().on(tenon.from().axis()), tenon.tenon());
        }
        case Cut.Holes holes -> deep(holes.from(), holes.through(), JointRow.around(holes));
        case Slots slots ->
            deep(slots.from(), slots.through(), slots.around(slots.centres().getFirst()));
        case Comb comb -> {}
        case Cut.Shaped shaped -> {}
        case Cut.Roundover roundover -> {}
        case PocketHoles pockets -> {}
        case InPlace inPlace -> {}
        case Slanted.Slope slope -> {}
        case Slanted.Housing housing -> {}
        case Dovetails dovetails -> {}
        case SplineSlot slot -> {}
      }
    }
  }

  /** Where the cuts lie; the holes of the second part lie under those of the first. */
  private void addPlaces(JointPart part) {
    Box own = part.part().box();
    for (Cut cut : part.cuts()) {
      switch (cut) {
        case Cut.Trench trench -> fromEdge(trench.removed(), own);
        case Cut.Tenon tenon -> shoulders(tenon);
        case Cut.Holes holes -> row(holes, own);
        case Slots slots -> row(slots, own);
        case Comb comb -> {}
        case Cut.Shaped shaped -> {}
        case Cut.Roundover roundover -> {}
        case PocketHoles pockets -> {}
        case InPlace inPlace -> {}
        case Slanted.Slope slope -> {}
        case Slanted.Housing housing -> {}
        case Dovetails dovetails -> {}
        case SplineSlot slot -> {}
      }
    }
  }

  private void deep(Face from, boolean through, Box box) {
    if (!through && from.axis() == place.normal()) {
      size(from.axis(), box.on(from.axis()), box);
    }
  }

  /** The sizes of a box where they are not those of what it is cut from. */
  private void boxed(Box box, Box from) {
    for (Axis axis : DimensionSides.inPlane(view)) {
      if (!box.on(axis).equals(from.on(axis))) {
        size(axis, box.on(axis), box);
      }
    }
  }

  /** How far a cut is from an edge that is shown. */
  private void fromEdge(Box box, Box own) {
    Axis across = Axis.other(view.axis(), place.normal());
    Range low = between(own.on(across).from(), box.on(across).from());
    Range high = between(box.on(across).to(), own.on(across).to());
    size(across, low.length().isLongerThan(high.length()) ? high : low, box);
  }

  private static Range between(Length one, Length two) {
    return new Range(one.min(two), one.max(two));
  }

  private void shoulders(Cut.Tenon tenon) {
    for (Axis axis : DimensionSides.inPlane(view)) {
      if (axis != tenon.from().axis()) {
        Range end = tenon.end().on(axis);
        Range own = tenon.tenon().on(axis);
        size(axis, between(end.from(), own.from()), tenon.end());
      }
    }
  }

  /** From the nearer end to the first hole, and on to the next; or how far it is from a face. */
  private void row(Cut cut, Box own) {
    JointRow.of(cut, place.normal()).filter(row -> !hasRow).ifPresent(row -> row(row, own));
  }

  private void row(JointRow row, Box own) {
    hasRow = true;
    Axis across = Axis.other(view.axis(), place.normal());
    Point first = row.centres().getFirst();
    if (row.isRow() && row.along() == across) {
      size(across, row.step(), first);
    }
    Range low = between(own.on(across).from(), first.on(across));
    Range high = between(first.on(across), own.on(across).to());
    size(across, high.length().isShorterThan(low.length()) ? high : low, first);
  }

  private void size(Axis axis, Range range, Box at) {
    size(axis, range, at.middle());
  }

  private void size(Axis axis, Range range, Point at) {
    boolean shown =
        axis != view.axis()
            && range.length().isPositive()
            && place.window().on(axis).contains(range);
    boolean isTold =
        all.stream().anyMatch(each -> each.axis() == axis && each.range().equals(range));
    if (shown && !isTold) {
      Point base = base(axis, at);
      all.add(
          new Wanted(
              view,
              side(axis),
              axis,
              base.with(axis, range.from()),
              base.with(axis, range.to()),
              text(range.length())));
    }
  }

  /** As the notes say sizes and the part drawings say places. */
  private String text(Length length) {
    return areSizes ? notation.format().format(length) : notation.format().told(length);
  }

  /** On the side of the view at which the dimension stands. */
  private Point base(Axis axis, Point at) {
    Axis other = Axis.other(view.axis(), axis);
    return at.with(other, place.window().on(other).to());
  }

  private Side side(Axis axis) {
    boolean isAcross = axis == (view.axis() == Axis.X ? Axis.Y : Axis.X);
    return isAcross ? Side.ABOVE : Side.RIGHT;
  }
}
