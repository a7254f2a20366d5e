package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Scope.Instance;
import storyrod.description.Scope.Instances;
import storyrod.description.Scope.PartCells;

/** Finds parts and sub-assemblies by paths such as {@code carcase.drawer-2.left-side}. */
final class PartNames {
  private final Scope scope;

  PartNames(Scope scope) {
    this.scope = scope;
  }

  /** A part, with its faces as they lie here. */
  Lookup<PartCells> part(String path) {
    Optional<Alias> alias = alias(path);
    return alias.isPresent() ? aliased(alias.get(), path) : direct(path);
  }

  private Optional<Alias> alias(String path) {
    return scope.find(Scope::aliases, first(path));
  }

  static String first(String path) {
    return path.substring(0, (path + ".").indexOf('.'));
  }

  /** A part of the description around this one has its place in another frame. */
  private Lookup<PartCells> aliased(Alias alias, String path) {
    String name = first(path);
    if (alias.path().isEmpty()) {
      return Lookup.none(
          "left-out",
          "'" + name + "' stands for no part here",
          "give it one under `with:` where this description is used, or name another part");
    }
    Lookup<PartCells> part =
        new PartNames(alias.scope()).part(alias.path().get() + path.substring(name.length()));
    boolean sharesFrame = scope.sharesFrame(alias.scope());
    return sharesFrame ? part : part.map(found -> new PartCells(found.name(), Map.of()));
  }

  private Lookup<PartCells> direct(String path) {
    int dot = path.lastIndexOf('.');
    if (dot < 0) {
      return own(path);
    }
    String last = path.substring(dot + 1);
    return assemblies(path.substring(0, dot))
        .flatMap(way -> in(way.getLast().inside(), last, path).map(part -> fromOutside(part, way)));
  }

  private static PartCells fromOutside(PartCells part, List<Assembly> way) {
    PartCells seen = part;
    for (Assembly assembly : way.reversed()) {
      seen = assembly.fromOutside(seen);
    }
    return seen;
  }

  private Lookup<PartCells> own(String name) {
    Optional<PartCells> part = scope.find(Scope::parts, which(name, true, scope));
    if (part.isEmpty() && name.equals("each")) {
      return Lookup.none(
          Names.UNKNOWN,
          "'each' is the share of one that is repeated along an axis, and here is none",
          "write `repeat: {count: 3, along: z, over: 0 to 30}` with your own values");
    }
    return part.map(Lookup::of)
        .orElseGet(
            () ->
                absent(name, true, scope)
                    .map(Lookup::<PartCells>otherwise)
                    .orElseGet(
                        () ->
                            Lookup.none(
                                Names.UNKNOWN,
                                "there is no part '" + Quote.of(name) + "'",
                                partHint(name))));
  }

  private Lookup<PartCells> in(Scope inside, String name, String path) {
    Optional<PartCells> part = Optional.ofNullable(inside.parts().get(which(name, false, inside)));
    return part.map(Lookup::of)
        .orElseGet(
            () ->
                absent(name, false, inside)
                    .map(Lookup::<PartCells>otherwise)
                    .orElseGet(
                        () ->
                            Lookup.none(
                                Names.UNKNOWN,
                                "there is no part '" + Quote.of(path) + "'",
                                Names.suggest(
                                    path, inside.parts().values().stream().map(PartCells::name)))));
  }

  /** The sub-assemblies that a path goes through, from the outside in. */
  private Lookup<List<Assembly>> assemblies(String path) {
    List<Assembly> way = new ArrayList<>();
    for (String word : path.split("\\.")) {
      Lookup<Assembly> next = way.isEmpty() ? outermost(word) : inner(way.getLast().inside(), word);
      if (next.found().isEmpty()) {
        return next.otherwise();
      }
      way.add(next.found().get());
    }
    return Lookup.of(way);
  }

  private Lookup<Assembly> outermost(String name) {
    return scope
        .find(Scope::assemblies, which(name, true, scope))
        .map(Lookup::of)
        .orElseGet(() -> noAssembly(name, true, scope));
  }

