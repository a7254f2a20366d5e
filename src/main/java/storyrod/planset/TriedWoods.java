package storyrod.planset;

import java.util.Arrays;
import java.util.List;
import storyrod.words.Words;

/**
 * On what a maker has tried a finish: the maker's words, but where the language knows each of the
 * woods in them, as in {@code white oak and birch plywood offcuts}, these in its own.
 */
final class TriedWoods {
  private static final String OFFCUTS = " offcuts?$";
  private static final String AND = ", | and ";

  private TriedWoods() {}

  static String told(String written, Words words) {
    List<String> woods =
        Arrays.stream(written.replaceFirst(OFFCUTS, "").split(AND)).map(String::strip).toList();
    boolean isNamed = !words.name(written).equals(written);
    boolean knowsAll = woods.stream().noneMatch(wood -> words.name(wood).equals(wood));
    return isNamed || !knowsAll
        ? words.say("finish.tried", words.name(written))
        : words.say("finish.tried-woods", String.join(", ", names(woods, words)));
  }

  private static List<String> names(List<String> woods, Words words) {
    return woods.stream().map(words::name).toList();
  }
}
