package storyrod.planset;

import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.CutKind;
import storyrod.build.Guidance;
import storyrod.build.Operation;
import storyrod.build.Traits;
import storyrod.build.Verb;
import storyrod.drawing.FullSize;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;
import storyrod.words.Words;

/** The values of a step that cuts or drills: what is set once, and the fence for each part. */
record CutData(Piece piece, PartPhrases phrases, List<FullSize> templates) {
  /** What a saw takes off in one pass at most (from memory). */
  private static final Length DEEPEST_PASS = Length.inches(1).dividedBy(2, RoundingMode.HALF_EVEN);

  /** Wider than this, no usual bit bores wood (common practice). */
  private static final Length WIDEST_BIT = Length.inches(2);

  /** Narrower than this, no hand goes in (common practice). */
  private static final Length FINGERS = Length.inches(1);

  Map<String, Object> of(Step step) {
    Operation first = step.operations().getFirst();
    Cut cut = first.cuts().getFirst();
    CutKind kind = CutKind.of(piece.part(first.target()), cut);
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("term", kind.term());
    data.put("count", step.operations().stream().mapToInt(each -> each.cuts().size()).sum());
    LengthFormat format = piece.description().printed();
    boolean fine = kind.verb() == Verb.DRILL || cut instanceof Slanted.Housing;
    LengthFormat bits = fine ? format.forBits() : format;
    data.put("size", bits.formatWithUnit(kind.size()));
    data.put("depth", kind.depth().isPositive() ? format(kind.depth()) : "");
    data.put("length", cut instanceof Slots slots ? format(slots.length()) : "");
    data.put("forKind", forKind(cut));
    data.put("forTitle", forTitle(cut));
    data.put("forOne", isForOne(cut));
    data.put("takes", takes(cut));
    data.put("angle", angle(cut));
    data.put("edges", edges(step));
    data.put("acrossGrain", new CutWays(piece).slopesAcross(step));
    data.put("slotsRun", new CutWays(piece).slotsRun(step));
    data.put("endGrain", step.operations().stream().anyMatch(this::roundsEndGrain));
    data.put("rounds", rounds(step));
    data.put("takesTongue", takesTongue(cut));
    data.put("lidEdge", lidEdge(cut));
    data.put(
        "sunk", cut instanceof Cut.Holes holes ? bits.formatWithUnit(holes.countersink()) : "");
    data.put("inPasses", isDeep(kind));
    data.put("holeBits", holeBits(step, format.forBits()));
    data.put("forHand", step.operations().stream().anyMatch(CutData::isForHand));
    data.put(
        "slope", cut instanceof Dovetails dovetails ? words().figures(dovetails.slopeWord()) : "");
    data.put("tailLength", cut instanceof Dovetails dovetails ? format(dovetails.length()) : "");
    data.put("tailLap", cut instanceof Dovetails dovetails && isLapped(dovetails));
    data.put(
        "inFrame", cut instanceof SplineSlot slot && slot.isInFrame(piece.part(first.target())));
    data.put(
        "leaningWidth", cut instanceof Slanted.Housing ? bits.formatWithUnit(kind.size()) : "");
    data.put("leans", new LeaningWalls(piece).of(step));
    data.put("notched", step.targets().stream().map(piece::part).anyMatch(CutData::isNotched));
    data.put("onEdge", cut.from().axis() != piece.part(first.target()).thickness());
    data.put("stops", step.operations().stream().anyMatch(this::stops));
    data.put("narrow", new NarrowEdges(piece, phrases).of(step));
    return Map.of(
        "cut", data,
        "crossed", new CrossedData(piece, phrases).of(step),
        "fences", new FenceData(piece, phrases).of(step),
        "insets", new InsetData(piece, phrases).of(step),
        "insetOthers", new InsetData(piece, phrases).elsewhere(step),
        "ways", ways(step),
        "rests", new RouterRests(piece, phrases).of(step),
        "sheets", new TemplateData(piece, templates).of(step, kind));
  }

