package storyrod.planset;

import java.util.List;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.measure.LengthFormat;
import storyrod.piece.Piece;
import storyrod.planset.StepText.SettingText;
import storyrod.words.Words;

/** Puts steps into words, by the template {@code steps/text.ftl} and the words of a language. */
final class StepWriter {
  private static final String TITLE = "# ";
  private static final String SENTENCE = "- ";

  private final Piece piece;
  private final Words words;
  private final Templates templates;
  private final StepData data;

  StepWriter(Piece piece, Words words, Templates templates) {
    this.piece = piece;
    this.words = words;
    this.templates = templates;
    this.data = new StepData(piece, words);
  }

  StepText write(Step step) {
    List<String> lines =
        templates.render("steps/text.ftl", data.of(step)).lines().map(String::strip).toList();
    Durations durations = new Durations(words);
    return new StepText(
        starting(lines, TITLE).getFirst(),
        starting(lines, SENTENCE),
        step.cautions().stream().map(key -> words.say("caution." + key)).toList(),
        step.tools().stream().map(key -> words.say("tool." + key)).toList(),
        settings(step),
        durations.brief(step.minutes()),
        durations.brief(step.waitMinutes()));
  }

  /** The title of a step's stage. */
  String stage(Step step) {
    return step.stage().title().orElseGet(() -> words.say("stage." + step.stage().key()));
  }

  private static List<String> starting(List<String> lines, String start) {
    return lines.stream()
        .filter(line -> line.startsWith(start))
        .map(line -> line.substring(start.length()).strip())
        .toList();
  }

  /** Settings in words; what is the same for equal parts stands once, fences in the sentences. */
  private List<SettingText> settings(Step step) {
    return step.settings().stream()
        .filter(setting -> !setting.key().startsWith("fence-"))
        .map(this::text)
        .distinct()
        .toList();
  }

  private SettingText text(Setting setting) {
    LengthFormat format = piece.description().format();
    LengthFormat figures = setting.key().endsWith("-diameter") ? format.forBits() : format;
    return new SettingText(
        words.say("setting." + setting.key()),
        setting.part().map(part -> piece.part(part).mark()).orElse(""),
        figures.formatWithUnit(setting.value()));
  }
}
