package storyrod.planset;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.PreFinished;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** What is finished before it is built in: which faces, and what of them is masked for the glue. */
final class PreFinishData {
  private final Piece piece;
  private final PartPhrases phrases;
  private final PreFinished early;

  PreFinishData(Piece piece, PartPhrases phrases) {
    this.piece = piece;
    this.phrases = phrases;
    this.early = new PreFinished(piece);
  }

  boolean isPanel(String part) {
    return early.isPanel(part);
  }

  /** What a step finishes early. */
  Map<String, Object> of(Step step) {
    Map<String, Object> data = new LinkedHashMap<>(finished(step.targets()));
    data.put("masks", masks(step.targets()));
    return data;
  }

  /** What of the whole piece is finished early. */
  Map<String, Object> all() {
    return finished(early.parts());
  }

  private Map<String, Object> finished(Collection<String> parts) {
    return Map.of(
        "earlyPanels", phrases.marks(parts.stream().filter(early::isPanel).toList()),
        "earlyOneFace", phrases.marks(insides(parts, 1)),
        "earlyBothFaces", phrases.marks(insides(parts, 2)));
  }

  private List<String> insides(Collection<String> parts, int faces) {
    return parts.stream()
        .filter(part -> !early.isPanel(part) && early.faces(part).size() == faces)
        .toList();
  }

  /**
   * A place that is masked.
   *
   * @param term the cut that takes the other part in; empty where that lies on the face
   */
  private record Mask(String term, String mark, String size) {}

  /** What is masked on parts, those with the same places together. */
  private List<Map<String, Object>> masks(List<String> parts) {
    Map<String, List<String>> alike =
        parts.stream()
            .filter(part -> !early.masked(part).isEmpty())
            .collect(
                Collectors.groupingBy(
                    part -> piece.part(part).mark() + masksOn(part),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return alike.values().stream()
        .map(
            same ->
                Map.<String, Object>of("on", phrases.marks(same), "at", masksOn(same.getFirst())))
        .toList();
  }

  private List<Map<String, Object>> masksOn(String part) {
    Map<Mask, Long> counts =
        early.masked(part).stream()
            .map(joint -> mask(part, joint))
            .collect(Collectors.groupingBy(m -> m, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .map(
            entry ->
                Map.<String, Object>of(
                    "term", entry.getKey().term(),
                    "mark", entry.getKey().mark(),
                    "size", entry.getKey().size(),
                    "count", entry.getValue()))
        .toList();
  }

  private Mask mask(String part, Joint joint) {
    String other = joint.first().equals(part) ? joint.second() : joint.first();
    String term =
        piece.part(part).cuts().stream()
            .filter(Cut::takesIn)
            .filter(cut -> cut.isFor(other))
            .map(Cut::term)
            .findFirst()
            .orElse("");
    return new Mask(term, piece.part(other).mark(), contact(joint, piece.description().printed()));
  }

  /** The two sizes of a joint's contact, the smaller first. */
  static String contact(Joint joint, LengthFormat format) {
    List<Length> sizes =
        Arrays.stream(Axis.values())
            .filter(axis -> axis != joint.firstFace().axis())
            .map(axis -> joint.contact().size(axis))
            .sorted()
            .toList();
    return format.format(sizes.getFirst()) + " × " + format.formatWithUnit(sizes.getLast());
  }
}