  static Stream<Cut.Trench> trenches(Step step, String name) {
    return step.operations().stream()
        .filter(each -> each.target().equals(name))
        .flatMap(each -> Cut.only(Cut.Trench.class, each.cuts()).stream());
  }

  /** Parts by what leads them or the tool straight, for dados and rabbets. */
  private Map<String, List<Map<String, Object>>> ways(Step step) {
    Map<String, List<Map<String, Object>>> ways = new LinkedHashMap<>();
    for (Guidance way : Guidance.values()) {
      List<String> led = step.targets().stream().filter(n -> isLed(step, n, way)).toList();
      ways.put(way.name().toLowerCase(Locale.ROOT), phrases.parts(led));
    }
    return ways;
  }

  private boolean isLed(Step step, String name, Guidance way) {
    return trenches(step, name).anyMatch(t -> Guidance.of(piece.part(name), t) == way);
  }

  /** Whether what goes into a groove is a tongue, for which the groove is the gauge. */
  private boolean takesTongue(Cut cut) {
    return cut.forWhat()
        .flatMap(this::part)
        .filter(part -> part.cuts().stream().anyMatch(each -> each.term().equals("tongue")))
        .isPresent();
  }

  private static boolean isNotched(Part part) {
    return part.cuts(Cut.Trench.class).stream().anyMatch(cut -> cut.term().equals("notch"));
  }

  /** How thick the edge is that slides in a groove; nothing where it is not thinned. */
  private String lidEdge(Cut cut) {
    return cut.forWhat().flatMap(this::part).stream()
        .flatMap(part -> part.cuts(Cut.Tenon.class).stream().map(lid -> CutKind.of(part, lid)))
        .filter(kind -> kind.term().equals("lid tongue"))
        .map(kind -> format(kind.size()))
        .findFirst()
        .orElse("");
  }

  /** Whether a groove is too deep for one pass. */
  private static boolean isDeep(CutKind kind) {
    return kind.depth().isLongerThan(DEEPEST_PASS)
        && kind.depth().isLongerThan(kind.size().times(2));
  }

  /** Whether an edge that is rounded lies in an end that no mitre closes. */
  private boolean roundsEndGrain(Operation operation) {
    Part part = piece.part(operation.target());
    List<Face> ends =
        Stream.of(Face.of(part.length(), -1), Face.of(part.length(), 1))
            .filter(end -> !isMitred(part, end))
            .toList();
    return Cut.only(Cut.Roundover.class, operation.cuts()).stream()
        .anyMatch(cut -> ends.stream().anyMatch(end -> meets(cut, end)));
  }

  private static boolean isMitred(Part part, Face end) {
    return part.cuts(Slanted.Slope.class).stream()
        .anyMatch(slope -> slope.term().equals("mitre") && slope.from() == end);
  }

  private static boolean meets(Cut.Roundover cut, Face end) {
    return cut.edges().stream().anyMatch(edge -> edge.one() == end || edge.other() == end);
  }

  /** The bits that bore the roundings of openings. */
  private static List<String> holeBits(Step step, LengthFormat format) {
    return step.operations().stream()
        .flatMap(each -> Cut.only(Cut.Shaped.class, each.cuts()).stream())
        .filter(Cut.Shaped::inside)
        .map(Cut.Shaped::contour)
        .flatMap(contour -> contour.arcs().stream().map(contour::flat))
        .map(arc -> Length.nearest(2 * arc.radius()))
        .filter(bit -> !bit.isLongerThan(WIDEST_BIT))
        .distinct()
        .sorted()
        .map(format::formatWithUnit)
        .toList();
  }

  /** Whether an opening takes the fingers of a hand. */
  private static boolean isForHand(Operation operation) {
    return operation.cuts().stream()
        .filter(Cut.Shaped.class::isInstance)
        .map(Cut.Shaped.class::cast)
        .anyMatch(
            cut ->
                cut.inside()
                    && cut.contour().axes().stream()
                        .noneMatch(
                            axis -> cut.contour().extent(axis).length().isShorterThan(FINGERS)));
  }

