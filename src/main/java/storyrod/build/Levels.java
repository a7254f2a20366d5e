package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What is put together into what: for each sub-assembly its parts, and last the piece's units, with
 * the fronts of its drawers among them.
 */
final class Levels {
  private Levels() {}

  static Map<String, List<Unit>> of(Piece piece) {
    Map<String, List<Unit>> levels = new LinkedHashMap<>();
    Map<String, List<Part>> assemblies = new LinkedHashMap<>();
    List<Unit> main = new ArrayList<>();
    Set<String> fronts = Fronts.of(piece);
    for (Part part : piece.parts()) {
      if (part.assembly().isEmpty() || fronts.contains(part.name())) {
        main.add(new Unit(part.name(), Unit.PIECE, List.of(part)));
      } else {
        String assembly = part.assembly().get();
        assemblies.computeIfAbsent(assembly, name -> new ArrayList<>()).add(part);
        levels
            .computeIfAbsent(assembly, name -> new ArrayList<>())
            .add(new Unit(part.name(), assembly, List.of(part)));
      }
    }
    assemblies.forEach((name, parts) -> main.add(new Unit(name, Unit.PIECE, parts)));
    levels.put(Unit.PIECE, main);
    return levels;
  }
}
