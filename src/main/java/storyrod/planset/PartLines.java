package storyrod.planset;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FrontHoles;
import storyrod.build.Operation;
import storyrod.build.Pilots;
import storyrod.build.Verb;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The line under a part's title: how many there are, which of them are mirror images, and what of
 * the drawing is not made on the bench.
 */
final class PartLines {
  private final Piece piece;
  private final List<Step> steps;
  private final Texts texts;
  private final FrontHoles holes;
  private final Map<String, String> lines = new ConcurrentHashMap<>();

  PartLines(Piece piece, List<Step> steps, Texts texts) {
    this.piece = piece;
    this.steps = steps;
    this.texts = texts;
    this.holes = new FrontHoles(piece);
  }

  Texts texts() {
    return texts;
  }

  /** The line of a mark, put together when it is first asked for. */
  String of(Mark mark) {
    return lines.computeIfAbsent(mark.mark(), any -> line(mark));
  }

  private String line(Mark mark) {
    return Stream.concat(drilledLater(mark).stream(), pilotsLater(mark).stream())
        .reduce(counted(mark), (before, later) -> texts.say("part.also", before, later));
  }

  private String counted(Mark mark) {
    if (mark.mirrored() == 0) {
      return mark.same() == 1
          ? texts.say("part.one")
          : texts.say("part.same", Texts.capital(number(mark.same())));
    }
    return mark.same() == 1 && mark.mirrored() == 1
        ? texts.say("part.pair")
        : texts.say("part.handed", Texts.capital(number(mark.same())), number(mark.mirrored()));
  }

  private String number(int count) {
    String key = "number." + count;
    return texts.words().has(key) ? texts.say(key) : Integer.toString(count);
  }

  /** The holes that are drilled through those of a drawer's front, and in which step. */
  private Optional<String> drilledLater(Mark mark) {
    Part part = mark.shown();
    List<Cut.Holes> guided =
        part.cuts(Cut.Holes.class).stream()
            .filter(cut -> holes.guide(part, cut).isPresent())
            .toList();
    int count = guided.stream().mapToInt(Cut.Holes::count).sum();
    return guided.stream()
        .flatMap(cut -> holes.guide(part, cut).flatMap(front -> said(cut, front, count)).stream())
        .findFirst();
  }

  /** The pilot holes that are drilled through the other part, in the steps of all equal parts. */
  private Optional<String> pilotsLater(Mark mark) {
    String all =
        mark.parts().stream()
            .map(piece::part)
            .flatMap(part -> piece.joints().stream().flatMap(joint -> pilots(joint, part)))
            .distinct()
            .sorted(Comparator.comparingInt(Drilled::step))
            .map(this::at)
            .collect(Collectors.joining(", "));
    return Optional.of(all)
        .filter(said -> !said.isEmpty())
        .map(said -> texts.say("part.pilots-later", said));
  }

  /** A step that drills in place, and the mark of the part through which it drills. */
  private record Drilled(int step, String through) {}

  private Stream<Drilled> pilots(Joint joint, Part part) {
    List<Cut> pilots = Pilots.of(piece, joint).stream().filter(part.cuts()::contains).toList();
    return pilots.isEmpty() ? Stream.empty() : drilled(pilots, joint);
  }

  private Stream<Drilled> drilled(List<Cut> pilots, Joint joint) {
    return steps.stream()
        .filter(step -> step.verb() == Verb.FIT)
        .filter(step -> step.operations().stream().anyMatch(each -> drills(each, pilots, joint)))
        .flatMap(step -> joint.driven().stream().map(driven -> drilled(step, driven.part())));
  }

  private static boolean drills(Operation operation, List<Cut> pilots, Joint joint) {
    return operation.joints().contains(joint)
        && operation.cuts().stream().anyMatch(pilots::contains);
  }

  private Drilled drilled(Step step, String through) {
    return new Drilled(step.number(), piece.part(through).mark());
  }

  private String at(Drilled drilled) {
    return texts.say("part.pilots-at", Integer.toString(drilled.step()), drilled.through());
  }

  private Optional<String> said(Cut cut, Part front, int guided) {
    String handle = new FrontData(piece).kind(cut);
    return steps.stream()
        .filter(step -> step.verb() == Verb.FIT)
        .filter(step -> step.operations().stream().anyMatch(each -> each.cuts().contains(cut)))
        .map(
            step ->
                texts.say(
                    guided == 1 ? "part.drilled-later" : "part.drilled-later.many",
                    texts.say("kind." + handle),
                    front.mark(),
                    Integer.toString(step.number())))
        .findFirst();
  }
}
