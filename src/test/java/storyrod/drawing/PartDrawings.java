package storyrod.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.function.ThrowingConsumer;
import storyrod.measure.LengthFormat;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The drawings of all parts of some pieces, on which what holds for every drawing is tried. */
final class PartDrawings {
  static final Size AREA = WindowBench.PART_AREA;
  private static final Map<String, Sample> SAMPLES = samples();

  private PartDrawings() {}

  /** A part with its drawing. */
  record Sample(Piece piece, Mark mark, Drawing drawing) {
    LengthFormat format() {
      return piece.description().format();
    }

    Part part() {
      return mark.shown();
    }
  }

  private static Map<String, Sample> samples() {
    Map<String, Sample> samples = new LinkedHashMap<>();
    for (Piece piece : List.of(BenchParts.inInches(), BenchParts.inMillimetres())) {
      String unit = piece.description().format().unit().word();
      piece.marks().forEach(mark -> samples.put(mark.title() + " in " + unit, sample(piece, mark)));
    }
    Piece bench = WindowBench.piece();
    bench.marks().forEach(mark -> samples.put("window bench " + mark.mark(), sample(bench, mark)));
    for (String project : List.of("side-table", "panel-door")) {
      Piece piece = TenonDrawingTest.piece(project);
      piece.marks().forEach(mark -> samples.put(project + " " + mark.mark(), sample(piece, mark)));
    }
    Piece haunched = HaunchDrawingTest.piece();
    haunched
        .marks()
        .forEach(mark -> samples.put("haunched " + mark.mark(), sample(haunched, mark)));
    return samples;
  }

  private static Sample sample(Piece piece, Mark mark) {
    return new Sample(piece, mark, PartDrawing.draw(mark, piece, AREA));
  }

  /** One test for each drawing. */
  static List<DynamicTest> each(ThrowingConsumer<Sample> test) {
    return SAMPLES.entrySet().stream()
        .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> test.accept(entry.getValue())))
        .toList();
  }

  static Sample named(String name) {
    return SAMPLES.get(name);
  }
}
