package storyrod.planset;

import java.util.Comparator;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Turns the names that parts have in a description into titles and marks. A name that is a common
 * word, such as {@code top}, is taken for a part only where a message begins with it.
 */
final class ReaderNames {
  private final Map<String, Part> parts;
  private final Texts texts;
  private final Pattern names;

  ReaderNames(Piece piece, Texts texts) {
    this.parts = piece.parts().stream().collect(Collectors.toMap(Part::name, Function.identity()));
    this.texts = texts;
    this.names =
        Pattern.compile(
            piece.parts().stream()
                .map(Part::name)
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(ReaderNames::pattern)
                .collect(Collectors.joining("|", "(?<![\\w.`-])(?:", ")(?![\\w`-]|\\.\\w)")));
  }

  private static String pattern(String name) {
    boolean isWord = name.chars().allMatch(Character::isLetter);
    return (isWord ? "^" : "") + Pattern.quote(name);
  }

  String in(String message) {
    return names.matcher(message).replaceAll(found -> titled(found));
  }

  private String titled(MatchResult found) {
    Part part = parts.get(found.group());
    return texts.say("finding.part", Texts.uncapital(part.title()), part.mark());
  }
}
