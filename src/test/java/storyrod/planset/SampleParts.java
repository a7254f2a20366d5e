package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Mark;
import storyrod.piece.Part;

/** The marks and the joint of the sample. */
final class SampleParts {
  private SampleParts() {}

  static String markOf(int index) {
    return index < 26 ? String.valueOf((char) ('A' + index)) : "A" + (char) ('A' + index - 26);
  }

  static List<Mark> marks(List<Part> parts) {
    Map<String, List<Part>> byMark = new LinkedHashMap<>();
    parts.forEach(part -> byMark.computeIfAbsent(part.mark(), key -> new ArrayList<>()).add(part));
    return byMark.entrySet().stream()
        .map(
            entry -> {
              List<Part> same = entry.getValue();
              int mirrored = (int) same.stream().filter(Part::mirrored).count();
              return new Mark(
                  entry.getKey(),
                  same.getFirst().title(),
                  same.getFirst(),
                  same.size() - mirrored,
                  mirrored,
                  same.stream().map(Part::name).toList());
            })
        .toList();
  }

  static Joint joint(List<Part> parts) {
    Box contact = parts.get(2).box().with(Axis.X, new Range(Sample.BOARD, Sample.BOARD));
    return new Joint(
        "dado",
        "bottom",
        Face.LEFT,
        "left-side",
        Face.LEFT,
        contact,
        true,
        true,
        List.of(new ItemCount("screw", 6)),
        Optional.empty(),
        Sample.AT);
  }
}
