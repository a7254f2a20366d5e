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
import storyrod.measure.LengthFormat;
import storyrod.measure.Units;
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

  /** A print: its drawings are made for its paper. */
  public record Printed(PlanSet set, byte[] pdf) {}

  public static PrintedProjects named(String project) {
    return named(project, Words.ENGLISH.language(), Units.OWN);
  }

  /** A project told in a language, with the names that it has for itself in it. */
  public static PrintedProjects named(String project, String language) {
    return named(project, language, Units.OWN);
  }

  public static PrintedProjects named(String project, Units units) {
    return named(project, Words.ENGLISH.language(), units);
  }

  public static PrintedProjects named(String project, String language, Units units) {
    return PLANNED.computeIfAbsent(
        String.join(" ", project, language, units.word()),
        key -> in(Path.of("projects", project), language, units));
  }

  /** A project that a test makes up. */
  public static PrintedProjects madeUp(String text) {
    return new PrintedProjects(
        new SourceText("made-up.yaml", text),
        new Pipeline.Wanted(Optional.empty(), Words.ENGLISH, Units.OWN));
  }

  private static PrintedProjects in(Path folder, String language, Units units) {
    Path file = folder.resolve("project.yaml");
    try {
      Templates templates = new Templates(new TemplateFolder(folder.resolve("templates")).texts());
      Words words = templates.words(language).orElseThrow();
      return new PrintedProjects(
          new SourceText(file.toString(), Files.readString(file)),
          new Pipeline.Wanted(Optional.empty(), words, units));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PrintedProjects(SourceText source, Pipeline.Wanted wanted) {
    Diagnostics diagnostics = new Diagnostics();
    this.planned = Pipeline.plan(source, wanted, diagnostics).orElseThrow();
    this.sets = new PlanSets(planned, diagnostics);
  }

  /** The paper that is usual for the project's unit. */
  public Paper usualPaper() {
    return Paper.usualFor(planned.piece().description().printed().unit());
  }

  /** Whether units are those in which the project is printed without a choice. */
  public boolean isOwn(Units units) {
    LengthFormat own = planned.piece().description().format();
    return own.shownIn(units).equals(own);
  }

  /** The files beside the pages, on the usual paper. */
  public Map<String, byte[]> files() {
    Printing usual = Printing.usual(Words.ENGLISH);
    synchronized (sets) {
      return sets.writer(usual).write(sets.of(usual));
    }
  }

  public Printed on(Paper paper, String edition) {
    Printing printing = printing(paper, edition);
    synchronized (sets) {
      PlanSet set = sets.of(printing);
      return new Printed(set, sets.writer(printing).pdf(set));
    }
  }

  /** The same with its drawings made, but not printed. */
  public PlanSet drawn(Paper paper, String edition) {
    synchronized (sets) {
      return sets.of(printing(paper, edition));
    }
  }

  private Printing printing(Paper paper, String edition) {
    Printing usual = Printing.usual(planned.piece().description().words());
    return new Printing(
        usual.templates(),
        usual.words(),
        Edition.named(edition, usual.templates()).orElseThrow(),
        Optional.of(paper),
        usual.choice());
  }
}
