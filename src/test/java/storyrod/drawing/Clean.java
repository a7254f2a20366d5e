package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.RunningDimension;
import storyrod.drawing.Drawing.Text;

/** Finds what a reader would call unclean in a drawing; an empty list is a clean one. */
final class Clean {
  private Clean() {}

  static List<String> faults(Drawing drawing) {
    List<String> faults = new ArrayList<>(textFaults(drawing));
    List<PlacedText> texts = Painter.texts(drawing);
    for (Paper.Stretch line : lines(drawing)) {
      for (PlacedText text : texts) {
        if (text.meets(line.from(), line.to())) {
          faults.add("'" + text.text() + "' lies on a line " + line);
        }
      }
    }
    faults.addAll(linesOutside(drawing));
    return faults;
  }

  static List<String> linesOutside(Drawing drawing) {
    return lines(drawing).stream()
        .filter(line -> outside(drawing, line.from()) || outside(drawing, line.to()))
        .map(line -> "outside: " + line)
        .toList();
  }

  static List<String> textFaults(Drawing drawing) {
    List<String> faults = new ArrayList<>();
    List<PlacedText> texts = Painter.texts(drawing);
    faults.addAll(smallFigures(drawing));
    for (int i = 0; i < texts.size(); i++) {
      PlacedText text = texts.get(i);
      if (text.sizeMm() < 2.5) {
        faults.add("too small: " + text);
      }
      if (outside(drawing, new Drawing.At(text.left(), text.top()))
          || outside(drawing, new Drawing.At(text.right(), text.bottom()))) {
        faults.add("outside: " + text);
      }
      for (PlacedText other : texts.subList(i + 1, texts.size())) {
        if (text.overlaps(other)) {
          faults.add("'" + text.text() + "' lies on '" + other.text() + "'");
        }
      }
    }
    return faults;
  }

  /** The figures of fractions are smaller than the text they stand in, but not too small. */
  private static List<String> smallFigures(Drawing drawing) {
    return drawing.elements().stream()
        .flatMap(element -> Lowering.simple(element).stream())
        .filter(Text.class::isInstance)
        .map(Text.class::cast)
        .flatMap(text -> TextSetting.of(text.style(), text.text()).stretches().stream())
        .filter(stretch -> stretch.size() < 2.5)
        .map(stretch -> "too small: " + stretch)
        .toList();
  }

  private static boolean outside(Drawing drawing, Drawing.At at) {
    return at.x() < 0 || at.y() < 0 || at.x() > drawing.widthMm() || at.y() > drawing.heightMm();
  }

  static List<Paper.Stretch> lines(Drawing drawing) {
    return drawing.elements().stream()
        .flatMap(element -> Lowering.simple(element).stream())
        .filter(element -> !(element instanceof Text))
        .flatMap(element -> Paper.stretches(element).stream())
        .toList();
  }

  static List<Element> flat(List<Element> elements) {
    List<Element> flat = new ArrayList<>();
    for (Element element : elements) {
      if (element instanceof Group group) {
        flat.addAll(flat(group.elements()));
      } else {
        flat.add(element);
      }
    }
    return flat;
  }

  /** The enlarged details of a part's drawing. */
  static Stream<Group> details(Drawing drawing) {
    return drawing.elements().stream()
        .flatMap(each -> each instanceof Group part ? part.elements().stream() : Stream.empty())
        .flatMap(each -> each instanceof Group detail ? Stream.of(detail) : Stream.empty());
  }

  /** What a detail's title calls it: {@code Detail B1, 1:2}. */
  static String detailName(Group detail) {
    return detail.name().replaceFirst("^Detail (.*), .*", "$1");
  }

  /** The scale in a detail's title: {@code Detail B1, 1:2}. */
  static double detailFactor(Group detail) {
    String[] scale = detail.name().replaceFirst(".*, ", "").split(":");
    return Double.parseDouble(scale[0]) / Double.parseDouble(scale[1]);
  }

  static List<Dimension> dimensions(Drawing drawing) {
    return dimensions(drawing.elements());
  }

  static List<Dimension> dimensions(List<Element> elements) {
    return flat(elements).stream()
        .filter(Dimension.class::isInstance)
        .map(Dimension.class::cast)
        .toList();
  }

  static List<RunningDimension> running(Drawing drawing) {
    return flat(drawing.elements()).stream()
        .filter(RunningDimension.class::isInstance)
        .map(RunningDimension.class::cast)
        .toList();
  }

  static String notes(Drawing drawing) {
    StringBuilder said = new StringBuilder();
    for (Element element : flat(drawing.elements())) {
      if (element instanceof Drawing.Note note) {
        said.append(String.join(" ", note.lines())).append('\n');
      }
    }
    return said.toString();
  }
}
