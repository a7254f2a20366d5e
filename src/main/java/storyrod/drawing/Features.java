package storyrod.drawing;

import java.util.List;
import java.util.TreeSet;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Range;
import storyrod.geometry.Segment;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** Where along a part something is to be seen, so that only plain stretches are left out. */
final class Features {
  private static final Length UNBROKEN = Length.mm(10);

  private Features() {}

  /** The places from one end of a part, from shortest to longest; both ends are among them. */
  static TreeSet<Length> of(FlatPart flat) {
    TreeSet<Length> features = new TreeSet<>(List.of(Length.ZERO, flat.size(Axis.X)));
    for (Cut cut : flat.cuts()) {
      switch (cut) {
        case Cut.Trench t -> addEnds(t.removed(), features);
        case Slanted.Slope s -> addStretch(s.first().x(), s.second().x(), features);
        case Slanted.Housing h -> addEnds(h.removed(), features);
        case Slots s -> s.centres().forEach(centre -> addEnds(s.around(centre), features));
        case Dovetails d -> addStretch(d.end().x().from(), d.end().x().to(), features);
        case SplineSlot s -> {
          Range reach = s.along() == Axis.X ? s.run() : s.profile().extent(Axis.X);
          addStretch(reach.from(), reach.to(), features);
        }
        case InPlace i -> i.bores().forEach(bore -> features.add(bore.mouth().x()));
        case Cut.Shaped s -> addShape(s.contour(), features);
        case Cut.Roundover r -> {}
        case Cut.Tenon t -> {
          addEnds(t.tenon(), features);
          t.haunch().ifPresent(haunch -> addEnds(haunch.box(), features));
        }
        case Comb c -> c.boxes().forEach(each -> addEnds(each, features));
        case Cut.Holes h -> h.centres().forEach(centre -> features.add(centre.x()));
        case PocketHoles p ->
            p.centres()
                .forEach(
                    centre -> {
                      features.add(Bores.mouth(flat, p, centre).x());
                      features.add(centre.x());
                    });
      }
    }
    return features;
  }

  private static void addEnds(Box box, TreeSet<Length> features) {
    features.addAll(List.of(box.x().from(), box.x().to()));
  }

  private static void addShape(Contour contour, TreeSet<Length> features) {
    Curves.places(contour).forEach(features::add);
    for (Segment segment : contour.segments()) {
      if (segment instanceof Segment.Arc arc) {
        addStretch(arc.from().x(), arc.through().x(), features);
        addStretch(arc.through().x(), arc.to().x(), features);
      } else if (!segment.from().z().equals(segment.to().z())) {
        addStretch(segment.from().x(), segment.to().x(), features);
      }
    }
  }

  /** A slanted or curved line must not be broken, so it is a feature all along. */
  private static void addStretch(Length one, Length other, TreeSet<Length> features) {
    Length to = one.max(other);
    for (Length at = one.min(other); at.isShorterThan(to); at = at.plus(UNBROKEN)) {
      features.add(at);
    }
    features.add(to);
  }
}
