package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.SolidView.Spot;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Faces and edges of a view of a part with slanted cuts, less what the breaks leave out. */
final class SlantedElements {
  private final PlacedView view;
  private final SolidView solid;

  SlantedElements(PlacedView view) {
    this.view = view;
    this.solid = new SolidView(view.flat(), view.face());
  }

  void addTo(List<Element> elements) {
    for (Range part : shown()) {
      solid.patches().forEach(patch -> addPatch(patch, part, elements));
    }
    for (Role role : List.of(Role.HIDDEN, Role.VISIBLE)) {
      solid.strokes().stream()
          .filter(stroke -> stroke.role() == role)
          .forEach(stroke -> shown().forEach(part -> addStroke(stroke, part, elements)));
    }
  }

  /** The stretches across the paper that are drawn. */
  private List<Range> shown() {
    Range whole = view.flat().box().on(view.across());
    return view.across() == Axis.X ? view.ruler().shown(whole) : List.of(whole);
  }

  private void addPatch(SolidView.Patch patch, Range part, List<Element> elements) {
    List<List<At>> rings = new ArrayList<>();
    for (List<Spot> ring : patch.rings()) {
      List<Spot> left = beyond(ring, part.from().toMm(), 1);
      List<Spot> both = beyond(left, part.to().toMm(), -1);
      if (both.size() > 2) {
        rings.add(both.stream().map(this::at).toList());
      }
    }
    if (!rings.isEmpty()) {
      elements.add(new Area(patch.tone(), rings));
    }
  }

  /** What of a ring lies on one side of a line: beyond it for a sign of 1, before it for -1. */
  private static List<Spot> beyond(List<Spot> ring, double line, int sign) {
    List<Spot> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Spot one = ring.get(i);
      Spot two = ring.get((i + 1) % ring.size());
      double from = sign * (one.across() - line);
      double to = sign * (two.across() - line);
      if (from >= 0) {
        kept.add(one);
      }
      if (from * to < 0) {
        kept.add(one.lerp(two, from / (from - to)));
      }
    }
    return kept;
  }

  private void addStroke(SolidView.Stroke stroke, Range part, List<Element> elements) {
    Spot from = stroke.from();
    Spot to = stroke.to();
    double least = part.from().toMm();
    double most = part.to().toMm();
    double way = to.across() - from.across();
    boolean upright = Math.abs(way) < 1e-9;
    if (upright) {
      if (from.across() >= least - 1e-6 && from.across() <= most + 1e-6) {
        elements.add(new Line(stroke.role(), List.of(at(from), at(to))));
      }
      return;
    }
    double one = Math.clamp((least - from.across()) / way, 0.0, 1.0);
    double two = Math.clamp((most - from.across()) / way, 0.0, 1.0);
    if (Math.abs(one - two) > 1e-9) {
      double start = Math.min(one, two);
      double end = Math.max(one, two);
      elements.add(
          new Line(stroke.role(), List.of(at(from.lerp(to, start)), at(from.lerp(to, end)))));
    }
  }

  private At at(Spot spot) {
    return view.at(Length.nearest(spot.across()), Length.nearest(spot.up()));
  }
}
