package storyrod.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Library.Found;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.planset.Printable;

/**
 * A description whose comments say what is found in its next line: {@code # error: 16-20 MESSAGE
 * [CODE]}, the columns first, then {@code # also: LINE REMARK} and {@code # hint: WORDS}, of which
 * words may be left out at the end with {@code ...}. A place that no comment can stand before is
 * given as {@code # error: LINE:16-20}, one in another file as {@code # error: FILE:LINE:16-20};
 * how that file came to be used stands below, {@code # use: ...}.
 *
 * @param files where further files are
 */
record MessageCase(List<String> lines, Path files) {
  private static final String NAME = "case.yaml";

  private static final Pattern EXPECTED =
      Pattern.compile("\\s*# (error|warning|advice|also|use|hint): (.*)");
  private static final Pattern PLACED = Pattern.compile("(?:[a-z-]+\\.yaml:)?(\\d+):(\\d.*)");

  static MessageCase of(String text, Path files) {
    return new MessageCase(List.of(text.split("\n", -1)), files);
  }

  private MessageCase with(List<String> others) {
    return new MessageCase(others, files);
  }

  /** What the whole pipeline finds, one line for each message, second place and hint. */
  List<String> found() {
    return shortened(findings().stream().flatMap(each -> told(each).stream()).toList(), expected());
  }

  List<Diagnostic> findings() {
    Diagnostics diagnostics = new Diagnostics();
    new DescriptionReader(Pipeline.VOCABULARY, Printable::has, this::find)
        .read(new SourceText(NAME, String.join("\n", lines)), diagnostics)
        .ifPresent(
            description -> {
              new ProjectPhotos(files).read(description.record(), diagnostics);
              Pipeline.plan(description, diagnostics);
            });
    return diagnostics.sorted();
  }

  /** Finds further files as the tool does, but names them as they are written. */
  private Found find(String path, SourceText from) {
    SourceText beside = new SourceText(files.resolve(NAME).toString(), "");
    Found found = new ProjectLibrary(Path.of("storyrod")).find(path, beside);
    return found.text().map(text -> Found.of(new SourceText(path, text.text()))).orElse(found);
  }

  List<String> expected() {
    List<String> expected = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Matcher comment = EXPECTED.matcher(lines.get(i));
      if (comment.matches()) {
        expected.add(line(comment, target(i)));
      }
    }
    return expected;
  }

  private static String line(Matcher comment, int target) {
    String kind = comment.group(1);
    boolean placed = PLACED.matcher(comment.group(2)).matches();
    boolean relative = !List.of("hint", "also", "use").contains(kind) && !placed;
    return kind + ": " + (relative ? target + ":" : "") + comment.group(2);
  }

  private int target(int comment) {
    int next = comment;
    while (next < lines.size() && EXPECTED.matcher(lines.get(next)).matches()) {
      next++;
    }
    return next + 1;
  }

  private static List<String> told(Diagnostic fault) {
    List<String> told = new ArrayList<>();
    told.add(
        "%s: %s %s [%s]"
            .formatted(fault.severity().word(), place(fault), fault.message(), fault.code()));
    fault.also().forEach(place -> told.add("also: " + place.at().line() + " " + place.remark()));
    DiagnosticPrinter.print(fault)
        .lines()
        .filter(line -> line.startsWith(CHAIN))
        .forEach(line -> told.add("use: " + line.substring(CHAIN.length())));
    fault.hints().forEach(hint -> told.add("hint: " + hint));
    return told;
  }

  private static final String CHAIN = "  in use: ";
  private static final Pattern MARK = Pattern.compile("\n *\\| +(\\^+)\n");

  private static String place(Diagnostic fault) {
    Span at = fault.at();
    Matcher mark = MARK.matcher(DiagnosticPrinter.print(fault));
    int length = mark.find() ? mark.group(1).length() : 1;
    String last = length == 1 ? "" : "-" + (at.column() + length - 1);
    String file = isHere(fault) ? "" : at.source().file() + ":";
    return file + at.line() + ":" + at.column() + last;
  }

  private static boolean isHere(Diagnostic fault) {
    return fault.at().source().file().equals(NAME);
  }

  /** Cuts what was found to as much as is expected of it. */
  private static List<String> shortened(List<String> found, List<String> expected) {
    List<String> shortened = new ArrayList<>(found);
    for (int i = 0; i < Math.min(found.size(), expected.size()); i++) {
      String start = expected.get(i).replaceAll("\\.\\.\\.$", "");
      if (expected.get(i).endsWith("...") && found.get(i).startsWith(start)) {
        shortened.set(i, expected.get(i));
      }
    }
    return shortened;
  }

  boolean holds() {
    return expected().equals(found());
  }

  /** The same case with what is found now as its comments, for a person to read over. */
  MessageCase renewed() {
    MessageCase bare =
        with(lines.stream().filter(line -> !EXPECTED.matcher(line).matches()).toList());
    return Stream.of(bare.commented(), bare.headed(true), bare.headed(false))
        .filter(MessageCase::holds)
        .findFirst()
        .orElse(this);
  }

  private MessageCase commented() {
    List<String> all = new ArrayList<>();
    List<Diagnostic> faults = findings();
    faults.stream()
        .filter(fault -> !isHere(fault))
        .flatMap(fault -> told(fault).stream())
        .forEach(told -> all.add("# " + told));
    for (int i = 0; i < lines.size(); i++) {
      int line = i + 1;
      faults.stream()
          .filter(fault -> isHere(fault) && fault.at().line() == line)
          .flatMap(fault -> told(fault).stream())
          .forEach(
              told -> all.add("# " + told.replaceFirst("^(error|warning|advice): \\d+:", "$1: ")));
      all.add(lines.get(i));
    }
    return withSecondPlaces(all);
  }

  /** Second places are told by the lines of the text as it stands with its comments. */
  private MessageCase withSecondPlaces(List<String> all) {
    List<String> also =
        with(all).findings().stream()
            .flatMap(fault -> told(fault).stream())
            .filter(told -> told.startsWith("also: ") || told.startsWith("use: "))
            .toList();
    int next = 0;
    for (int i = 0; i < all.size(); i++) {
      boolean second = all.get(i).startsWith("# also: ") || all.get(i).startsWith("# use: ");
      if (second && next < also.size()) {
        all.set(i, "# " + also.get(next++));
      }
    }
    return with(all);
  }

  private MessageCase headed(boolean moves) {
    List<String> found = findings().stream().flatMap(fault -> told(fault).stream()).toList();
    List<String> all = new ArrayList<>();
    found.forEach(told -> all.add("# " + moved(told, moves ? found.size() : 0)));
    all.addAll(lines);
    return with(all);
  }

  private static String moved(String told, int by) {
    Matcher place = Pattern.compile("^(error|warning|advice|also): (\\d+)(.*)").matcher(told);
    return place.matches()
        ? place.group(1) + ": " + (Integer.parseInt(place.group(2)) + by) + place.group(3)
        : told;
  }
}
