package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FramePanels;
import storyrod.build.GlueTimes;
import storyrod.build.GlueTurns;
import storyrod.build.LongBits;
import storyrod.build.MountHoles;
import storyrod.build.SandedFaces;
import storyrod.build.Schedule;
import storyrod.build.Traits;
import storyrod.build.Trials;
import storyrod.build.Verb;
import storyrod.description.FinishEntry;
import storyrod.drawing.FullSize;
import storyrod.drawing.OneOfMany;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The values from which the step template makes sentences; names and figures, no words. */
final class StepData {
  /** Finishes of which nothing must stay wet on the face (makers' labels, memory). */
  private static final List<String> WIPED_OFF = List.of("hard-wax-oil", "linseed-oil", "tung-oil");

  private final Piece piece;
  private final List<Step> steps;
  private final Words words;
  private final Traits traits;
  private final PartPhrases phrases;
  private final HardwareData hardware;
  private final FitData fit;
  private final TrialData trials;
  private final CareData care;
  private final ClampsOff clamps;
  private final PreFinishData early;
  private final LongBits longBits;
  private final List<FullSize> templates;

  StepData(Piece piece, Words words, BuildPlan plan) {
    this.piece = piece;
    this.words = words;
    this.steps = plan.steps();
    this.traits = new Traits(piece);
    this.phrases = new PartPhrases(piece);
    this.hardware = new HardwareData(piece, phrases);
    this.fit = new FitData(piece, phrases, Lying.of(piece, words, steps));
    this.care = new CareData(piece, phrases, steps);
    this.clamps = new ClampsOff(Schedule.of(plan, piece.description().shop()).off());
    this.early = new PreFinishData(piece, phrases);
    this.longBits = new LongBits(piece);
    this.templates = FullSize.of(piece);
    this.trials = new TrialData(piece, phrases, steps);
  }

