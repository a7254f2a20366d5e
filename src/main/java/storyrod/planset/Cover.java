package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.Instruments;
import storyrod.build.Schedule;
import storyrod.description.About;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What the cover says; what the maker did not give is an empty text.
 *
 * @param figures sizes, weight and times
 * @param facts the joints and the main machines; none in a preview, which has a page of them
 */
public record Cover(
    String name,
    String maker,
    String summary,
    String edition,
    String date,
    List<Figure> figures,
    List<Figure> facts,
    DrawingBox drawing) {
  static final String DRAWING = "cover";

  /** The pound avoirdupois is 0.45359237 kg exactly (international agreement of 1959). */
  private static final double KG_PER_POUND = 0.45359237;

  /** The tools that stand on a bench or on the floor, or that much of the work is done with. */
  private static final List<String> MACHINES =
      List.of(
          "jointer",
          "planer",
          "table-saw",
          "track-saw",
          "bandsaw",
          "band-saw",
          "router",
          "router-table",
          "plunge-router",
          "drill-press",
          "biscuit-joiner",
          "jigsaw",
          "laser-cutter",
          "spray-gun");

  private static final double DRAWING_SHARE = 0.72;

  public Cover {
    figures = List.copyOf(figures);
    facts = List.copyOf(facts);
  }

  /** A number that matters, with what it means. */
  public record Figure(String label, String value) {}

  static Cover of(PlanSet set, Print print) {
    Texts texts = print.texts();
    Paper paper = print.paper();
    About about = set.piece().description().about();
    return new Cover(
        about.project().value(),
        about.maker().orElse(""),
        about.summary().orElse(""),
        about.edition().orElse(""),
        about.date().map(Object::toString).orElse(""),
        figures(set, print),
        facts(set, print),
        DrawingBox.within(
            DRAWING,
            set.drawings().cover(),
            paper.textWidthMm(),
            paper.textHeightMm() * DRAWING_SHARE));
  }

  private static List<Figure> figures(PlanSet set, Print print) {
    Texts texts = print.texts();
    List<Figure> figures = new ArrayList<>();
    if (!print.edition().is(Edition.PREVIEW)) {
      figures.add(new Figure(texts.say("cover.size"), size(set.piece(), texts)));
    }
    Optional<Double> massKg = set.figures().massKg();
    massKg.ifPresent(kg -> figures.add(new Figure(texts.say("cover.weight"), weight(kg, texts))));
    if (massKg.isEmpty()) {
      figures.add(
          new Figure(texts.say("cover.parts"), Integer.toString(set.piece().wood().size())));
    }
    Schedule schedule = set.schedule();
    figures.add(new Figure(texts.say("cover.work"), work(schedule.workMinutes(), texts)));
    figures.add(new Figure(texts.say("cover.days"), TimelinePages.days(schedule.days(), texts)));
    return figures;
  }

  private static List<Figure> facts(PlanSet set, Print print) {
    Texts texts = print.texts();
    String joints =
        Preview.skills(set.piece().joints(), texts).stream().collect(Collectors.joining(", "));
    List<String> tools =
        set.build().steps().stream()
            .flatMap(step -> step.tools().stream())
            .distinct()
            .filter(MACHINES::contains)
            .toList();
    String machines =
        tools.stream()
            .filter(tool -> !isDoneByAnother(tool, tools))
            .map(tool -> texts.say("tool." + tool))
            .collect(Collectors.joining("; "));
    return Stream.of(
            new Figure(texts.say("cover.skills"), Texts.capital(joints)),
            new Figure(texts.say("cover.machines"), Texts.capital(machines)))
        .filter(fact -> !fact.value().isEmpty() && !print.edition().is(Edition.PREVIEW))
        .toList();
  }

  /** Whether it stands for several of which one is among the tools anyway. */
  private static boolean isDoneByAnother(String tool, List<String> tools) {
    return new Instruments()
        .anyOf(tool).stream().anyMatch(any -> !any.equals(tool) && tools.contains(any));
  }

  private static String size(Piece piece, Texts texts) {
    return texts.inUnits(
        in ->
            in.say(
                "size.three",
                in.length(extent(piece, Axis.X)),
                in.length(extent(piece, Axis.Y)),
                in.lengthWithUnit(extent(piece, Axis.Z))));
  }

  private static Length extent(Piece piece, Axis axis) {
    Function<Part, Range> range = part -> part.bounds().on(axis);
    List<Range> ranges = piece.parts().stream().map(range).toList();
    Length to = ranges.stream().map(Range::to).reduce(Length::max).orElse(Length.ZERO);
    Length from = ranges.stream().map(Range::from).reduce(Length::min).orElse(Length.ZERO);
    return to.minus(from);
  }

  /** A weight in the unit of the trade. */
  static String weight(double kg, Texts texts) {
    LengthFormat format = texts.format();
    String main = weight(kg, format.unit(), texts);
    return format.isDual()
        ? texts.say("weight.both", main, weight(kg, format.other().unit(), texts))
        : main;
  }

  private static String weight(double kg, Unit unit, Texts texts) {
    return unit == Unit.INCH
        ? texts.say("weight.pounds", texts.words().figures(round(kg / KG_PER_POUND)))
        : texts.say("weight.kilograms", texts.words().figures(round(kg)));
  }

  private static String round(double value) {
    return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
  }

  private static String work(int minutes, Texts texts) {
    return minutes < 120
        ? texts.duration(minutes)
        : texts.say("time.hours", Math.round(minutes / 60.0));
  }
}
