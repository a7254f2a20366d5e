package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.MountHoles;
import storyrod.build.Operation;
import storyrod.build.Slides;
import storyrod.build.Slides.Row;
import storyrod.build.Verb;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The values of a step that sets slides out: heights for each drawer, and where their ends lie. */
record SlideData(Piece piece, PartPhrases phrases) {
  /** What two slides of a drawer have to share to be told in one sentence. */
  private record Height(
      Optional<String> drawer, Optional<String> floor, Length side, Length wall) {}

  /** How the front end of a case member lies. */
  private record End(String front, Length behind, boolean seam) {}

  /** Lines by drawer and height, and the ends of the members by what they are measured from. */
  Map<String, Object> of(Step step) {
    List<Row> drilled = step.operations().stream().flatMap(this::drilled).distinct().toList();
    List<Row> rows = drilled.isEmpty() ? Slides.setOutIn(piece, step) : drilled;
    return Map.of(
        "slideLines", grouped(rows, this::height).stream().map(this::line).toList(),
        "slideEnds", grouped(rows, this::end).stream().map(this::end).toList());
  }

  private Stream<Row> drilled(Operation operation) {
    return operation.cuts().stream()
        .filter(cut -> operation.verb() == Verb.DRILL)
        .flatMap(
            cut -> new MountHoles(piece).onBench(piece.part(operation.target()), cut).stream());
  }

  private static <K> List<List<Row>> grouped(List<Row> rows, Function<Row, K> key) {
    return new ArrayList<>(
        rows.stream()
            .collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()))
            .values());
  }

  private Height height(Row row) {
    return new Height(
        Nesting.of(piece).looseUnit(row.side().name()),
        row.floor().map(Part::name),
        row.onSide(),
        row.onWall());
  }

  private End end(Row row) {
    return new End(row.front().mark(), row.behind(), row.seam());
  }

  private Map<String, Object> line(List<Row> rows) {
    Row first = rows.getFirst();
    return Map.of(
        "drawer", drawers(rows),
        "sides", parts(rows, Row::side),
        "walls", parts(rows, Row::wall),
        "floor", phrases.parts(first.floor().map(Part::name).stream().toList()),
        "onSide", format(first.onSide()),
        "onWall", format(first.onWall()));
  }

  private Map<String, Object> end(List<Row> rows) {
    Row first = rows.getFirst();
    int sign = Integer.signum(first.behind().compareTo(Length.ZERO));
    return Map.of(
        "drawers", drawers(rows),
        "walls", parts(rows, Row::wall),
        "fronts", parts(rows, Row::front),
        "covered", !first.front().equals(first.wall()),
        "seam", first.seam(),
        "sign", sign,
        "behind", format(first.behind().abs()));
  }

  private List<Map<String, Object>> drawers(List<Row> rows) {
    Nesting nesting = Nesting.of(piece);
    return phrases.assemblies(
        rows.stream()
            .flatMap(row -> nesting.looseUnit(row.side().name()).stream())
            .distinct()
            .toList());
  }

  private List<Map<String, Object>> parts(List<Row> rows, Function<Row, Part> which) {
    return phrases.parts(rows.stream().map(which).map(Part::name).distinct().toList());
  }

  private String format(Length length) {
    return piece.description().printed().formatWithUnit(length);
  }
}
