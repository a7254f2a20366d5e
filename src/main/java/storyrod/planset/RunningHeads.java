package storyrod.planset;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What stands at the right of the head of pages, beside the plan's name: the parts and steps of the
 * page by their names, or by marks and numbers where these leave no room for names.
 *
 * @param parts for each page of part drawings
 * @param steps for each page of steps
 */
public record RunningHeads(List<String> parts, List<String> steps) {
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.42);
  private static final String BETWEEN = " · ";
  private static final double GAP_MM = 8;

  /** A longer name of the plan is cut, as the frame's macro cuts it. */
  private static final int LONGEST_NAME = 60;

  public RunningHeads {
    parts = List.copyOf(parts);
    steps = List.copyOf(steps);
  }

  static RunningHeads of(Pages pages) {
    double room = roomMm(pages);
    return new RunningHeads(
        pages.parts().pages().stream().map(page -> parts(page, pages, room)).toList(),
        pages.steps().pages().stream().map(page -> steps(page, pages, room)).toList());
  }

  private static double roomMm(Pages pages) {
    String name = pages.cover().name();
    String shown = name.substring(0, Math.min(name.length(), LONGEST_NAME));
    return pages.paper().textWidthMm() - TEXT.widthMm(shown) - GAP_MM;
  }

  private static String parts(List<PartPages.Entry> page, Pages pages, double room) {
    String names = joined(page.stream().map(part -> part.mark() + " " + part.title()));
    String marks = joined(page.stream().map(PartPages.Entry::mark));
    return longest(room, pages.say("parts.head", names), pages.say("parts.head", marks));
  }

  private static String steps(StepPages.Page page, Pages pages, double room) {
    String stage = pages.say("steps.head", page.stage().number(), page.stage().title());
    List<StepEntry> steps = page.steps().stream().map(StepPages.Placed::step).distinct().toList();
    String names = joined(steps.stream().map(step -> step.number() + " " + step.text().title()));
    String numbers = joined(steps.stream().map(step -> Integer.toString(step.number())));
    String key = steps.size() == 1 ? "steps.head.step" : "steps.head.steps";
    return longest(room, stage + BETWEEN + names, stage + BETWEEN + pages.say(key, numbers), stage);
  }

  private static String joined(Stream<String> names) {
    return names.distinct().collect(Collectors.joining(", "));
  }

  /** The first that fits into a line, or the last. */
  private static String longest(double roomMm, String... heads) {
    return Stream.of(heads)
        .filter(head -> TEXT.widthMm(head) <= roomMm)
        .findFirst()
        .orElse(heads[heads.length - 1]);
  }
}
