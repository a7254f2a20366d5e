package storyrod.drawing;

import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.Contacts.Path;
import storyrod.drawing.SideBySide.Drawn;
import storyrod.geometry.Solid;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Sub-assemblies that one step builds, each for itself: their parts are drawn apart with room
 * between one and the other, however far they have been moved out.
 */
record BuiltApart(Piece piece, List<List<String>> things) {
  static BuiltApart of(Piece piece, Step step, List<String> shown) {
    Nesting nesting = Nesting.of(piece);
    List<List<String>> things =
        OneOfMany.levels(nesting, step).stream()
            .map(level -> shown.stream().filter(part -> nesting.isIn(part, level)).toList())
            .filter(parts -> !parts.isEmpty())
            .toList();
    return new BuiltApart(piece, things);
  }

  /** How far each part of them is moved, in the plane of the paper; none of a single one. */
  Map<String, Vector3D> offsets(View view, Map<String, Vector3D> out) {
    List<Drawn> drawn =
        things.stream().map(thing -> new Drawn(parts(thing), solids(thing, out))).toList();
    return things.size() < 2 ? Map.of() : SideBySide.of(view, drawn);
  }

  /** Their names, if there are several. */
  List<UnitName> names() {
    return UnitName.of(piece, things.stream().map(this::parts).toList());
  }

  private List<Part> parts(List<String> names) {
    return names.stream().map(piece::part).toList();
  }

  private List<Solid> solids(List<String> names, Map<String, Vector3D> out) {
    return names.stream().map(name -> piece.part(name).placed().moved(out.get(name))).toList();
  }

  /** Ways, moved as their parts are. */
  static List<List<Path>> moved(List<List<Path>> ways, Map<String, Vector3D> by) {
    return ways.stream().map(way -> way.stream().map(each -> moved(each, by)).toList()).toList();
  }

  private static Path moved(Path path, Map<String, Vector3D> by) {
    Vector3D off = by.getOrDefault(path.part(), Vector3D.ZERO);
    return new Path(path.part(), path.from().add(off), path.to().add(off));
  }
}
