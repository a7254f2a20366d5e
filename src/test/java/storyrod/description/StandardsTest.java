package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.build.Planner;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.stock.StockPlanner;

/** What the reference says of a key that is left out is true: writing it out changes nothing. */
class StandardsTest {
  static Stream<Arguments> standards() {
    return ExampleFiles.kinds()
        .flatMap(
            kind ->
                kind.keys().stream()
                    .filter(key -> key.standard().isPresent())
                    .flatMap(
                        key ->
                            Stream.of(
                                Arguments.of(kind, key, "inch", key.standard().get().inch()),
                                Arguments.of(kind, key, "mm", key.standard().get().mm()))));
  }

  @ParameterizedTest(name = "{1} in {2}")
  @MethodSource("standards")
  void standardWrittenOutChangesNothing(EntryType kind, Key key, String unit, String standard) {
    SourceText source = in(unit, ExampleFiles.source(kind));
    assertEquals(outcome(without(kind, key, source)), outcome(with(kind, key, source, standard)));
  }

  @Test
  void anotherValueChangesSomething() {
    SourceText source = ExampleFiles.source(SupplySections.SHOP);
    Key kerf = SupplySections.SHOP.keys().getFirst();
    assertNotEquals(
        outcome(without(SupplySections.SHOP, kerf, source)),
        outcome(with(SupplySections.SHOP, kerf, source, "1/16 in")));
  }

  private static SourceText in(String unit, SourceText source) {
    assertTrue(source.text().contains("units: inch"));
    return new SourceText("a.yaml", source.text().replace("units: inch", "units: " + unit));
  }

  private static String with(EntryType kind, Key key, SourceText source, String standard) {
    Span at = member(kind, key, source).value().at();
    return cut(source, at.start(), at.end(), standard);
  }

  private static String without(EntryType kind, Key key, SourceText source) {
    Member member = member(kind, key, source);
    String text = source.text();
    int start = member.key().at().start();
    int end = member.value().at().end();
    boolean behindComma = text.startsWith(", ", start - 2);
    boolean beforeComma = text.startsWith(", ", end);
    return cut(
        source, behindComma ? start - 2 : start, !behindComma && beforeComma ? end + 2 : end, "");
  }

  private static String cut(SourceText source, int from, int to, String instead) {
    return source.text().substring(0, from) + instead + source.text().substring(to);
  }

  private static Member member(EntryType kind, Key key, SourceText source) {
    List<Member> found = new ArrayList<>();
    Node root = YamlReader.read(source, new Diagnostics()).orElseThrow();
    Walk.over(
        root,
        ExampleFiles.VOCABULARY,
        (type, mapping) -> {
          if (type.equals(kind)) {
            found.addAll(named(mapping, key));
          }
        });
    return found.getFirst();
  }

  private static List<Member> named(Mapping mapping, Key key) {
    return mapping.members().stream()
        .filter(member -> member.key().text().equals(key.name()))
        .toList();
  }

  /** All that a description comes to, but for where things stand in its text. */
  private static String outcome(String text) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<Description> read =
        new DescriptionReader(ExampleFiles.VOCABULARY, codePoint -> true, ExampleFiles.LIBRARY)
            .read(new SourceText("a.yaml", text), diagnostics);
    StringBuilder all = new StringBuilder();
    read.ifPresent(description -> tell(description, diagnostics, all));
    diagnostics.sorted().forEach(each -> all.append(each.message()).append('\n'));
    return all.toString().replaceAll("a\\.yaml:\\d+:\\d+", "");
  }

  private static void tell(Description read, Diagnostics diagnostics, StringBuilder all) {
    all.append(read.format()).append(read.stock()).append(read.items()).append(read.hardware());
    all.append(read.finish()).append(read.shop()).append('\n');
    Optional<Piece> piece = PieceBuilder.build(read, diagnostics);
    piece.ifPresent(
        each -> {
          all.append(each.joints()).append('\n');
          each.parts().forEach(part -> all.append(part.cuts()).append('\n'));
          all.append(StockPlanner.plan(each, diagnostics)).append('\n');
          all.append(Planner.plan(each, diagnostics)).append('\n');
        });
  }
}
