package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FrontHoles;
import storyrod.build.PreFinished;
import storyrod.build.Trials;
import storyrod.build.Verb;
import storyrod.description.ItemEntry;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What no finish may get on: where glue has to hold later, hardware that is on already, and holes
 * for what is put in later.
 */
final class Masks {
  private final Piece piece;
  private final List<Step> steps;
  private final Texts texts;
  private final int finished;

  Masks(Piece piece, List<Step> steps, Texts texts) {
    this.piece = piece;
    this.steps = steps;
    this.texts = texts;
    this.finished =
        IntStream.range(0, steps.size())
            .filter(at -> steps.get(at).verb() == Verb.FINISH)
            .findFirst()
            .orElse(steps.size());
  }

  /** Marks of parts and what of them is masked. */
  public record Mask(String on, String what) {}

  List<Mask> all() {
    return Stream.concat(standing().stream(), sliding().stream()).toList();
  }

  /** All but what slides, of which the step that finishes the piece tells itself. */
  List<Mask> standing() {
    return Stream.of(early(), later(), mounted(), holes()).flatMap(List::stream).toList();
  }

  /** Edges that run in grooves, and these grooves: a coat there takes of the room to slide. */
  private List<Mask> sliding() {
    List<String> running =
        piece.joints().stream().filter(Joint::slides).map(Joint::first).distinct().toList();
    if (running.isEmpty()) {
      return List.of();
    }
    String grooved = marks(new Trials(piece).runsIn(running).stream());
    return List.of(
        new Mask(marks(running.stream()), texts.say("finish.mask.edges", grooved)),
        new Mask(grooved, texts.say("finish.mask.grooves", marks(running.stream()))));
  }

  /** Where glue has to hold on faces that are finished before they are built in. */
  private List<Mask> early() {
    PreFinished early = new PreFinished(piece);
    Map<List<String>, Set<String>> places = new LinkedHashMap<>();
    for (String part : early.parts()) {
      Map<String, Long> counts =
          early.masked(part).stream()
              .collect(
                  Collectors.groupingBy(
                      joint -> other(joint, part) + "\n" + size(joint),
                      LinkedHashMap::new,
                      Collectors.counting()));
      counts.forEach((place, count) -> add(places, part, place + "\n" + count));
    }
    return joined(places, "finish.mask.joint");
  }

  /** Where parts are glued together when they are finished. */
  private List<Mask> later() {
    Map<List<String>, Set<String>> places = new LinkedHashMap<>();
    steps.stream()
        .skip(finished + 1L)
        .filter(step -> step.verb() == Verb.FIT)
        .flatMap(step -> step.operations().stream())
        .flatMap(operation -> operation.joints().stream())
        .filter(Joint::glued)
        .forEach(
            joint ->
                Stream.of(joint.first(), joint.second())
                    .forEach(
                        part ->
                            add(places, part, other(joint, part) + "\n" + size(joint) + "\n1")));
    return joined(places, "finish.mask.later");
  }

  private void add(Map<List<String>, Set<String>> places, String part, String place) {
    List<String> key = new ArrayList<>(List.of(place.split("\n")));
    places.computeIfAbsent(key, each -> new LinkedHashSet<>()).add(piece.part(part).mark());
  }

  private List<Mask> joined(Map<List<String>, Set<String>> places, String words) {
    return places.entrySet().stream()
        .map(
            each ->
                new Mask(
                    String.join(", ", each.getValue()),
                    texts.say(
                        words, each.getKey().get(2), each.getKey().get(0), each.getKey().get(1))))
        .toList();
  }

  private String other(Joint joint, String part) {
    return piece.part(joint.first().equals(part) ? joint.second() : joint.first()).mark();
  }

  private String size(Joint joint) {
    return PreFinishData.contact(joint, texts.format());
  }

  /** Hardware that is on when the finish begins; what was tried is off again. */
  private List<Mask> mounted() {
    return steps.stream()
        .limit(finished)
        .filter(step -> step.verb() == Verb.MOUNT)
        .flatMap(
            step ->
                step.hardware().stream()
                    .map(
                        item ->
                            new Mask(
                                marks(step.operations().stream().flatMap(o -> o.parts().stream())),
                                texts.say(
                                    "finish.mask.hardware", title(item.item()), step.number()))))
        .distinct()
        .toList();
  }

  /** Holes that are bored before the finish and take an item after it. */
  private List<Mask> holes() {
    Set<String> items =
        steps.stream()
            .skip(finished + 1L)
            .filter(step -> step.verb() == Verb.MOUNT)
            .flatMap(step -> step.hardware().stream())
            .map(Joint.ItemCount::item)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return items.stream()
        .filter(item -> !bored(item).isEmpty())
        .map(
            item ->
                new Mask(marks(bored(item).stream()), texts.say("finish.mask.holes", title(item))))
        .toList();
  }

  private List<String> bored(String item) {
    FrontHoles fronts = new FrontHoles(piece);
    return piece.parts().stream()
        .filter(
            part ->
                part.cuts(Cut.Holes.class).stream()
                    .filter(holes -> holes.forWhat().filter(item::equals).isPresent())
                    .anyMatch(holes -> fronts.guide(part, holes).map(this::isFixed).orElse(true)))
        .map(Part::name)
        .toList();
  }

  /** Whether a front is on its box when the finish begins: its holes go on through that by then. */
  private boolean isFixed(Part front) {
    return steps.stream()
        .limit(finished)
        .anyMatch(step -> step.verb() == Verb.FIT && step.newParts().contains(front.name()));
  }

  private String title(String item) {
    return piece.item(item).map(ItemEntry::title).orElse(item);
  }

  private String marks(Stream<String> parts) {
    return parts.map(name -> piece.part(name).mark()).distinct().collect(Collectors.joining(", "));
  }
}
