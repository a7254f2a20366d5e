package storyrod.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import storyrod.measure.Units;
import storyrod.planset.Choice;
import storyrod.planset.Edition;
import storyrod.planset.Paper;
import storyrod.planset.Printing;
import storyrod.planset.Templates;
import storyrod.words.Words;

/** For whom and on what a plan set is printed. */
final class PrintOptions {
  private static final String OVERLAY = "templates";
  private static final String EDITIONS = "editions/";

  @Option(
      names = "--edition",
      paramLabel = "NAME",
      split = ",",
      description =
          "For whom: publish (the usual), helper, preview, record or one of your own; several with commas.")
  private List<String> editions = List.of(Edition.USUAL);

  @Option(
      names = "--paper",
      paramLabel = "NAME",
      split = ",",
      description = "letter, a4, tabloid or a3; letter for inches, a4 for mm if not given.")
  private List<String> papers = List.of();

  @Option(
      names = "--stages",
      paramLabel = "NAME",
      split = ",",
      description = "Print the steps of these stages only, by their names or numbers.")
  private List<String> stages = List.of();

  @Option(
      names = "--steps",
      paramLabel = "N",
      split = ",",
      description = "Print these steps only: 3,7-12.")
  private List<String> steps = List.of();

  @Option(
      names = "--parts",
      paramLabel = "MARK",
      split = ",",
      description = "Print the steps that work on these parts only, by their marks.")
  private List<String> parts = List.of();

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "Templates over those of the tool; those in PROJECT/templates lie over both.")
  private Path folder;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      defaultValue = "en",
      completionCandidates = LanguageOption.Tags.class,
      description =
          "The language of the plan set: ${COMPLETION-CANDIDATES} or one of your own; en if not given.")
  private String language;

  @Option(
      names = "--units",
      paramLabel = "NAME",
      description =
          "inch, mm, or both: the description's unit, then the other in brackets; its unit alone if not given."
              + " The unit stands in the name: plan-set-mm.pdf.")
  private String units = Units.OWN.word();

  /** The units of all that one run prints. */
  Units units(CommandSpec spec) {
    if (units.equals(Units.OWN.word())) {
      return Units.OWN;
    }
    return Units.named(units)
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(), "--units takes inch, mm or both, not " + units));
  }

  private Choice choice() {
    return new Choice(stages, steps.stream().flatMap(PrintOptions::range).toList(), parts);
  }

  private static Stream<Integer> range(String range) {
    String[] ends = range.split("-", 2);
    return IntStream.rangeClosed(Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]))
        .boxed();
  }

  private void requireRanges(CommandSpec spec) {
    for (String range : steps) {
      if (!range.matches("\\d{1,4}(-\\d{1,4})?")) {
        throw new ParameterException(
            spec.commandLine(),
            "--steps takes numbers and ranges such as 3,7-12, not '%s'".formatted(range));
      }
    }
  }

  /** What is to be printed, each with the name of its file, in the order asked for. */
  Map<String, Printing> printings(CommandSpec spec, Path project) throws IOException {
    requireRanges(spec);
    Templates templates = templates(project);
    Words words = templates.words(language).orElseThrow(() -> foreign(spec, templates));
    Map<String, Printing> printings = new LinkedHashMap<>();
    for (String name : new LinkedHashSet<>(editions)) {
      Edition edition = Edition.named(name, templates).orElseThrow(() -> unknown(spec, name));
      for (Optional<Paper> paper : papers(spec)) {
        printings.put(
            fileName(name, paper), new Printing(templates, words, edition, paper, choice()));
      }
    }
    return printings;
  }

  private Templates templates(Path project) throws IOException {
    if (folder != null && !Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    Path own = (Files.isDirectory(project) ? project : project.resolveSibling("")).resolve(OVERLAY);
    Map<String, String> overlay = new TreeMap<>();
    if (folder != null) {
      overlay.putAll(new TemplateFolder(folder).texts());
    }
    overlay.putAll(new TemplateFolder(own).texts());
    return overlay.isEmpty() ? Templates.SHARED : new Templates(overlay);
  }

  private List<Optional<Paper>> papers(CommandSpec spec) {
    if (papers.isEmpty()) {
      return List.of(Optional.empty());
    }
    List<Optional<Paper>> found = new ArrayList<>();
    for (String name : new LinkedHashSet<>(papers)) {
      if (!Paper.BY_NAME.containsKey(name)) {
        throw new ParameterException(
            spec.commandLine(),
            "--paper takes " + String.join(", ", Paper.BY_NAME.keySet()) + ", not " + name);
      }
      found.add(Optional.of(Paper.BY_NAME.get(name)));
    }
    return found;
  }

  /** The usual is the plan set; every edition, paper, unit and language asked for is named. */
  private String fileName(String edition, Optional<Paper> paper) {
    String of = edition.equals(Edition.USUAL) ? "" : "-" + edition;
    String on =
        Paper.BY_NAME.entrySet().stream()
            .filter(each -> Optional.of(each.getValue()).equals(paper))
            .map(each -> "-" + each.getKey())
            .findFirst()
            .orElse("");
    String in = language.equals(Words.ENGLISH.language()) ? "" : "-" + language;
    String by = units.equals(Units.OWN.word()) ? "" : "-" + units;
    return "plan-set" + of + on + by + in + ".pdf";
  }

  private ParameterException foreign(CommandSpec spec, Templates templates) {
    return new ParameterException(
        spec.commandLine(),
        "there are no words for the language '%s': --language takes %s, or one that stands in %s/words/TAG.properties"
            .formatted(language, String.join(", ", templates.languages()), OVERLAY));
  }

  private static ParameterException unknown(CommandSpec spec, String name) {
    return new ParameterException(
        spec.commandLine(),
        "no edition is called '%s': --edition takes publish, helper, preview or record, or one that stands in %s%s%s"
            .formatted(name, OVERLAY + "/" + EDITIONS, name, ".properties"));
  }
}
