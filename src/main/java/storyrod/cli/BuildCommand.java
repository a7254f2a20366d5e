package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import storyrod.description.Diagnostics;
import storyrod.planset.PlanSet;
import storyrod.planset.PlanSetWriter;
import storyrod.planset.Printing;
import storyrod.planset.Stamp;
import storyrod.words.Words;

/** Writes the plan set of a project. */
@Command(
    name = "build",
    description = "Write the plan set of a project.",
    mixinStandardHelpOptions = true)
final class BuildCommand implements Callable<Integer> {
  private static final String PLAN_SET = "plan-set.pdf";
  private static final String PLAN = "plan.json";

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROJECT", description = "The project's folder or its description.")
  private Path project;

  @Mixin private OptionName option;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to write; out/NAME if not given, or out/NAME-OPTION.")
  private Path out;

  @Option(names = "--png", description = "Write the drawings as PNG too, at 300 dots an inch.")
  private boolean png;

  @Mixin private PrintOptions printed;

  @Mixin private Buyers buyers;

  @Override
  public Integer call() throws IOException {
    if (out != null && out.toString().isBlank()) {
      throw new ParameterException(spec.commandLine(), "--out needs the name of a folder");
    }
    getReadyMeanwhile();
    Diagnostics diagnostics = new Diagnostics();
    List<Stamp> stamps = buyers.stamps(spec, diagnostics);
    Map<String, Printing> printings = printed.printings(spec, project);
    ProjectFile file = ProjectFile.at(project);
    Optional<Pipeline.Planned> planned =
        file.read(diagnostics)
            .flatMap(
                source ->
                    Pipeline.plan(
                        source,
                        new Pipeline.Wanted(option.name(), words(printings), printed.units(spec)),
                        diagnostics));
    PrintWriter err = spec.commandLine().getErr();
    err.print(ToldOnce.print(diagnostics.bySeverity()));
    err.flush();
    if (planned.isEmpty() || diagnostics.hasErrors()) {
      return 1;
    }
    Optional<String> fault = fault(planned.get(), printings);
    if (fault.isPresent()) {
      err.println("error: " + fault.get());
      err.flush();
      return 1;
    }
    Path folder = out == null ? Path.of("out", option.after(file.name())) : out;
    byte[] pdf = write(files(planned.get(), printings, diagnostics), folder);
    if (!stamps.isEmpty()) {
      stamp(pdf, stamps, new CopyFolder(folder.resolve("copies"), words(printings)));
    }
    return 0;
  }

  /** All that one run prints is in one language. */
  private static Words words(Map<String, Printing> printings) {
    return printings.values().iterator().next().words();
  }

  /** What of the chosen stages, steps and parts there is not. */
  private static Optional<String> fault(Pipeline.Planned planned, Map<String, Printing> printings) {
    return printings.values().stream()
        .flatMap(each -> each.choice().fault(planned.piece(), planned.build(), each).stream())
        .findFirst();
  }

  /** The first of the editions, previews last: it brings lists and drawings with it. */
  private static String first(Map<String, Printing> printings) {
    return printings.keySet().stream()
        .filter(name -> !printings.get(name).edition().isPreview())
        .findFirst()
        .orElseGet(() -> printings.keySet().iterator().next());
  }

  /** The files of all that is printed, the PDFs in the order asked for. */
  private Map<String, byte[]> files(
      Pipeline.Planned planned, Map<String, Printing> printings, Diagnostics diagnostics) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    PlanSets sets = new PlanSets(planned, diagnostics);
    String first = first(printings);
    printings.forEach(
        (name, printing) -> {
          PlanSet set = sets.of(printing);
          PlanSetWriter writer = sets.writer(printing);
          if (name.equals(first)) {
            Map<String, byte[]> own = writer.write(set);
            files.put(name, own.remove(PLAN_SET));
            files.putAll(own);
            if (png) {
              files.putAll(writer.pictures(set));
            }
          } else {
            files.put(name, writer.pdf(set));
          }
        });
    return files;
  }

  /** Fonts and layout load while the stages before them work; what fails here fails there again. */
  private static void getReadyMeanwhile() {
    Thread.ofPlatform()
        .daemon()
        .uncaughtExceptionHandler((thread, failure) -> {})
        .start(PlanSetWriter::getReady);
  }

  /** Writes all files and gives the first plan set. */
  private byte[] write(Map<String, byte[]> files, Path folder) throws IOException {
    boolean isWhole = files.containsKey(PLAN);
    (isWhole ? new OutputFolder(folder) : OutputFolder.beside(folder)).replace(files);
    List<String> sets = files.keySet().stream().filter(name -> name.endsWith(".pdf")).toList();
    PrintWriter to = spec.commandLine().getOut();
    to.println(
        "%d files in %s, the plan set in %s"
            .formatted(
                files.size(),
                folder,
                sets.stream()
                    .map(name -> folder.resolve(name).toString())
                    .collect(Collectors.joining(", "))));
    to.flush();
    return files.get(sets.getFirst());
  }

  private void stamp(byte[] pdf, List<Stamp> stamps, CopyFolder folder) throws IOException {
    Path last = folder.write(pdf, stamps);
    PrintWriter to = spec.commandLine().getOut();
    to.println(
        stamps.size() == 1
            ? "one stamped copy: " + last
            : "%d stamped copies, the last: %s".formatted(stamps.size(), last));
    to.flush();
  }
}