  /** Whether the tails end inside the part that takes them. */
  private boolean isLapped(Dovetails row) {
    return row.forWhat()
        .map(name -> piece.part(name).box().size(row.wide().axis()))
        .filter(thick -> thick.isLongerThan(row.length()))
        .isPresent();
  }

  /** Whether upper edges are rounded, lower ones, or both: for these the work is turned over. */
  private static List<String> rounds(Step step) {
    List<Face> faces =
        step.operations().stream()
            .flatMap(operation -> Cut.only(Cut.Roundover.class, operation.cuts()).stream())
            .flatMap(cut -> cut.edges().stream())
            .flatMap(edge -> Stream.of(edge.one(), edge.other()))
            .toList();
    return Stream.of(Face.TOP, Face.BOTTOM).filter(faces::contains).map(Face::word).toList();
  }

  /** The faces that meet at each edge which slopes take off, if all parts lose the same edges. */
  private List<List<String>> edges(Step step) {
    List<List<List<String>>> all =
        step.operations().stream().map(CutData::edges).distinct().toList();
    return all.size() == 1 ? all.getFirst() : List.of();
  }

  private static List<List<String>> edges(Operation operation) {
    return Cut.only(Slanted.Slope.class, operation.cuts()).stream()
        .map(slope -> Stream.of(slope.from(), slope.towards()).map(Face::word).toList())
        .distinct()
        .toList();
  }

  private String angle(Cut cut) {
    return switch (cut) {
      case Slanted.Slope slope -> words().figures(slope.angle().toString());
      case Slanted.Housing housing -> words().figures(housing.lean().toString());
      case Cut.Trench trench -> "";
      case Cut.Tenon tenon -> "";
      case Comb comb -> "";
      case Cut.Holes holes -> "";
      case Cut.Shaped shaped -> "";
      case Cut.Roundover roundover -> "";
      case PocketHoles pockets -> pockets.angleDegrees() + "°";
      case Slots slots -> "";
      case Dovetails dovetails -> words().figures(dovetails.angle().toString());
      case SplineSlot slot -> "45°";
      case InPlace inPlace -> "";
    };
  }

  /** What goes into it: sheet, solid, or an item of hardware. */
  private String takes(Cut cut) {
    boolean isPart = cut.forWhat().stream().anyMatch(name -> part(name).isPresent());
    return !isPart
        ? "item"
        : cut.forWhat().flatMap(this::part).filter(Traits::isSheet).isPresent() ? "sheet" : "solid";
  }

  private Optional<Part> part(String name) {
    return piece.parts().stream().filter(part -> part.name().equals(name)).findFirst();
  }

  private boolean isForOne(Cut cut) {
    return piece.description().hardware().stream()
            .filter(entry -> cut.forWhat().filter(entry.item().value()::equals).isPresent())
            .mapToInt(entry -> entry.count())
            .sum()
        == 1;
  }

  /** Whether a cut ends before the edge of the part on one of its two ways. */
  private boolean stops(Operation operation) {
    Part part = piece.part(operation.target());
    return Cut.only(Cut.Trench.class, operation.cuts()).stream()
        .anyMatch(trench -> CutKind.isStopped(part, trench));
  }

  private String forTitle(Cut cut) {
    return cut.forWhat()
        .flatMap(item -> Optional.ofNullable(piece.description().items().get(item)))
        .map(item -> item.title())
        .orElse("");
  }

  private String forKind(Cut cut) {
    return cut.forWhat().flatMap(piece::item).map(item -> Words.hyphenated(item.kind())).orElse("");
  }

  private Words words() {
    return piece.description().words();
  }

  private String format(Length length) {
    return piece.description().printed().formatWithUnit(length);
  }
}
