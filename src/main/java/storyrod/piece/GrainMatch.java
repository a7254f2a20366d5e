package storyrod.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.description.PartEntry;
import storyrod.geometry.Axis;

/**
 * Parts that are cut from one board or sheet as neighbours, so that the grain runs on over them.
 *
 * @param word the maker's own word for them
 * @param parts as they follow each other, where they do
 * @param row the axis of the piece along which they follow each other; none where they do not
 */
public record GrainMatch(String word, List<Part> parts, Optional<Axis> row) {
  public GrainMatch {
    parts = List.copyOf(parts);
  }

  /** The matches that a description asks for, in the order of its parts. */
  public static List<GrainMatch> of(Piece piece) {
    Map<String, List<Part>> byWord = new LinkedHashMap<>();
    for (PartEntry entry : piece.description().parts()) {
      entry
          .match()
          .ifPresent(
              word ->
                  byWord
                      .computeIfAbsent(word.value(), w -> new ArrayList<>())
                      .add(piece.part(entry.name())));
    }
    return byWord.entrySet().stream().map(each -> of(each.getKey(), each.getValue())).toList();
  }

  private static GrainMatch of(String word, List<Part> parts) {
    Part first = parts.getFirst();
    return Stream.of(first.length(), first.width())
        .filter(axis -> isRow(sorted(parts, axis), axis))
        .findFirst()
        .map(axis -> new GrainMatch(word, sorted(parts, axis), Optional.of(axis)))
        .orElseGet(() -> new GrainMatch(word, parts, Optional.empty()));
  }

  private static List<Part> sorted(List<Part> parts, Axis axis) {
    return parts.stream()
        .sorted(Comparator.comparing(part -> part.bounds().on(axis).from()))
        .toList();
  }

  private static boolean isRow(List<Part> parts, Axis axis) {
    Axis across = Axis.other(axis, parts.getFirst().thickness());
    return IntStream.range(1, parts.size())
        .allMatch(i -> follows(parts.get(i - 1), parts.get(i), axis, across));
  }

  private static boolean follows(Part one, Part next, Axis axis, Axis across) {
    boolean isApart = !one.bounds().on(axis).to().isLongerThan(next.bounds().on(axis).from());
    return isApart && one.bounds().on(across).overlaps(next.bounds().on(across));
  }

  /** Whether they follow each other along the grain, end to end; else they lie side by side. */
  public boolean endToEnd() {
    return row.filter(axis -> axis == parts.getFirst().length()).isPresent();
  }
}
