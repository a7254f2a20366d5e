package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import storyrod.cli.lists.ListOptions;
import storyrod.cli.lists.ListReader;
import storyrod.cli.lists.ListedJob;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.layout.LayoutJob.Least;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.planset.Paper;
import storyrod.words.Words;

/** Lays out plain lists of parts and stock, without a project. */
@Command(
    name = "layout",
    description = {
      "Lay the parts of a list out on the stock of another.",
      "The lists are CSV; their first lines name the columns: for the parts item, width, height "
          + "and, if wanted, instance, quantity, grain; for the stock stock, width, height and, if "
          + "wanted, instance, available, cost, kerf, trim_left, trim_right, trim_bottom, trim_top. "
          + "The width runs along the grain; lists without a height are lists of lengths.",
      "Ctrl-C ends the search and keeps the best that was found."
    },
    mixinStandardHelpOptions = true)
final class LayoutCommand implements Callable<Integer> {
  private static final int MOST_TOLD = 20;
  private static final int FINEST = 64;
  private static final String USUAL = "";
  private static final Map<String, Paper> PAPERS = Map.of("a4", Paper.A4, "letter", Paper.LETTER);

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "PARTS.csv", description = "The parts to be sawn.")
  private Path parts;

  @Parameters(index = "1", paramLabel = "STOCK.csv", description = "What they are sawn from.")
  private Path stock;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      defaultValue = "2",
      description = "How long to look for each instance; 2 if not given.")
  private double seconds;

  @Option(
      names = "--turn",
      paramLabel = "on|off",
      arity = "0..1",
      defaultValue = "on",
      fallbackValue = "on",
      converter = OnOff.class,
      parameterConsumer = OnOff.class,
      description = "Whether parts without grain may be turned; on if not given.")
  private boolean turn;

  @Option(names = "--no-turn", description = "The same as --turn off.")
  private boolean noTurn;

  @Option(
      names = "--least",
      paramLabel = "pieces|cost",
      defaultValue = "pieces",
      converter = LeastWord.class,
      description = "What the layouts are to take least of; pieces if not given.")
  private Least least;

  @Option(
      names = {"--unit", "--units"},
      paramLabel = "mm|in",
      defaultValue = "mm",
      converter = UnitWord.class,
      description = "The unit of lengths written without one; mm if not given.")
  private Unit unit;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Where chance begins; the same seed gives the same layouts.")
  private long seed;

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      description = "The paper of the pages; a4 for mm, letter for inches if not given.")
  private String paper = USUAL;

  @Option(
      names = "--summary",
      paramLabel = "FILE.csv",
      description = "Write a row for each instance there, each as soon as it is known.")
  private Path summary;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = {
        "Where to write pages, drawings and lists, for several instances each in a folder of its own.",
        "If neither this nor --summary is given, out/NAME for lists of one instance."
      })
  private Path out;

  @Mixin private LanguageOption language;

  /** {@code mm} or {@code in}. */
  static final class UnitWord implements picocli.CommandLine.ITypeConverter<Unit> {
    @Override
    public Unit convert(String word) {
      return switch (word) {
        case "mm" -> Unit.MM;
        case "in", "inch" -> Unit.INCH;
        default -> throw new TypeConversionException("expected mm or in, found '" + word + "'");
      };
    }
  }

  /** {@code pieces} or {@code cost}. */
  static final class LeastWord implements picocli.CommandLine.ITypeConverter<Least> {
    @Override
    public Least convert(String word) {
      return switch (word) {
        case "pieces" -> Least.PIECES;
        case "cost" -> Least.COST;
        default ->
            throw new TypeConversionException("expected pieces or cost, found '" + word + "'");
      };
    }
  }

  @Override
  public Integer call() throws IOException {
    refuseBlank("--out", out);
    refuseBlank("--summary", summary);
    if (!(seconds >= 0 && seconds <= 86_400)) {
      throw new ParameterException(spec.commandLine(), "--seconds takes 0 to 86400");
    }
    if (!paper.equals(USUAL) && !PAPERS.containsKey(paper)) {
      throw new ParameterException(spec.commandLine(), "--paper takes a4 or letter");
    }
    Words words = language.words(spec);
    Diagnostics diagnostics = new Diagnostics();
    List<ListedJob> jobs = read(diagnostics);
    if (jobs.isEmpty()) {
      tell(diagnostics.sorted());
      return 1;
    }
    try (Interruption interruption = Interruption.watched();
        LayoutSummary rows = LayoutSummary.at(Optional.ofNullable(summary))) {
      return new LayoutRun(jobs, setting(words), interruption, spec.commandLine())
          .run(rows, folder(jobs));
    }
  }

  private void refuseBlank(String option, Path path) {
    if (path != null && path.toString().isBlank()) {
      throw new ParameterException(spec.commandLine(), option + " needs a name");
    }
  }

  private List<ListedJob> read(Diagnostics diagnostics) throws IOException {
    Optional<SourceText> partList = list(parts).read(diagnostics);
    Optional<SourceText> stockList = list(stock).read(diagnostics);
    if (partList.isEmpty() || stockList.isEmpty()) {
      return List.of();
    }
    ListOptions options = new ListOptions(unit, turn && !noTurn, least);
    return ListReader.read(partList.get(), stockList.get(), options, diagnostics);
  }

  private LayoutRun.Setting setting(Words words) {
    Paper pages = paper.equals(USUAL) ? Paper.usualFor(unit) : PAPERS.get(paper);
    return new LayoutRun.Setting(
        seconds, seed, name(), new LengthFormat(unit, FINEST), pages, words);
  }

  /** The name of the list of parts, without its ending. */
  private String name() {
    return parts.getFileName().toString().replaceFirst("\\.[A-Za-z]+$", "");
  }

  private static TextFile list(Path file) {
    return new TextFile(file, "no-list", "a list of parts is a text of some pages");
  }

  /** Where the layouts go: pages for hundreds of instances are made only if they are asked for. */
  private Optional<Path> folder(List<ListedJob> jobs) {
    if (out != null || summary != null || jobs.size() > 1) {
      return Optional.ofNullable(out);
    }
    return Optional.of(Path.of("out", name()));
  }

  private void tell(List<Diagnostic> faults) {
    PrintWriter err = spec.commandLine().getErr();
    faults.stream()
        .limit(MOST_TOLD)
        .forEach(fault -> err.print(DiagnosticPrinter.print(fault) + "\n"));
    if (faults.size() > MOST_TOLD) {
      err.println("and %d more".formatted(faults.size() - MOST_TOLD));
    }
    err.println(DiagnosticPrinter.counts(faults));
    err.flush();
  }
}