  Map<String, Object> of(Step step) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("words", words.byKey());
    data.put("verb", step.verb().word());
    data.put(
        "traits", step.operations().stream().flatMap(each -> traits.of(each).stream()).toList());
    data.put("parts", phrases.parts(step.targets()));
    data.put("marks", phrases.marks(step.targets()));
    data.put("inch", piece.description().printed().unit() == Unit.INCH);
    data.put("both", piece.description().printed().isDual());
    data.put("said", step.say().stream().map(StepData::sentence).toList());
    data.put("wait", new Durations(words).spoken(step.waitMinutes()));
    GlueTimes glue = GlueTimes.of(piece.description());
    data.put("cured", new Durations(words).spoken(glue.cured()));
    data.put("clampTime", new Durations(words).spoken(glue.clampMinutes()));
    data.put("hardware", hardware.of(step));
    data.put("oneShown", OneOfMany.isIn(piece, step));
    data.put("diagonal", value(step, "diagonal"));
    data.put("acrossFeet", value(step, "diagonal-feet"));
    data.put("drilledEarly", phrases.parts(drilledEarly(step)));
    data.put("finish", finish());
    data.put("careful", care.of(step));
    List<Integer> off = clamps.of(step);
    data.put("clampsOff", off);
    boolean standsUp = fit.standsUp(step, off);
    data.put("standsUp", standsUp);
    data.put("heavyUp", standsUp && off.stream().anyMatch(this::isHeavilyTurned));
    data.put("staysClamped", clamps.isLater(step));
    data.put("inUnits", phrases.toldApart(fit.builtIn(step)));
    data.put("alike", fit.areEqual(fit.builtIn(step)));
    data.put("acrossGlue", isAcrossGlue(step));
    data.put("bitGiven", step.isSet("pilot-diameter"));
    data.putAll(ofVerb(step));
    return data;
  }

  /** What only the steps of one verb have. */
  private Map<String, Object> ofVerb(Step step) {
    return switch (step.verb()) {
      case CHOOSE -> new ChoiceData(piece, phrases).of(step);
      case MARK -> new MarkingData(piece, phrases).of(step);
      case MILL -> glued(new StockData(piece, phrases).of(step), step);
      case BLANK, KEEP, REJOIN, SIZE -> {
        Map<String, Object> data = new StockData(piece, phrases).of(step);
        data.putAll(new KeptData(piece, phrases).of(step));
        yield glued(data, step);
      }
      case CUT, TRIM -> cut(step);
      case DRILL -> withSlides(cut(step), step);
      case FIT -> fitted(step);
      case SAND -> sanded(step);
      case DRY_FIT -> trials.dry(step);
      case TRIAL_FIT, MOUNT -> withSlides(hung(step), step);
      case PRE_FINISH -> early.of(step);
      case FINISH -> finished(step);
      case TEST -> Map.of("sheeted", piece.parts().stream().anyMatch(Traits::isSheet));
    };
  }

  private Map<String, Object> cut(Step step) {
    Map<String, Object> data = new LinkedHashMap<>(new CutData(piece, phrases, templates).of(step));
    data.putAll(new EasedEnds(piece, phrases, steps).of(step));
    return data;
  }

  private Map<String, Object> withSlides(Map<String, Object> data, Step step) {
    Map<String, Object> all = new LinkedHashMap<>(data);
    all.putAll(new SlideData(piece, phrases).of(step));
    all.put("pockets", new PocketData(piece, phrases).of(step));
    return all;
  }

  private Map<String, Object> glued(Map<String, Object> data, Step step) {
    data.putAll(new PanelData(piece, phrases, words).of(step));
    return data;
  }

  /** Whether glued joints hold what a step works on. */
  private boolean isAcrossGlue(Step step) {
    return piece.joints().stream()
        .filter(joint -> step.targets().contains(joint.first()))
        .filter(joint -> step.targets().contains(joint.second()))
        .anyMatch(Joint::glued);
  }

  /** The parts in which a step's hardware finds its pilot holes. */
  private List<String> drilledEarly(Step step) {
    return step.operations().stream()
        .flatMap(operation -> traits.mounted(operation).stream())
        .flatMap(
            entry ->
                MountHoles.drilledEarly(
                    steps.stream().flatMap(each -> each.operations().stream()), entry)
                    .stream())
        .distinct()
        .toList();
  }

  /** Parts of which both faces lie inside, and those of which one does. */
  private Map<String, Object> sanded(Step step) {
    SandedFaces faces = new SandedFaces(piece);
    FramePanels panels = new FramePanels(piece);
    List<String> framing =
        step.targets().stream()
            .flatMap(name -> panels.frame(piece.part(name)).stream().map(Part::name))
            .distinct()
            .toList();
    Map<Boolean, List<String>> both =
        step.targets().stream()
            .collect(
                Collectors.partitioningBy(name -> SandedFaces.areBoth(faces.of(piece.part(name)))));
    return Map.of(
        "bothFaces",
        phrases.marks(both.get(true)),
        "oneFace",
        phrases.marks(both.get(false)),
        "framing",
        phrases.marks(framing),
        "onlyPanels",
        step.targets().stream().allMatch(early::isPanel),
        "lapped",
        step.targets().stream().anyMatch(name -> isLapped(piece.part(name))));
  }

  private static boolean isLapped(Part part) {
    return part.cuts().stream().anyMatch(cut -> cut.term().endsWith("lap"));
  }

  private Map<String, Object> hung(Step step) {
    Map<String, Object> data = new LinkedHashMap<>(trials.hanging(step));
    data.put("hiddenEdges", trials.hiddenEdges(step));
    return data;
  }

  private Map<String, Object> fitted(Step step) {
    Map<String, Object> data = new LinkedHashMap<>(fit.of(step));
    data.putAll(new ForOne(piece, phrases, fit).of(step, data));
    MirrorImages mirrored = new MirrorImages(phrases, fit, steps);
    data.put("mirrorImages", mirrored.of(step));
    data.put("mirrorTaken", mirrored.taken(step));
    int turns = (int) data.get("turns");
    data.put("waitEach", new Durations(words).spoken(step.waitMinutes() / turns));
    data.put("eachMinutes", eachMinutes(step));
    data.put("triedDry", trials.isTriedDry(step));
    data.put("tried", trials.isTried(step.newParts()));
    data.put("madeMark", hardware.madeMark(step));
    data.put("longBit", longBits.areWanted(step));
    data.put("handle", new FrontData(piece).handle(step));
    data.put("gaps", FrontData.gaps(step));
    data.put("hiddenEdges", new HiddenEdges(piece, phrases).behindBrads(joints(step)));
    return data;
  }

  private static List<Joint> joints(Step step) {
    return step.operations().stream().flatMap(each -> each.joints().stream()).toList();
  }

  /** How long one of several things that are glued up alike takes; nothing where there is one. */
  private String eachMinutes(Step step) {
    int units = GlueTurns.of(piece, step).units();
    boolean isOne = units < 2 || step.glueUp().clamps() == 0;
    return new Durations(words).spoken(isOne ? 0 : Math.ceilDiv(step.minutes(), units));
  }

  /** What is finished already, and the grooves in which something slides. */
  private Map<String, Object> finished(Step step) {
    Map<String, Object> data = new LinkedHashMap<>(early.all());
    List<String> sliding =
        piece.joints().stream().filter(Joint::slides).map(Joint::first).distinct().toList();
    SandedAtLast last = new SandedAtLast(piece, steps);
    data.put("unsanded", phrases.marks(last.loose(step)));
    data.put("sandedOnce", phrases.marks(last.builtIn(step)));
    data.put("sliding", phrases.parts(sliding));
    data.put("opens", !new Trials(piece).movable().isEmpty());
    Texts texts = new Texts(piece.description().printed(), words);
    data.put(
        "toCover",
        step.verb() == Verb.FINISH ? new Masks(piece, steps, texts).standing() : List.of());
    data.put("slidIn", phrases.parts(new Trials(piece).runsIn(sliding)));
    return data;
  }

  /** Whether it took more than one to lay the piece down for a step, by its number. */
  private boolean isHeavilyTurned(int number) {
    return steps.get(number - 1).cautions().contains("turning");
  }

  private String value(Step step, String key) {
    return step.settings().stream()
        .filter(setting -> setting.key().equals(key))
        .map(Setting::value)
        .map(this::format)
        .findFirst()
        .orElse("");
  }

  private Map<String, Object> finish() {
    Map<String, Object> data = new LinkedHashMap<>();
    Optional<FinishEntry> finish = piece.description().finish();
    data.put("product", finish.map(FinishEntry::product).map(words::name).orElse(""));
    data.put("how", finish.flatMap(FinishEntry::how).orElse(""));
    data.put("coats", finish.map(FinishEntry::coats).orElse(0));
    data.put("sandTo", finish.map(FinishEntry::sandTo).orElse(0));
    data.put("dry", dry(finish.map(FinishEntry::dryHours).orElse(0)));
    data.put("oil", finish.flatMap(FinishEntry::kind).filter(WIPED_OFF::contains).isPresent());
    data.put("last", finish.flatMap(FinishEntry::last).map(this::last).stream().toList());
    return data;
  }

  private Map<String, Object> last(FinishEntry last) {
    return Map.of(
        "product", words.name(last.product()),
        "how", last.how().orElse(""),
        "coats", last.coats(),
        "wax", last.kind().filter("wax"::equals).isPresent(),
        "dry", dry(last.dryHours()));
  }

  private String dry(int hours) {
    return new Durations(words).spoken(60 * hours);
  }

  private String format(Length length) {
    return piece.description().printed().formatWithUnit(length);
  }

  /** A maker's words as a sentence: with a full stop, on one line. */
  private static String sentence(String said) {
    String line = said.strip().replaceAll("\\s+", " ");
    return line.matches(".*[.!?]") ? line : line + ".";
  }
}
