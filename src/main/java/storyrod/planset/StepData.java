package storyrod.planset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Fronts;
import storyrod.build.Insides;
import storyrod.build.Levels;
import storyrod.build.Operation;
import storyrod.build.Pilots;
import storyrod.build.Traits;
import storyrod.build.Verb;
import storyrod.description.Description.FinishEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.SplineSlot;
import storyrod.words.Words;

/** The values from which the step template makes sentences; names and figures, no words. */
final class StepData {
  /** Shorter than this a board is not safe in a jointer or planer (common practice). */
  private static final Length SHORTEST = Length.inches(12);

  /** How many parts make a framework on which something is laid rather than let in. */
  private static final int FRAMEWORK = 3;

  private final Piece piece;
  private final Words words;
  private final Traits traits;
  private final PartPhrases phrases;
  private final Nesting nesting;
  private final Map<String, String> levels;
  private final Map<String, String> drawers;

  StepData(Piece piece, Words words) {
    this.piece = piece;
    this.words = words;
    this.traits = new Traits(piece);
    this.phrases = new PartPhrases(piece);
    this.nesting = Nesting.of(piece);
    this.levels = Levels.byUnit(piece);
    this.drawers = Fronts.drawers(piece);
  }

  Map<String, Object> of(Step step) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("words", words.byKey());
    data.put("verb", step.verb().word());
    data.put(
        "traits", step.operations().stream().flatMap(each -> traits.of(each).stream()).toList());
    data.put("parts", phrases.parts(targets(step)));
    data.put("marks", phrases.marks(targets(step)));
    data.put("said", step.say().stream().map(StepData::sentence).toList());
    data.put("wait", new Durations(words).spoken(step.waitMinutes()));
    data.put("hardware", hardware(step));
    data.put("diagonal", value(step, "diagonal"));
    data.put("finish", finish());
    data.put("inUnits", phrases.numbered(builtIn(step)));
    data.put("bitGiven", has(step, "pilot-diameter"));
    data.put("lineGiven", has(step, "slide-line-"));
    data.put("underGiven", has(step, "slide-under-"));
    data.put("offFront", has(step, "slide-behind") || has(step, "slide-before"));
    switch (step.verb()) {
      case MILL -> putStock(data, step);
      case BLANK, KEEP, REJOIN, SIZE -> {
        putStock(data, step);
        data.putAll(new KeptData(piece, phrases).of(step));
      }
      case CUT, DRILL -> data.putAll(new CutData(piece, phrases).of(step));
      case FIT -> putFit(data, step);
      case SAND -> putSanded(data, step);
      case MOUNT, TEST, FINISH -> {}
    }
    return data;
  }

  private static List<String> targets(Step step) {
    return step.operations().stream().flatMap(operation -> operation.parts().stream()).toList();
  }

  private void putStock(Map<String, Object> data, Step step) {
    Part part = piece.part(step.operations().getFirst().target());
    String thick = format(part.finishedThickness());
    String material = material(part.stock().species());
    data.put("thickness", thick);
    data.put("stock", Map.of("material", material, "thick", thick));
    data.put("short", phrases.marks(targets(step).stream().filter(this::isShort).toList()));
    data.put("staved", phrases.parts(targets(step)).stream().flatMap(this::staved).toList());
    data.put("tooWide", phrases.parts(targets(step).stream().filter(this::isTooWide).toList()));
  }

  /** A part that is glued up from a known number of staves, with their number and width. */
  private Stream<Map<String, Object>> staved(Map<String, Object> phrase) {
    Part part = piece.mark((String) phrase.get("mark")).shown();
    return piece
        .staves(part)
        .map(count -> staved(phrase, count, format(piece.staveWidth(part))))
        .stream();
  }

  private static Map<String, Object> staved(Map<String, Object> phrase, int count, String width) {
    return Map.of("part", phrase, "count", count, "width", width);
  }

  private boolean isShort(String name) {
    return piece.part(name).finishedLength().isShorterThan(SHORTEST);
  }

  private boolean isTooWide(String name) {
    return piece.part(name).finishedWidth().isLongerThan(piece.description().shop().planerWidth());
  }

  private void putSanded(Map<String, Object> data, Step step) {
    Insides insides = new Insides(piece);
    List<String> both =
        targets(step).stream().filter(n -> insides.faces(piece.part(n)).size() == 2).toList();
    data.put("bothFaces", phrases.marks(both));
    data.put(
        "oneFace", phrases.marks(targets(step).stream().filter(n -> !both.contains(n)).toList()));
  }

  /** A species as it is spoken of: {@code ash, white} is white ash. */
  private static String material(String species) {
    String[] names = species.split(", *", 2);
    return names.length == 2 ? names[1] + " " + names[0] : species;
  }

  private void putFit(Map<String, Object> data, Step step) {
    List<Operation> joining =
        step.operations().stream().filter(each -> !each.joints().isEmpty()).toList();
    List<Operation> moving = joining.isEmpty() ? step.operations() : joining;
    List<String> comeIn = moving.stream().flatMap(each -> each.parts().stream()).toList();
    List<Joint> joints = moving.stream().flatMap(each -> each.joints().stream()).toList();
    String level = level(step);
    boolean inPiece = level.equals(Nesting.PIECE);
    List<String> meeting = meeting(joints, comeIn);
    data.put("moving", phrases.units(comeIn, level));
    data.put("turned", inPiece && !step.standing().isEmpty());
    data.put("base", phrases.units(laidReady(step, comeIn), level));
    data.put("onto", phrases.units(meeting, level));
    data.put("from", step.enters().map(face -> face.opposite().word()).orElse("top"));
    List<Map<String, Object>> seats = new SeatData(piece, phrases).of(step);
    data.put("seats", seats);
    data.put("flush", seats.isEmpty() ? flush(step, comeIn, meeting) : List.of());
    data.put("overhung", has(step, "overhang-"));
    data.put("glueTerms", glueTerms(joints));
    data.put("mitred", joints.stream().anyMatch(joint -> isCut(joint, Slanted.Slope.class)));
    data.put("splined", splined(joints));
    data.put("jointCount", joints.stream().filter(Joint::glued).count());
    data.put("inPiece", inPiece);
    data.put("laidOn", isLaidOn(joints, comeIn));
    data.put("frontLater", fronts(comeIn));
    data.put("pullHolds", pullHolds(step));
    data.put("movingSolid", comeIn.stream().map(piece::part).noneMatch(Traits::isSheet));
    data.put("hangers", hangers(comeIn));
    data.put("fastenerCount", count(step, "top-fastener") + count(step, "rotating-fastener"));
  }

  /** What a step builds on: the piece, or a sub-assembly; a front is fixed to its drawer. */
  private String level(Step step) {
    return level(step.operations().getFirst().target());
  }

  private String level(String target) {
    return Optional.ofNullable(drawers.get(target))
        .orElseGet(() -> levels.getOrDefault(target, Nesting.PIECE));
  }

  /** The sub-assemblies that a fitting step builds, or whose fronts it fixes. */
  private List<String> builtIn(Step step) {
    return step.operations().stream()
        .filter(each -> each.verb() == Verb.FIT)
        .map(each -> level(each.target()))
        .distinct()
        .toList();
  }

  private static List<String> laidReady(Step step, List<String> comeIn) {
    return step.newParts().stream().filter(part -> !comeIn.contains(part)).toList();
  }

  /** The parts that moving parts are joined to, in the order of the joints. */
  private static List<String> meeting(List<Joint> joints, List<String> comeIn) {
    return joints.stream()
        .flatMap(joint -> Stream.of(joint.first(), joint.second()))
        .filter(part -> !comeIn.contains(part))
        .distinct()
        .toList();
  }

  /** The faces in which the moving part and the one it joins lie in one plane. */
  private List<String> flush(Step step, List<String> comeIn, List<String> meeting) {
    if (comeIn.size() != 1 || meeting.size() != 1) {
      return List.of();
    }
    Part moving = piece.part(comeIn.getFirst());
    Part other = piece.part(meeting.getFirst());
    return Arrays.stream(Face.values())
        .filter(face -> step.enters().filter(way -> way.axis() == face.axis()).isEmpty())
        .filter(
            face -> face.axis() != moving.thickness() || moving.thickness() == other.thickness())
        .filter(face -> standsAsDrawn(moving, face) && standsAsDrawn(other, face))
        .filter(face -> moving.shoulder().at(face).equals(other.shoulder().at(face)))
        .map(Face::word)
        .toList();
  }

  /** Whether a face of a part looks the same way as it stands. */
  private static boolean standsAsDrawn(Part part, Face face) {
    return !part.pose().isTurned() || part.pose().about() == face.axis();
  }

  /** Whether splines of these joints lie in a frame or in a case, where they cannot go in first. */
  private String splined(List<Joint> joints) {
    return joints.stream()
        .filter(joint -> isCut(joint, SplineSlot.class))
        .map(joint -> piece.part(joint.first()))
        .map(part -> part.cuts().stream().anyMatch(cut -> isInFrame(cut, part)) ? "frame" : "case")
        .findFirst()
        .orElse("");
  }

  private static boolean isInFrame(Cut cut, Part part) {
    return cut instanceof SplineSlot slot && slot.isInFrame(part);
  }

  /** Whether a joint itself made a cut of some kind in its first part. */
  private boolean isCut(Joint joint, Class<? extends Cut> kind) {
    return piece.part(joint.first()).cuts().stream()
        .anyMatch(cut -> kind.isInstance(cut) && cut.at().equals(joint.at()));
  }

  private List<Map<String, Object>> glueTerms(List<Joint> joints) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Joint joint : joints) {
      if (joint.glued()) {
        takenIn(joint).ifPresent(term -> counts.merge(term, 1, Integer::sum));
      }
    }
    List<Map<String, Object>> terms = new ArrayList<>();
    counts.forEach((term, count) -> terms.add(Map.of("term", term, "count", count)));
    return terms;
  }

  /** The word for the cut that takes in a joint's first part, if there is one. */
  private Optional<String> takenIn(Joint joint) {
    return piece.part(joint.second()).cuts().stream()
        .filter(Cut::takesIn)
        .filter(cut -> cut.isFor(joint.first()))
        .map(Cut::term)
        .findFirst();
  }

  /** Whether all that comes in meets several parts with one and the same face. */
  private boolean isLaidOn(List<Joint> joints, List<String> comeIn) {
    return meeting(joints, comeIn).size() >= FRAMEWORK
        && joints.stream().filter(Joint::glued).map(Joint::entry).distinct().count() == 1
        && joints.stream().noneMatch(joint -> takenIn(joint).isPresent())
        && joints.stream().noneMatch(joint -> joint.glued() && !joint.fasteners().isEmpty());
  }

  /** Whether a front of one of these assemblies is fixed later. */
  private boolean fronts(List<String> comeIn) {
    return drawers.values().stream()
        .anyMatch(drawer -> comeIn.stream().anyMatch(part -> nesting.isIn(part, drawer)));
  }

  /** Whether a pull's holes go through the step's first part, so that its screws can hold it. */
  private boolean pullHolds(Step step) {
    return piece.part(step.newParts().getFirst()).cuts().stream()
        .anyMatch(cut -> cut.forWhat().filter(item -> kind(item).equals("pull")).isPresent());
  }

  private static List<Joint> joints(Step step, String item) {
    return step.operations().stream()
        .flatMap(operation -> operation.joints().stream())
        .filter(joint -> joint.fasteners().stream().anyMatch(each -> each.item().equals(item)))
        .toList();
  }

  private static List<String> drivenThrough(List<Joint> joints) {
    return joints.stream().flatMap(each -> each.driven().stream()).map(Joint.Driven::part).toList();
  }

  private static List<String> drivenFrom(List<Joint> joints) {
    return joints.stream()
        .flatMap(joint -> joint.driven().stream())
        .map(driven -> driven.face().word())
        .distinct()
        .toList();
  }

  private List<String> hangers(List<String> parts) {
    return piece.description().hardware().stream()
        .filter(entry -> entry.parts().stream().anyMatch(part -> parts.contains(part.value())))
        .map(entry -> kind(entry.item().value()))
        .distinct()
        .toList();
  }

  private List<Map<String, Object>> hardware(Step step) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (ItemCount each : bradsLast(step)) {
      Map<String, Object> item = new LinkedHashMap<>();
      item.put("kind", kind(each.item()));
      item.put("title", item(each.item()).map(ItemEntry::title).orElse(each.item()));
      item.put("count", each.count());
      List<Joint> joints = joints(step, each.item());
      item.put("drivenFrom", drivenFrom(joints));
      item.put("through", phrases.parts(drivenThrough(joints)));
      item.put("joints", joints.size());
      item.put("piloted", joints.stream().anyMatch(j -> !Pilots.of(piece, j).isEmpty()));
      all.add(item);
    }
    return all;
  }

  /** Brads go in when screws hold the parts still. */
  private List<ItemCount> bradsLast(Step step) {
    return step.hardware().stream()
        .sorted(Comparator.comparing((ItemCount each) -> kind(each.item()).equals("brad")))
        .toList();
  }

  private int count(Step step, String kind) {
    return step.hardware().stream()
        .filter(each -> kind(each.item()).equals(kind))
        .mapToInt(ItemCount::count)
        .sum();
  }

  private Optional<ItemEntry> item(String name) {
    return Optional.ofNullable(piece.description().items().get(name));
  }

  private String kind(String name) {
    return item(name)
        .map(entry -> entry.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .orElse("other");
  }

  private static boolean has(Step step, String key) {
    return step.settings().stream().anyMatch(setting -> setting.key().startsWith(key));
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
    data.put("product", finish.map(FinishEntry::product).orElse(""));
    data.put("coats", finish.map(FinishEntry::coats).orElse(0));
    data.put("sandTo", finish.map(FinishEntry::sandTo).orElse(0));
    data.put("dry", new Durations(words).spoken(finish.map(FinishEntry::dryHours).orElse(0) * 60));
    return data;
  }

  private String format(Length length) {
    return piece.description().format().formatWithUnit(length);
  }

  /** A maker's words as a sentence: with a full stop, on one line. */
  private static String sentence(String said) {
    String line = said.strip().replaceAll("\\s+", " ");
    return line.matches(".*[.!?]") ? line : line + ".";
  }
}
