package storyrod.planset;

import java.util.Comparator;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.StockEntry;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Turns the names that parts and stocks have in a description into titles and marks. A name that is
 * a common word, such as {@code top}, is taken for a part only where a message begins with it, and
 * so is any name of a stock.
 */
final class ReaderNames {
  private final Map<String, Part> parts;
  private final Map<String, StockEntry> stocks;
  private final Texts texts;
  private final Pattern names;

  ReaderNames(Piece piece, Texts texts) {
    this.parts = piece.parts().stream().collect(Collectors.toMap(Part::name, Function.identity()));
    this.stocks = piece.description().stock();
    this.texts = texts;
    this.names =
        Pattern.compile(
            Stream.concat(parts.keySet().stream(), stocks.keySet().stream())
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(this::pattern)
                .collect(Collectors.joining("|", "(?<![\\w.`-])(?:", ")(?![\\w`-]|\\.\\w)")));
  }

  private String pattern(String name) {
    boolean isWord = !parts.containsKey(name) || name.chars().allMatch(Character::isLetter);
    return (isWord ? "^" : "") + Pattern.quote(name);
  }

  String in(String message) {
    return names.matcher(message).replaceAll(found -> titled(found));
  }

  private String titled(MatchResult found) {
    Part part = parts.get(found.group());
    if (part == null) {
      return Matcher.quoteReplacement(texts.stock(stocks.get(found.group())));
    }
    return texts.say("finding.part", texts.words().inSentence(part.title()), part.mark());
  }
}
