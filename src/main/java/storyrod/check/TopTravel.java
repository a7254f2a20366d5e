package storyrod.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Fasteners that let a top move less than it does. */
final class TopTravel implements Check {
  @Override
  public String code() {
    return "top-travel";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A fastener under a solid top lets it move by as much as the top swells and shrinks between"
            + " it and what fixes the top: the middle of all its fasteners.",
        "Movement after the Wood Handbook, eq. 13-2 and 13-3, over the whole year in the room under"
            + " `climate`; the travel is the item's, usually 1/4 in (from memory; the maker says"
            + " what holds).",
        "It takes the top to be pinned, or to stay, in the middle, and every fastener to be set in"
            + " the middle of its travel.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Map<Part, List<Joint>> tops = new LinkedHashMap<>();
    for (Joint joint : piece.joints()) {
      if (travel(piece, joint).isPresent()) {
        Part top = piece.part(joint.first());
        if (Seasons.moves(top, top.width()) && !top.pose().isTurned()) {
          tops.computeIfAbsent(top, key -> new ArrayList<>()).add(joint);
        }
      }
    }
    Seasons seasons = new Seasons(piece);
    List<Diagnostic> found = new ArrayList<>();
    tops.forEach((top, joints) -> check(piece, seasons, top, joints, found));
    return found;
  }

  /** The least travel in mm of the fasteners under a part; none if it has none that travel. */
  static OptionalDouble least(Piece piece, Part top) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(top.name()))
        .flatMap(joint -> travel(piece, joint).stream())
        .mapToDouble(Length::toMm)
        .min();
  }

  private static Optional<Length> travel(Piece piece, Joint joint) {
    return joint.fasteners().stream()
        .flatMap(each -> piece.item(each.item()).stream())
        .flatMap(item -> item.sizes().travel().stream())
        .min(Length::compareTo);
  }

  private void check(
      Piece piece, Seasons seasons, Part top, List<Joint> joints, List<Diagnostic> found) {
    Axis across = top.width();
    Length middle =
        joints.stream()
            .map(joint -> joint.contact().on(across))
            .reduce(Range::around)
            .orElseThrow()
            .middle();
    for (Joint joint : joints) {
      Length travel = travel(piece, joint).orElseThrow();
      Range at = joint.contact().on(across);
      boolean runsAcross = piece.part(joint.second()).length() == across;
      Length away = runsAcross ? furthest(at, middle) : at.middle().minus(middle).abs();
      OptionalDouble moves = seasons.wholeYear(top, away);
      if (moves.isPresent() && moves.getAsDouble() > travel.toMm()) {
        found.add(
            finding(piece, seasons, top, joint, new Moving(away, moves.getAsDouble(), travel)));
      }
    }
  }

  private record Moving(Length away, double moves, Length travel) {}

  private static Length furthest(Range at, Length middle) {
    return at.from().minus(middle).abs().max(at.to().minus(middle).abs());
  }

  private Diagnostic finding(Piece piece, Seasons seasons, Part top, Joint joint, Moving moving) {
    return Diagnostic.warning(
            code(),
            joint.at(),
            "%s from its middle, %s moves by %s through the year, but the fastener lets it by %s"
                .formatted(
                    piece.description().format().formatWithUnit(moving.away()),
                    top.name(),
                    seasons.print(moving.moves()),
                    seasons.print(moving.travel().toMm())))
        .also(top.at(), top.name() + " is defined here")
        .hint("take fasteners with more travel, or set them nearer the middle");
  }
}