  private Lookup<Assembly> inner(Scope inside, String name) {
    return Optional.ofNullable(inside.assemblies().get(which(name, false, inside)))
        .map(Lookup::of)
        .orElseGet(() -> noAssembly(name, false, inside));
  }

  private Lookup<Assembly> noAssembly(String name, boolean outwards, Scope at) {
    return absent(name, outwards, at)
        .map(Lookup::<Assembly>otherwise)
        .orElseGet(
            () ->
                Lookup.none(
                    Names.UNKNOWN,
                    "there is no assembly '" + Quote.of(name) + "'",
                    at.find(Scope::parts, name).isPresent()
                        ? "it is a part, whose faces are left, right, front, back, bottom and top"
                        : Names.suggest(name, at.all(Scope::assemblies))));
  }

  /** A sub-assembly. */
  Optional<Assembly> assembly(String path) {
    return assemblies(path).found().map(List::getLast);
  }

  /** The place of a sub-assembly as a whole, if the path names one that has a place. */
  Optional<PartCells> whole(String path) {
    boolean isPart = path.indexOf('.') < 0 && scope.find(Scope::parts, path).isPresent();
    if (isPart) {
      return Optional.empty();
    }
    Optional<List<Assembly>> way = assemblies(path).found();
    return way.filter(found -> !found.getLast().whole().faces().isEmpty())
        .map(found -> fromOutside(found.getLast().whole(), found.subList(0, found.size() - 1)));
  }

  /** The name of the one that is meant, where an entry is repeated and it is clear which. */
  private String which(String name, boolean outwards, Scope at) {
    return instances(name, outwards, at)
        .flatMap(all -> scope.which(all).map(nth -> all.all().get(nth.number() - 1).name()))
        .orElse(name);
  }

  private static Optional<Instances> instances(String name, boolean outwards, Scope at) {
    return outwards
        ? at.find(Scope::instances, name)
        : Optional.ofNullable(at.instances().get(name));
  }

  /** Why a name that an entry has stands for nothing here. */
  private Optional<Lookup<Object>> absent(String name, boolean outwards, Scope at) {
    if (at.isUnread()) {
      return Optional.of(Lookup.untold());
    }
    if (at.isOpen()) {
      return Optional.of(
          Lookup.none(
              Names.UNKNOWN,
              "'" + Quote.of(name) + "' has no place yet",
              "a condition or a count is worked out before the parts have their places: use sizes,"
                  + " numbers and choices in it"));
    }
    return instances(name, outwards, at)
        .filter(all -> !all.isOne(name))
        .map(all -> absent(name, all.all()));
  }

  private static Lookup<Object> absent(String name, List<Instance> all) {
    return all.isEmpty()
        ? Lookup.none(
            "left-out",
            "'" + name + "' is left out, for its `when` or its `repeat` says so",
            "name another part, or let this depend on the same condition")
        : Lookup.none(
            "which-one",
            "there are " + all.size() + " of '" + name + "'",
            "name one of them: " + names(all));
  }

  private static String names(List<Instance> all) {
    return "`" + all.getFirst().name() + "` to `" + all.getLast().name() + "`";
  }

  private String partHint(String name) {
    Optional<Assembly> assembly = scope.find(Scope::assemblies, name);
    if (assembly.isPresent()) {
      String first = assembly.get().inside().parts().keySet().stream().findFirst().orElse("part");
      return "it is an assembly; name one of its parts, such as `" + name + "." + first + "`";
    }
    if (scope.find(Scope::stocks, name).isPresent()) {
      return "it is a stock, not a part; all that can be named of it is `" + name + ".thickness`";
    }
    return insideSome(name)
        .map(Names::meant)
        .orElseGet(() -> Names.suggest(name, scope.all(Scope::parts)));
  }

  private Optional<String> insideSome(String name) {
    return scope
        .all(Scope::assemblies)
        .filter(each -> inside(each).anyMatch(name::equals))
        .map(each -> each + "." + name)
        .findFirst();
  }

  private Stream<String> inside(String assembly) {
    return scope.find(Scope::assemblies, assembly).stream()
        .flatMap(each -> each.inside().parts().keySet().stream());
  }
}
