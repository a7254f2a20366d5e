package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine;
import storyrod.cli.lists.ListedJob;
import storyrod.description.DiagnosticPrinter;
import storyrod.layout.Budget;
import storyrod.layout.LayoutPlan;
import storyrod.layout.search.Layouts;
import storyrod.measure.LengthFormat;
import storyrod.planset.LayoutSet;
import storyrod.planset.LayoutSetWriter;
import storyrod.planset.Paper;
import storyrod.words.Words;

/** Lays out one instance after the other, and tells and writes each as soon as it is known. */
final class LayoutRun {
  private final List<ListedJob> jobs;
  private final Setting setting;
  private final Interruption interruption;
  private final PrintWriter screen;
  private final PrintWriter errors;
  private final Set<String> folders = new TreeSet<>();

  LayoutRun(List<ListedJob> jobs, Setting setting, Interruption interruption, CommandLine line) {
    this.jobs = jobs;
    this.setting = setting;
    this.interruption = interruption;
    this.screen = line.getOut();
    this.errors = line.getErr();
  }

  /**
   * How to look, and how to show what is found.
   *
   * @param seconds for each instance
   * @param seed where chance begins
   * @param title the head of the pages
   * @param words those in which it is told
   */
  record Setting(
      double seconds, long seed, String title, LengthFormat format, Paper paper, Words words) {}

  /** The exit code is 1 where the stock did not give all parts, or not all instances were begun. */
  int run(LayoutSummary summary, Optional<Path> folder) throws IOException {
    boolean isComplete = true;
    int done = 0;
    for (ListedJob job : jobs) {
      if (interruption.isStopped()) {
        break;
      }
      LayoutResult result = solved(job);
      summary.row(result);
      isComplete &= result.isComplete();
      tell(result);
      if (folder.isPresent() && result.isComplete()) {
        write(result, folder.get());
      }
      done++;
    }
    if (done < jobs.size()) {
      errors.println(setting.words.say("told.stopped", done, jobs.size()));
    }
    return isComplete && done == jobs.size() ? 0 : 1;
  }

  private LayoutResult solved(ListedJob job) {
    long start = System.nanoTime();
    long end = start + (long) (setting.seconds * 1e9);
    long steps = (long) (setting.seconds * Budget.STEPS_A_SECOND);
    Budget budget =
        new Budget(steps, setting.seed, () -> interruption.isStopped() || System.nanoTime() > end);
    LayoutPlan plan = Layouts.plan(job.job(), budget);
    return new LayoutResult(job, plan, (System.nanoTime() - start) / 1e9);
  }

  private void tell(LayoutResult result) {
    screen.println(result.told(setting.words));
    screen.flush();
    if (!result.isComplete()) {
      errors.print(
          DiagnosticPrinter.print(new Shortage(result.listed(), result.plan().missing()).told()));
      errors.flush();
    }
  }

  private void write(LayoutResult result, Path folder) throws IOException {
    Path own = jobs.size() == 1 ? folder : folder.resolve(folderName(result.listed().name()));
    Map<String, byte[]> files = LayoutSetWriter.write(set(result), setting.paper, setting.words);
    new OutputFolder(own, "layout-[0-9]+-[0-9]+\\.svg").replace(files);
    screen.println(setting.words.say("told.files", files.size(), own));
    screen.flush();
  }

  private LayoutSet set(LayoutResult result) {
    ListedJob listed = result.listed();
    String title = listed.name().isEmpty() ? setting.title : setting.title + " · " + listed.name();
    return new LayoutSet(
        title,
        listed.job(),
        result.plan(),
        listed.lengthsOnly(),
        listed.costPlaces(),
        setting.format);
  }

  /** An instance's name as the name of a folder that no other instance has. */
  private String folderName(String instance) {
    String plain = instance.replaceAll("[^\\p{Alnum}._-]", "_").replaceAll("^\\.+", "_");
    String name = plain;
    for (int i = 2; !folders.add(name.toLowerCase(Locale.ROOT)); i++) {
      name = plain + "-" + i;
    }
    return name;
  }
}
