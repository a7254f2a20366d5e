package storyrod.wood;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds entries by name without regard to case. {@code ash, white} is also found as {@code white
 * ash}, and {@code maple, sugar (hard)} also without what stands in parentheses, or by it: {@code
 * hard maple}.
 */
final class NameIndex<T> {
  private static final int SUGGESTIONS = 3;

  private final Map<String, T> byName = new LinkedHashMap<>();
  private final List<String> names = new ArrayList<>();

  void add(String name, T entry) {
    names.add(name);
    for (String form : forms(name)) {
      if (byName.putIfAbsent(form, entry) != null) {
        throw new IllegalStateException("bug: two entries named " + form);
      }
    }
  }

  Optional<T> find(String name) {
    return Optional.ofNullable(byName.get(plain(name)));
  }

  /** Up to three names that a person may have meant, nearest first. */
  List<String> near(String name) {
    String wanted = plain(name);
    return names.stream()
        .filter(each -> isNear(wanted, each))
        .sorted(Comparator.comparingInt(each -> distance(wanted, each)))
        .limit(SUGGESTIONS)
        .toList();
  }

  private static boolean isNear(String wanted, String name) {
    boolean sharesWord = words(name).stream().anyMatch(words(wanted)::contains);
    return sharesWord || distance(wanted, name) <= Math.max(1, wanted.length() / 3);
  }

  private static int distance(String wanted, String name) {
    return forms(name).stream().mapToInt(form -> edits(wanted, form)).min().orElseThrow();
  }

  private static Set<String> words(String name) {
    return new LinkedHashSet<>(List.of(plain(name).split("[^\\p{L}]+")));
  }

  private static String plain(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  private static Set<String> forms(String name) {
    Set<String> forms = new LinkedHashSet<>();
    String full = plain(name);
    String bare = full.replaceAll(" \\([^)]*\\)", "");
    String other = full.replaceAll(", .*\\(([^)]*)\\)", ", $1");
    for (String form : List.of(full, bare, other)) {
      forms.add(form);
      int comma = form.indexOf(", ");
      if (comma > 0) {
        forms.add(form.substring(comma + 2) + " " + form.substring(0, comma));
      }
    }
    return forms;
  }

  /** The fewest letters to insert, delete or replace to turn one word into the other. */
  static int edits(String one, String other) {
    int[] row = new int[other.length() + 1];
    java.util.Arrays.setAll(row, i -> i);
    for (int i = 1; i <= one.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int replaced = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[other.length()];
  }
}
