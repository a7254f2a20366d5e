package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;

/** Finds what is wrong in a project's options, whichever of them is chosen, and says in which. */
final class OptionFaults {
  private final Mapping project;

  /** Of a project as it is written, without any option. */
  OptionFaults(Mapping project) {
    this.project = project;
  }

  private List<Member> options() {
    return project.get("options").orElse(project) instanceof Mapping all && all != project
        ? all.members()
        : List.of();
  }

  /**
   * Reads the values of all options that are not chosen.
   *
   * @param context of the project, in which everything has been read
   */
  void check(Context context, Optional<String> chosen) {
    options().stream()
        .filter(option -> chosen.filter(option.key().text()::equals).isEmpty())
        .forEach(option -> check(option, context));
  }

  private void check(Member option, Context around) {
    Diagnostics own = new Diagnostics();
    Mapping values = new OptionChoice(project, own).values(option);
    Context context =
        new Context(
            around.scope().aside(),
            new Evaluator(own),
            around.figures(),
            around.vocabulary(),
            around.library(),
            own);
    new Declarations(context).declare(values);
    ValueReader reader = new ValueReader(context);
    for (Key key : Sections.PROJECT.keys()) {
      values.get(key.name()).ifPresent(section -> read(reader, key, section, context, values));
    }
    own.sorted().stream()
        .filter(fault -> isIn(option.value(), fault.at()))
        .forEach(around.diagnostics()::add);
  }

  private static void read(
      ValueReader reader, Key key, Node section, Context context, Mapping values) {
    Optional<Located<?>> read = reader.read(key.type(), section);
    if (key.name().equals("stock")) {
      StockCheck check = new StockCheck(context, values);
      read.map(each -> new Entry("project", section.at(), java.util.Map.of("stock", each)))
          .ifPresent(all -> all.entries("stock").forEach(check::check));
    }
  }

  /** A fault with the name of the option in which it lies. */
  Diagnostic named(Diagnostic fault) {
    return options().stream()
        .filter(option -> isIn(option.value(), fault.at()))
        .findFirst()
        .map(option -> fault.saying("option '" + option.key().text() + "': " + fault.message()))
        .orElse(fault);
  }

  private static boolean isIn(Node node, Span place) {
    return place.source().equals(node.at().source())
        && place.start() >= node.at().start()
        && place.start() < end(node);
  }

  private static int end(Node node) {
    List<Node> inner =
        switch (node) {
          case Scalar text -> List.of();
          case Sequence list -> list.items();
          case Mapping keys -> {
            List<Node> both = new ArrayList<>();
            keys.members().forEach(member -> both.addAll(List.of(member.key(), member.value())));
            yield both;
          }
        };
    return Math.max(
        node.at().end(), inner.stream().mapToInt(OptionFaults::end).max().orElse(node.at().end()));
  }
}
