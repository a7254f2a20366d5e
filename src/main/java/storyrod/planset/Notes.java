package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import storyrod.description.Diagnostic;
import storyrod.description.Severity;

/** What to know before starting, and the findings worth telling the reader. */
public record Notes(List<Caution> cautions, List<Finding> findings) {
  private static final Pattern WRITTEN =
      Pattern.compile("`|^(?:write|name|give|add) .* (?:item|stock|description|project)\\b");

  public Notes {
    cautions = List.copyOf(cautions);
    findings = List.copyOf(findings);
  }

  /** A caution with the numbers of the steps that it comes up in. */
  public record Caution(String text, String steps) {}

  /** A finding as a sentence, with what the shop can do about it. */
  public record Finding(String severity, String message, List<String> hints) {}

  static Notes of(PlanSet set, StepPages steps, Texts texts) {
    return new Notes(
        cautions(steps), findings(set.findings(), new ReaderNames(set.piece(), texts), texts));
  }

  /** The findings, each told once: those of equal parts are the same sentence to a reader. */
  static List<Finding> findings(List<Diagnostic> found, ReaderNames names, Texts texts) {
    return found.stream().map(each -> finding(each, names, texts)).distinct().toList();
  }

  private static List<Caution> cautions(StepPages steps) {
    Map<String, List<Integer>> numbers = new LinkedHashMap<>();
    steps.stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .forEach(
            step ->
                step.text()
                    .cautions()
                    .forEach(
                        caution ->
                            numbers
                                .computeIfAbsent(caution, key -> new ArrayList<>())
                                .add(step.number())));
    return numbers.entrySet().stream()
        .map(entry -> new Caution(entry.getKey(), joined(entry.getValue())))
        .toList();
  }

  /** Numbers in order, with rows of them as ranges: {@code 1–3, 7}. */
  static String joined(List<Integer> numbers) {
    List<String> ranges = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= numbers.size(); i++) {
      if (i == numbers.size() || numbers.get(i) != numbers.get(i - 1) + 1) {
        int first = numbers.get(from);
        int last = numbers.get(i - 1);
        String dash = last == first + 1 ? ", " : "\u2013";
        ranges.add(first == last ? Integer.toString(first) : first + dash + last);
        from = i;
      }
    }
    return String.join(", ", ranges);
  }

  private static Finding finding(Diagnostic finding, ReaderNames names, Texts texts) {
    String key = finding.severity() == Severity.WARNING ? "finding.warning" : "finding.advice";
    FindingWords words = new FindingWords(texts.words());
    String code = finding.code();
    return new Finding(
        texts.say(key),
        Texts.capital(words.message(code, names.in(finding.message()))),
        finding.hints().stream()
            .filter(hint -> !isForTheDescription(hint))
            .map(hint -> words.hint(code, names.in(hint)))
            .map(Texts::capital)
            .toList());
  }

  /** Whether a hint says what to write into the description, which the reader may never see. */
  private static boolean isForTheDescription(String hint) {
    return WRITTEN.matcher(hint).find();
  }
}
