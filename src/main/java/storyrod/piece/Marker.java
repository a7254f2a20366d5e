package storyrod.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Gives marks: equal parts and mirror images share one, in the order of the description. */
final class Marker {
  private Marker() {}

  private record Group(Part shown, List<Part> same, List<Part> mirrored) {}

  /**
   * Marks for parts.
   *
   * @param origin what keeps parts of one shape apart all the same, such as where they come from
   */
  static List<Mark> mark(List<Part> parts, UnaryOperator<String> origin) {
    Map<String, Group> byKey = new LinkedHashMap<>();
    for (Part part : parts) {
      PartShape shape = new PartShape(part);
      String key = shape.key() + origin.apply(part.name());
      String mirrorKey = shape.mirrorKey() + origin.apply(part.name());
      Group same = byKey.get(key);
      Group handed = byKey.get(mirrorKey);
      if (same != null) {
        same.same().add(part);
      } else if (handed != null) {
        handed.mirrored().add(part);
      } else {
        byKey.put(key, new Group(part, new ArrayList<>(List.of(part)), new ArrayList<>()));
      }
    }
    List<Mark> marks = new ArrayList<>();
    for (Group group : byKey.values()) {
      marks.add(mark(Mark.letters(marks.size()), group));
    }
    return marks;
  }

  private static Mark mark(String letters, Group group) {
    List<Part> all = new ArrayList<>(group.same());
    all.addAll(group.mirrored());
    return new Mark(
        letters,
        title(all.stream().map(Part::title).distinct().toList()),
        group.shown(),
        group.same().size(),
        group.mirrored().size(),
        all.stream().map(Part::name).toList());
  }

  /** What the titles have in common at their end ("Left side", "Right side": "Side"), or all. */
  static String title(List<String> titles) {
    List<String> words = new ArrayList<>(List.of(titles.getFirst().split(" ")));
    while (!words.isEmpty() && !titles.stream().allMatch(title -> endsWith(title, words))) {
      words.removeFirst();
    }
    if (words.isEmpty()) {
      return String.join(" / ", titles);
    }
    String common = String.join(" ", words);
    return common.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + common.substring(1);
  }

  private static boolean endsWith(String title, List<String> words) {
    String end = String.join(" ", words);
    return title.equalsIgnoreCase(end)
        || title
            .toLowerCase(java.util.Locale.ROOT)
            .endsWith(" " + end.toLowerCase(java.util.Locale.ROOT));
  }
}
