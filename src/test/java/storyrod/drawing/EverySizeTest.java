package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.PartDrawings.Sample;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** Whoever makes a part finds every size of every cut in its drawing. */
class EverySizeTest {
  /** Every cut's place from an edge, size and depth stand in the drawing. */
  @TestFactory
  List<DynamicTest> everySizeOfEveryCutIsGiven() {
    return PartDrawings.each(
        sample -> {
          List<String> missing = new ArrayList<>();
          sample.part().cuts().forEach(cut -> missing.addAll(missing(sample, cut)));
          assertEquals(List.of(), missing);
        });
  }

  private static List<String> missing(Sample sample, Cut cut) {
    List<Length> lengths = new ArrayList<>();
    List<String> words = new ArrayList<>();
    Part part = sample.part();
    switch (cut) {
      case Cut.Trench t -> {
        boolean through = t.removed().on(part.thickness()).equals(part.box().on(part.thickness()));
        for (Axis axis : Axis.values()) {
          boolean shown = through ? axis != part.thickness() : axis != t.from().axis();
          if (shown) {
            addRange(t.removed().on(axis), part.box().on(axis), lengths);
          }
        }
        words.add(through ? t.term() : sample.format().format(t.depth()) + " deep");
      }
      case Cut.Tenon t -> {
        for (Axis axis : Axis.values()) {
          if (t.haunch().filter(each -> each.side().axis() == axis).isPresent()) {
            lengths.add(t.tenon().size(axis));
          } else {
            addRange(t.tenon().on(axis), part.box().on(axis), lengths);
          }
        }
        t.haunch()
            .ifPresent(
                each -> lengths.addAll(List.of(each.width(), each.box().size(t.from().axis()))));
        words.add(t.haunch().isPresent() ? "haunched " + t.term() : t.term());
      }
      case Cut.Holes h -> {
        for (Axis axis : Axis.values()) {
          if (axis != h.from().axis()) {
            Length first = h.centres().getFirst().on(axis);
            Length last = h.centres().getLast().on(axis);
            addPlace(new Range(first.min(last), first.max(last)), part.box().on(axis), lengths);
          }
        }
        words.add("Ø " + sample.format().forBits().format(h.diameter()));
        words.add(h.through() ? "through" : sample.format().format(h.depth()) + " deep");
        if (!h.countersink().isZero()) {
          words.add("countersunk to Ø " + sample.format().forBits().format(h.countersink()));
        }
        lengths.add(h.step().times(h.count() - 1L));
      }
      case Comb c -> addRange(c.sockets().getFirst(), part.box().on(c.along()), lengths);
      case Dovetails d -> {
        Range first = d.tails().getFirst().wide();
        lengths.add(first.length());
        addPlace(first, part.box().on(d.across()), lengths);
        lengths.add(d.tails().getLast().wide().from().minus(first.from()));
        lengths.add(d.baseline());
        lengths.add(d.length());
        words.add("slope 1:" + d.slopeWord());
      }
      case SplineSlot s -> words.add("spline slot");
      case Slanted.Slope s -> {}
      case Slanted.Housing h -> {}
      case InPlace i -> {}
      case Slots s -> {
        for (Axis axis : Axis.values()) {
          if (axis != s.from().axis()) {
            Length first = s.centres().getFirst().on(axis);
            Length last = s.centres().getLast().on(axis);
            addPlace(new Range(first.min(last), first.max(last)), part.box().on(axis), lengths);
          }
        }
        words.add(sample.format().format(s.width()) + " × " + sample.format().format(s.length()));
        words.add(s.through() ? "through" : sample.format().format(s.depth()) + " deep");
        lengths.add(s.step().times(s.count() - 1L));
      }
      case Cut.Shaped s -> {
        for (Axis axis : s.contour().axes()) {
          addRange(s.contour().extent(axis), part.box().on(axis), lengths);
        }
      }
      case Cut.Roundover r ->
          words.add("R " + sample.format().forBits().format(r.radius()) + " roundover");
      case PocketHoles p -> {
        Axis across = Axis.other(p.from().axis(), p.end().axis());
        for (Point centre : p.centres()) {
          Length at = centre.on(across);
          addPlace(new Range(at, at), part.box().on(across), lengths);
        }
        String drill = sample.format().forBits().format(p.diameter());
        words.add("Ø " + drill + " at " + p.angleDegrees() + "°");
      }
    }
    return notGiven(sample, lengths, words);
  }

  private static List<String> notGiven(Sample sample, List<Length> lengths, List<String> words) {
    List<Length> given =
        Clean.dimensions(sample.drawing()).stream().map(Dimension::measure).toList();
    List<String> missing = new ArrayList<>();
    lengths.stream()
        .filter(length -> !given.contains(length))
        .forEach(length -> missing.add(sample.format().format(length)));
    String notes = Clean.notes(sample.drawing());
    words.stream().filter(word -> !notes.contains(word)).forEach(missing::add);
    return missing;
  }

  private static void addRange(Range cut, Range whole, List<Length> lengths) {
    if (!cut.equals(whole)) {
      lengths.add(cut.length());
      addPlace(cut, whole, lengths);
    }
  }

  private static void addPlace(Range cut, Range whole, List<Length> lengths) {
    Length nearer = cut.from().minus(whole.from()).min(whole.to().minus(cut.to()));
    if (nearer.isPositive()) {
      lengths.add(nearer);
    }
  }
}
