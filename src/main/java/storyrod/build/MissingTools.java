package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.description.Nearest;
import storyrod.description.ShopMachines;
import storyrod.piece.Piece;

/** Tools that the shop is without although steps need them, and names that no tool has. */
final class MissingTools {
  private static final int STEPS_NAMED = 4;
  private static final int PARTS_NAMED = 3;

  private final ShopMachines machines;
  private final Instruments instruments = new Instruments();

  MissingTools(Piece piece) {
    this.machines = piece.description().shop().machines();
  }

  List<Diagnostic> among(List<Step> steps) {
    List<Diagnostic> found = new ArrayList<>();
    Set<String> told = new LinkedHashSet<>();
    for (Located<String> without : machines.without()) {
      Optional<String> name = named(without.value());
      if (name.isEmpty()) {
        found.add(unknown(without));
      }
      name.ifPresent(
          known ->
              tools(steps)
                  .forEach(
                      tool -> {
                        if (isMissed(tool, known) && told.add(tool)) {
                          found.add(missing(without, tool, steps));
                        }
                      }));
    }
    return found;
  }

  private static Set<String> tools(List<Step> steps) {
    return steps.stream()
        .flatMap(step -> step.tools().stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private Optional<String> named(String written) {
    return instruments.names().stream().filter(name -> isSame(name, written)).findFirst();
  }

  private static boolean isSame(String one, String other) {
    return ShopMachines.letters(one).equals(ShopMachines.letters(other));
  }

  /** Whether a tool is among those that would do, and none of the others is there either. */
  private boolean isMissed(String tool, String without) {
    return names(tool).stream().anyMatch(name -> isSame(name, without))
        && names(tool).stream().allMatch(machines::lacks);
  }

  private List<String> names(String tool) {
    return instruments.anyOf(tool).stream().map(Instruments::name).toList();
  }

  private Diagnostic missing(Located<String> without, String tool, List<Step> steps) {
    List<Step> needing = steps.stream().filter(step -> step.tools().contains(tool)).toList();
    String named =
        needing.stream()
            .limit(STEPS_NAMED)
            .map(MissingTools::title)
            .collect(Collectors.joining("; "));
    String more = needing.size() > STEPS_NAMED ? "; and more" : "";
    Diagnostic finding =
        Diagnostic.warning(
            "tool-missing",
            without.at(),
            "the shop is without `%s`, which is needed in %s%s"
                .formatted(String.join("` and `", names(tool)), named, more));
    List<String> ways = instruments.instead(tool).stream().filter(this::isOpen).toList();
    return finding.hint(
        ways.isEmpty()
            ? "borrow one, or describe the work so that it does without"
            : String.join(", or ", ways));
  }

  /** Whether a way needs none of the tools that the shop is without. */
  private boolean isOpen(String way) {
    return machines.without().stream()
        .map(without -> without.value().toLowerCase(Locale.ROOT).replace('-', ' '))
        .noneMatch(way::contains);
  }

  /** A step as the maker's own order names it: its number, its verb and what it is done to. */
  private static String title(Step step) {
    List<String> targets = step.operations().stream().map(Operation::target).distinct().toList();
    String more = targets.size() > PARTS_NAMED ? " and more" : "";
    String named = targets.stream().limit(PARTS_NAMED).collect(Collectors.joining(", "));
    return "step %d (%s %s%s)".formatted(step.number(), step.verb().word(), named, more);
  }

  private Diagnostic unknown(Located<String> without) {
    Diagnostic finding =
        Diagnostic.warning(
            "unknown-tool",
            without.at(),
            "no step of any plan names a tool `%s`".formatted(without.value()));
    return Nearest.to(without.value(), instruments.names())
        .map(near -> finding.hint("did you mean `" + near + "`?"))
        .orElseGet(
            () ->
                finding.hint(
                    "leave it out, or take a name from the steps' tools: "
                        + String.join(", ", alike(without.value()))));
  }

  /** Names that share a word with a wrong one; if there are none, the large machines. */
  private List<String> alike(String written) {
    List<String> words = List.of(written.split("[ -]+"));
    List<String> alike =
        instruments.names().stream()
            .filter(name -> words.stream().anyMatch(List.of(name.split("[ -]+"))::contains))
            .limit(STEPS_NAMED)
            .toList();
    return alike.isEmpty()
        ? List.of("jointer", "planer", "table-saw", "router").stream()
            .map(Instruments::name)
            .toList()
        : alike;
  }
}
