package storyrod.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.Edition;
import storyrod.planset.Paper;
import storyrod.planset.PlanSet;
import storyrod.planset.Printing;
import storyrod.planset.Templates;
import storyrod.words.Words;

/** The projects of the repository, each planned once and then printed as often as is asked for. */
public final class PrintedProjects {
  private static final Map<String, PrintedProjects> PLANNED = new ConcurrentHashMap<>();

  private final Pipeline.Planned planned;
  private final PlanSets sets;

  private PrintedProjects(Pipeline.Planned planned, Diagnostics diagnostics) {
    this.planned = planned;
    this.sets = new PlanSets(planned, diagnostics);
  }

  /** A print: its drawings are made for its paper. */
  public record Printed(PlanSet set, byte[] pdf) {}

  public static PrintedProjects named(String project) {
    return named(project, Words.ENGLISH.language());
  }

  /** A project told in a language, with the names that it has for itself in it. */
  public static PrintedProjects named(String project, String language) {
    return PLANNED.computeIfAbsent(project + " " + language, key -> planned(project, language));
  }

  private static PrintedProjects planned(String project, String language) {
    Path folder = Path.of("projects", project);
    Path file = folder.resolve("project.yaml");
    try {
      Diagnostics diagnostics = new Diagnostics();
      SourceText source = new SourceText(file.toString(), Files.readString(file));
      Templates templates = new Templates(new TemplateFolder(folder.resolve("templates")).texts());
      Words words = templates.words(language).orElseThrow();
      return new PrintedProjects(
          Pipeline.plan(source, new Pipeline.Wanted(Optional.empty(), words), diagnostics)
              .orElseThrow(),
          diagnostics);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The paper that is usual for the project's unit. */
  public Paper usualPaper() {
    return Paper.usualFor(planned.piece().description().format().unit());
  }

  public Printed on(Paper paper, String edition) {
    Printing usual = Printing.usual(planned.piece().description().words());
    Printing printing =
        new Printing(
            usual.templates(),
            usual.words(),
            Edition.named(edition, usual.templates()).orElseThrow(),
            Optional.of(paper),
            usual.choice());
    synchronized (sets) {
      PlanSet set = sets.of(printing);
      return new Printed(set, sets.writer(printing).pdf(set));
    }
  }
}
