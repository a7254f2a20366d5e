package storyrod.planset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FaceMarks;
import storyrod.build.ShowFaces;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Likeness;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The values of a step that marks parts: faces, edges and pairs. */
record MarkingData(Piece piece, PartPhrases phrases, FaceMarks faces) {
  /**
   * Where a face mark goes.
   *
   * @param word of the face, or why either will do
   * @param setOut whether it is not seen, but joints are set out from it
   */
  private record Way(String word, boolean setOut) {
    static final Comparator<Way> IN_ORDER =
        Comparator.comparing(Way::word).thenComparing(Way::setOut);
  }

  MarkingData(Piece piece, PartPhrases phrases) {
    this(piece, phrases, new FaceMarks(new ShowFaces(piece)));
  }

  Map<String, Object> of(Step step) {
    List<String> names = step.targets();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("facing", facing(names.stream().filter(name -> !isTurned(name)).toList()));
    data.put("facingDrawn", asDrawn(names.stream().filter(this::isTurned).toList()));
    data.put("handed", handed(names));
    data.put("laidOut", laidOut(names));
    data.put("fromFaceMark", fromFaceMark(names));
    data.put("fromOtherFace", fromOtherFace(names));
    data.put(
        "several", phrases.marks(names).stream().anyMatch(each -> (int) each.get("count") > 1));
    return data;
  }

  /** Parts by the way in which their face side looks, or the word for why it looks to none. */
  private List<Map<String, Object>> facing(List<String> names) {
    Map<Way, List<String>> byFace = new TreeMap<>(Way.IN_ORDER);
    names.forEach(
        name -> byFace.computeIfAbsent(way(piece.part(name)), way -> new ArrayList<>()).add(name));
    return byFace.entrySet().stream()
        .map(each -> facing(each.getKey(), each.getValue(), names))
        .toList();
  }

  /** Parts that share a mark with others which look another way go by their places. */
  private Map<String, Object> facing(Way way, List<String> some, List<String> all) {
    Set<String> elsewhere =
        all.stream()
            .filter(name -> !some.contains(name))
            .map(name -> piece.part(name).mark())
            .collect(Collectors.toSet());
    Map<Boolean, List<String>> apart =
        some.stream()
            .collect(
                Collectors.partitioningBy(name -> elsewhere.contains(piece.part(name).mark())));
    return Map.of(
        "way", way.word(),
        "setOut", way.setOut(),
        "marks", phrases.marks(apart.get(false)),
        "onSide", phrases.marks(apart.get(true).stream().filter(this::liesAsItLooks).toList()),
        "parts",
            apart.get(true).stream()
                .filter(name -> !liesAsItLooks(name))
                .map(name -> phrases.part(piece.part(name)))
                .toList());
  }

  /** Whether no part of its mark that looks another way lies as far where it looks. */
  private boolean liesAsItLooks(String name) {
    Part part = piece.part(name);
    Optional<Face> face = seen(part);
    return face.isPresent()
        && piece.mark(part.mark()).parts().stream()
            .map(piece::part)
            .filter(other -> !seen(other).equals(face))
            .allMatch(other -> isBefore(other, part, face.get()));
  }

  private static boolean isBefore(Part one, Part other, Face face) {
    Range first = one.bounds().on(face.axis());
    Range second = other.bounds().on(face.axis());
    Length way = second.from().plus(second.to()).minus(first.from().plus(first.to()));
    return way.times(face.sign()).isPositive();
  }

  /** Whether parts of its mark stand turned, so that what is seen of one is not what is of all. */
  private boolean isTurned(String name) {
    Mark mark = piece.mark(piece.part(name).mark());
    return seen(mark.shown())
        .filter(
            face ->
                !mark.parts().stream()
                    .map(piece::part)
                    .allMatch(other -> isMarkedLike(mark.shown(), face, other)))
        .isPresent();
  }

  private boolean isMarkedLike(Part shown, Face face, Part other) {
    return seen(other).filter(seen -> !Likeness.areMarkedAlike(shown, face, other, seen)).isEmpty();
  }

  /** Marks by the face that bears the face mark as their drawings name it. */
  private List<Map<String, Object>> asDrawn(List<String> names) {
    Map<String, List<String>> byFace = new TreeMap<>();
    names.forEach(
        name ->
            seen(piece.mark(piece.part(name).mark()).shown())
                .ifPresent(
                    face ->
                        byFace.computeIfAbsent(face.word(), each -> new ArrayList<>()).add(name)));
    return byFace.entrySet().stream()
        .<Map<String, Object>>map(
            each -> Map.of("face", each.getKey(), "marks", phrases.marks(each.getValue())))
        .toList();
  }

  private Way way(Part part) {
    String either = faces.shows().looksBothWays(part) ? "inside" : "hidden";
    return seen(part)
        .map(face -> new Way(face.word(), false))
        .or(() -> FaceMarks.setOut(part).map(face -> new Way(face.word(), true)))
        .orElse(new Way(either, false));
  }

  private Optional<Face> seen(Part part) {
    return faces.shows().of(part);
  }

  /** The marks of parts whose joints are set out from a face that is marked because it is seen. */
  private List<String> fromFaceMark(List<String> names) {
    return shown(names)
        .filter(part -> seen(part).isPresent())
        .filter(faces::areSetOutFromIt)
        .map(Part::mark)
        .toList();
  }

  /** Marks by the broad face from which joints are set out though the other one is marked. */
  private List<Map<String, Object>> fromOtherFace(List<String> names) {
    Map<String, List<String>> byFace = new TreeMap<>();
    shown(names)
        .filter(part -> !faces.areSetOutFromIt(part))
        .forEach(
            part ->
                FaceMarks.setOut(part)
                    .ifPresent(
                        face ->
                            byFace
                                .computeIfAbsent(face.word(), each -> new ArrayList<>())
                                .add(part.mark())));
    return byFace.entrySet().stream()
        .<Map<String, Object>>map(each -> Map.of("face", each.getKey(), "marks", each.getValue()))
        .toList();
  }

  /** Of each mark the part that its drawing shows. */
  private Stream<Part> shown(List<String> names) {
    return piece.marks().stream().map(Mark::shown).filter(part -> names.contains(part.name()));
  }

  /** Marks of which some parts are mirror images of the others, with how many are which. */
  private List<Map<String, Object>> handed(List<String> names) {
    return piece.marks().stream()
        .filter(mark -> mark.mirrored() > 0 && names.containsAll(mark.parts()))
        .<Map<String, Object>>map(
            mark -> Map.of("mark", mark.mark(), "same", mark.same(), "mirrored", mark.mirrored()))
        .toList();
  }

  /** Marks by the sides, but for broad faces, from which joints are set out. */
  private List<Map<String, Object>> laidOut(List<String> names) {
    Map<List<Map<String, String>>, List<String>> byEdges = new LinkedHashMap<>();
    shown(names)
        .forEach(
            part -> {
              List<Map<String, String>> edges = edges(part);
              if (!edges.isEmpty()) {
                byEdges.computeIfAbsent(edges, each -> new ArrayList<>()).add(part.mark());
              }
            });
    return byEdges.entrySet().stream()
        .<Map<String, Object>>map(each -> Map.of("edges", each.getKey(), "marks", each.getValue()))
        .toList();
  }

  private static List<Map<String, String>> edges(Part part) {
    Optional<Face> broad = FaceMarks.setOut(part);
    return FaceMarks.edges(part).stream()
        .filter(face -> broad.filter(face::equals).isEmpty())
        .map(face -> Map.of("face", face.word(), "side", FenceData.side(part, face)))
        .toList();
  }
}
