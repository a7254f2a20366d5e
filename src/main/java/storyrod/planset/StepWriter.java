package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Guides;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.planset.StepText.SettingText;
import storyrod.planset.StepText.ToolText;
import storyrod.words.Words;

/** Puts steps into words, by the template {@code steps/text.ftl} and the words of a language. */
final class StepWriter {
  private static final Pattern SEAT = Pattern.compile("(set-(?:from|inner|middle|past)-)(.*)");
  private static final String TITLE = "# ";
  private static final String SENTENCE = "- ";
  private static final String CAUTION = "! ";
  private static final String TOOL = "@ ";
  private static final String TURNING = "turning";

  private final Piece piece;
  private final Words words;
  private final Templates templates;
  private final StepData data;
  private final Lying lying;
  private final ToldPages told;

  StepWriter(Piece piece, Words words, Templates templates) {
    this(piece, words, templates, new BuildPlan(List.of(), List.of()));
  }

  /**
   * A writer that knows what is done before and after a step.
   *
   * @param plan all steps in order
   */
  StepWriter(Piece piece, Words words, Templates templates, BuildPlan plan) {
    this.piece = piece;
    this.words = words;
    this.templates = templates;
    this.data = new StepData(piece, words, plan);
    this.lying = Lying.of(piece, words, plan.steps());
    this.told = ToldPages.ALL;
  }

  private StepWriter(StepWriter usual, ToldPages told) {
    this.piece = usual.piece;
    this.words = usual.words;
    this.templates = usual.templates;
    this.data = usual.data;
    this.lying = usual.lying;
    this.told = told;
  }

  /** The same for an edition that has some pages only: no step may point to the others. */
  StepWriter pointingTo(ToldPages pages) {
    return new StepWriter(this, pages);
  }

  StepText write(Step step) {
    Map<String, Object> values = data.of(step);
    values.put("finishTold", told.finish());
    values.put("templatesTold", told.templates());
    List<String> lines =
        templates.render("steps/text.ftl", words, values).lines().map(String::strip).toList();
    Durations durations = new Durations(words);
    return new StepText(
        starting(lines, TITLE).getFirst(),
        starting(lines, SENTENCE),
        Stream.concat(
                starting(lines, CAUTION).stream(),
                step.cautions().stream()
                    .filter(key -> !key.equals(TURNING) || !lying.isLeft(step))
                    .map(key -> words.say("caution." + key)))
            .distinct()
            .toList(),
        Stream.concat(step.tools().stream(), starting(lines, TOOL).stream())
            .distinct()
            .map(key -> new ToolText(key, words.say("tool." + key)))
            .toList(),
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
    List<SettingText> plain =
        step.settings().stream()
            .filter(setting -> !Guides.isOne(setting))
            .filter(setting -> !isSeat(setting))
            .map(new SettingWords(piece, words)::text)
            .distinct()
            .toList();
    return Stream.concat(seats(step).stream(), plain.stream()).toList();
  }

  private static boolean isSeat(Setting setting) {
    return SEAT.matcher(setting.key()).matches();
  }

  /** Distances at which parts are set; the same from both ends stands once. */
  private List<SettingText> seats(Step step) {
    Map<List<Object>, Set<Face>> faces = new LinkedHashMap<>();
    for (Setting setting : step.settings()) {
      Matcher seat = SEAT.matcher(setting.key());
      if (seat.matches()) {
        Face face = Face.named(seat.group(2)).orElseThrow();
        Part part = piece.part(setting.part().orElseThrow());
        faces
            .computeIfAbsent(
                List.of(seat.group(1), part, face.axis(), setting.value()),
                key -> new LinkedHashSet<>())
            .add(face);
      }
    }
    List<SettingText> texts = new ArrayList<>();
    faces.forEach((key, both) -> texts.add(seat(key, both)));
    return texts;
  }

  private SettingText seat(List<Object> key, Set<Face> faces) {
    Part part = (Part) key.get(1);
    Face face = faces.iterator().next();
    String side = SeatData.side(part, face.axis());
    String name =
        faces.size() == 2
            ? words.say("setting." + key.getFirst() + "each-" + side)
            : words.say("setting." + key.getFirst() + side, words.say("edge." + face.word()));
    return new SettingText(
        name, part.mark(), piece.description().printed().formatWithUnit((Length) key.get(3)));
  }
}
