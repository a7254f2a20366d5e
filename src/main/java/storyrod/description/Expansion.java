package storyrod.description;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;
import storyrod.description.Scope.Instances;
import storyrod.description.Scope.Nth;

/**
 * An entry that names something repeated stands once for each of it, and not at all if what it
 * names is left out. Where it names two that are repeated, they go in pairs; if there are not as
 * many of both, it stays open which is meant.
 */
final class Expansion {
  private static final Pattern PATH = Pattern.compile("[a-z][a-z0-9]*(?:[.-][a-z0-9]+)*");

  private final Scope scope;

  Expansion(Scope scope) {
    this.scope = scope;
  }

  /** The scopes in which an entry is to be read, one for each time that it stands for. */
  List<Scope> of(Node entry) {
    Map<String, Instances> repeated = new LinkedHashMap<>();
    texts(entry).flatMap(Expansion::paths).forEach(path -> collect(path, repeated));
    List<String> names = texts(entry).flatMap(Expansion::paths).map(PartNames::first).toList();
    boolean lacksOne = names.stream().anyMatch(name -> isMissing(name, names, scope));
    if (lacksOne) {
      return List.of();
    }
    if (repeated.isEmpty()) {
      return List.of(scope);
    }
    List<Integer> counts =
        repeated.values().stream().map(each -> each.all().size()).distinct().sorted().toList();
    int count = counts.getFirst();
    if (count > 0 && counts.size() > 1) {
      return List.of(scope);
    }
    List<Scope> scopes = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      Scope one = scope.within();
      Nth nth = new Nth(number, count);
      repeated.keySet().forEach(name -> one.nth().put(name, nth));
      repeated.values().stream().findFirst().ifPresent(all -> neighbours(one, all, nth));
      if (one.aliases().keySet().stream().noneMatch(each -> isMissing(each, names, one))) {
        scopes.add(one);
      }
    }
    return scopes;
  }

  /** The names of the one before and the one after. */
  private void neighbours(Scope one, Instances all, Nth nth) {
    List<String> names = all.all().stream().map(each -> pathTo(all) + each.name()).toList();
    one.aliases().put("before", new Alias(scope, () -> names, nth.number() - 2));
    one.aliases().put("after", new Alias(scope, () -> names, nth.number()));
  }

  private String pathTo(Instances all) {
    String full = all.name();
    String own = scope.fullName("");
    String inside = full.startsWith(own) ? full.substring(own.length()) : full;
    return inside.substring(0, inside.lastIndexOf('.') + 1);
  }

  private static boolean isMissing(String alias, List<String> names, Scope at) {
    return names.contains(alias)
        && at.find(Scope::aliases, alias).filter(each -> each.path().isEmpty()).isPresent();
  }

  private static Stream<String> texts(Node node) {
    return switch (node) {
      case Scalar text -> Stream.of(text.text());
      case Sequence list -> list.items().stream().flatMap(Expansion::texts);
      case Mapping keys ->
          keys.members().stream()
              .filter(member -> !member.key().text().equals("say"))
              .flatMap(member -> texts(member.value()));
    };
  }

  private static Stream<String> paths(String text) {
    Matcher matcher = PATH.matcher(text);
    List<String> found = new ArrayList<>();
    while (matcher.find()) {
      found.add(matcher.group());
    }
    return found.stream();
  }

  /** What along a path is repeated or left out, and of which it is not yet said which is meant. */
  private void collect(String path, Map<String, Instances> repeated) {
    if (scope.find(Scope::aliases, PartNames.first(path)).isPresent()) {
      return;
    }
    Optional<Scope> at = Optional.of(scope);
    for (String word : path.split("\\.")) {
      if (at.isEmpty()) {
        return;
      }
      Scope here = at.get();
      Optional<Instances> all =
          here == scope
              ? scope.find(Scope::instances, word)
              : Optional.ofNullable(here.instances().get(word));
      String name = word;
      if (all.isPresent() && !all.get().isOne(word)) {
        if (scope.which(all.get()).isEmpty()) {
          repeated.put(all.get().name(), all.get());
        }
        if (all.get().all().isEmpty()) {
          return;
        }
        name = all.get().all().getFirst().name();
      }
      at =
          (here == scope
                  ? scope.find(Scope::assemblies, name)
                  : Optional.ofNullable(here.assemblies().get(name)))
              .map(Assembly::inside);
    }
  }

  /** The paths that a path stands for: each of what is repeated in it. */
  List<String> names(String path) {
    List<String> names = new ArrayList<>(List.of(""));
    List<Optional<Scope>> scopes = new ArrayList<>(List.of(Optional.of(scope)));
    for (String word : path.split("\\.")) {
      List<String> nextNames = new ArrayList<>();
      List<Optional<Scope>> nextScopes = new ArrayList<>();
      for (int i = 0; i < names.size(); i++) {
        for (String each : inside(scopes.get(i), word)) {
          nextNames.add(names.get(i).isEmpty() ? each : names.get(i) + "." + each);
          nextScopes.add(
              scopes.get(i).flatMap(at -> at.find(Scope::assemblies, each)).map(Assembly::inside));
        }
      }
      names = nextNames;
      scopes = nextScopes;
    }
    return names;
  }

  private static List<String> inside(Optional<Scope> at, String word) {
    return at.flatMap(here -> here.find(Scope::instances, word))
        .map(all -> all.all().stream().map(Scope.Instance::name).toList())
        .orElse(List.of(word));
  }
}
