package storyrod.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import storyrod.description.AssemblyEntry;
import storyrod.description.Diagnostic;
import storyrod.description.HardwareEntry;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A part that nothing holds: no joint, no hardware, no two opposite slots that capture it. */
final class LoosePart implements Check {
  @Override
  public String code() {
    return "loose-part";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Every part hangs together with the first one by joints that hold, by hardware,"
            + " or by lying in slots of two other parts. A sub-assembly with `loose: yes` lies in or"
            + " on the rest by its weight, but its own parts hang together.",
        "Follows from the description.",
        "It does not ask how strong a joint is.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    if (piece.parts().isEmpty()) {
      return List.of();
    }
    Map<String, Set<String>> ties = ties(piece);
    Set<String> seen = reached(piece.parts().getFirst().name(), ties);
    List<Diagnostic> found = new ArrayList<>();
    Set<AssemblyEntry> free = new LinkedHashSet<>();
    for (Part part : piece.parts()) {
      if (!seen.contains(part.name())) {
        Set<String> together = reached(part.name(), ties);
        seen.addAll(together);
        Optional<AssemblyEntry> unit = looseUnit(piece, part).filter(free::add);
        if (unit.isEmpty()) {
          found.add(finding(part, together.size() - 1));
        }
      }
    }
    return found;
  }

  /**
   * The sub-assembly of a part that is meant to be lifted off. What hangs together in it is free
   * once: whatever else of it is loose is loose in it too.
   */
  private static Optional<AssemblyEntry> looseUnit(Piece piece, Part part) {
    return piece.description().assemblies().values().stream()
        .filter(each -> each.loose() && part.name().startsWith(each.name() + "."))
        .findFirst();
  }

  private Diagnostic finding(Part part, int others) {
    String more =
        others == 0
            ? ""
            : ", nor the %s that hang%s together with it"
                .formatted(others == 1 ? "part" : others + " parts", others == 1 ? "s" : "");
    return Diagnostic.warning(code(), part.at(), "nothing holds " + part.name() + more)
        .hint(
            "join it to its neighbour, or name it under `parts:` of the hardware that holds it, or"
                + " give its sub-assembly `loose: yes` if it is to be lifted off");
  }

  private static Map<String, Set<String>> ties(Piece piece) {
    Map<String, Set<String>> ties = new LinkedHashMap<>();
    for (Joint joint : piece.joints()) {
      if (joint.holding() || slots(piece, joint.first()) >= 2) {
        tie(ties, joint.first(), joint.second());
      }
    }
    for (HardwareEntry entry : piece.description().hardware()) {
      for (var part : entry.parts()) {
        tie(ties, entry.parts().getFirst().value(), part.value());
      }
    }
    tieServed(piece, ties);
    return ties;
  }

  /** Holes for an item, such as shelf pins, tie what the item carries to what is drilled for it. */
  private static void tieServed(Piece piece, Map<String, Set<String>> ties) {
    for (HardwareEntry entry : piece.description().hardware()) {
      for (Part part : piece.parts()) {
        boolean drilled =
            part.cuts().stream()
                .anyMatch(cut -> cut.forWhat().equals(Optional.of(entry.item().value())));
        if (drilled && !entry.parts().isEmpty()) {
          tie(ties, part.name(), entry.parts().getFirst().value());
        }
      }
    }
  }

  private static long slots(Piece piece, String part) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part) && !joint.holding())
        .map(Joint::second)
        .distinct()
        .count();
  }

  private static void tie(Map<String, Set<String>> ties, String one, String two) {
    ties.computeIfAbsent(one, key -> new LinkedHashSet<>()).add(two);
    ties.computeIfAbsent(two, key -> new LinkedHashSet<>()).add(one);
  }

  private static Set<String> reached(String start, Map<String, Set<String>> ties) {
    Set<String> reached = new LinkedHashSet<>(List.of(start));
    Deque<String> open = new ArrayDeque<>(reached);
    while (!open.isEmpty()) {
      for (String next : ties.getOrDefault(open.remove(), Set.of())) {
        if (reached.add(next)) {
          open.add(next);
        }
      }
    }
    return reached;
  }
}
