package storyrod.build.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Traits;
import storyrod.build.Verb;
import storyrod.piece.Part;

/**
 * A finish is tried on what is left of the piece's own wood, as soon as there is something left of
 * each: planed along with a part, or sawn off a sheet. Where all parts of a wood are glued up from
 * several boards, their offcuts need not wait for the glue.
 */
final class OffcutBeforeTest implements Rule {
  @Override
  public String key() {
    return "offcut-before-test";
  }

  @Override
  public String reason() {
    return "the finish is tried on an offcut, and there is none before the wood is cut";
  }

  @Override
  public List<Need> needs(Job job) {
    List<String> before =
        byWood(job).values().stream().flatMap(parts -> first(job, parts).stream()).toList();
    return job.all(Verb.TEST)
        .flatMap(test -> before.stream().map(each -> need(each, test.name())))
        .toList();
  }

  private static Map<String, List<Part>> byWood(Job job) {
    List<String> stocks = List.copyOf(job.piece().description().stock().keySet());
    return job.piece().parts().stream()
        .sorted(Comparator.comparingInt(part -> stocks.indexOf(part.stock().name())))
        .collect(
            Collectors.groupingBy(
                part -> part.stock().species(), TreeMap::new, Collectors.toList()));
  }

  /** The work that leaves the first offcut of a wood. */
  private static Optional<String> first(Job job, List<Part> parts) {
    return Stream.of(
            named(Verb.MILL, parts, part -> !job.isPanel(part)),
            named(Verb.SIZE, parts, Traits::isSheet),
            named(Verb.CHOOSE, parts, part -> true))
        .flatMap(names -> names)
        .filter(name -> job.operations().stream().anyMatch(each -> each.name().equals(name)))
        .findFirst();
  }

  private static Stream<String> named(Verb verb, List<Part> parts, Predicate<Part> which) {
    return parts.stream().filter(which).map(part -> Job.name(verb, part.name()));
  }
}
