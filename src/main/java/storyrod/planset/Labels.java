package storyrod.planset;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.ShowFaces;
import storyrod.description.StockEntry;
import storyrod.piece.Mark;
import storyrod.piece.Part;

/** A label for each piece of wood, in the order of the marks: which it is, and where it goes. */
public record Labels(List<Label> all) {
  public Labels {
    all = List.copyOf(all);
  }

  /** The labels of the parts that are chosen. */
  Labels only(Chosen chosen) {
    return new Labels(all.stream().filter(label -> chosen.marks().contains(label.mark())).toList());
  }

  /**
   * What tells one piece of wood from all others.
   *
   * @param number which of its mark, from 1; those as shown before their mirror images
   * @param of how many pieces its mark has
   * @param hand that it is a mirror image, or empty
   * @param sizes the same in one text, as a label shows them
   * @param grain its direction in words
   * @param grained whether it has a direction
   * @param showFace the way in which its better face looks when the piece stands, or empty where
   *     neither is seen
   * @param step the number of the step in which it first comes to its place, or empty
   */
  public record Label(
      String mark,
      int number,
      int of,
      String name,
      String hand,
      CutList.Sizes size,
      String sizes,
      String stock,
      String grain,
      boolean grained,
      String showFace,
      String step) {}

  static Labels of(PlanSet set, Texts texts) {
    Writer writer = new Writer(set, texts, new ShowFaces(set.piece()));
    return new Labels(set.piece().marks().stream().flatMap(writer::labels).toList());
  }

  private record Writer(PlanSet set, Texts texts, ShowFaces faces) {
    Stream<Label> labels(Mark mark) {
      return IntStream.range(0, mark.count()).mapToObj(index -> label(mark, index));
    }

    private Label label(Mark mark, int index) {
      Part part = set.piece().part(mark.parts().get(index));
      StockEntry stock = part.stock();
      return new Label(
          mark.mark(),
          index + 1,
          mark.count(),
          mark.title(),
          index < mark.same() ? "" : texts.say("label.mirrored"),
          CutList.finished(part, texts),
          texts.inUnits(in -> sizes(part, in)),
          texts.stock(stock),
          CutList.grain(stock, texts),
          CutList.hasGrain(stock),
          Optional.of(part)
              .filter(each -> !set.piece().isMade(each))
              .flatMap(faces::of)
              .map(face -> texts.say("label.face." + face.word()))
              .orElse(""),
          step(part));
    }

    private static String sizes(Part part, Texts texts) {
      CutList.Sizes size = CutList.finished(part, texts);
      return texts.say("size.three", size.length(), size.width(), size.thickness());
    }

    private boolean isPutIn(Part part, Step step) {
      return step.hardware().stream()
          .flatMap(each -> set.piece().made(each.item()).stream())
          .anyMatch(made -> made.names().contains(part.name()));
    }

    private String step(Part part) {
      return set.build().steps().stream()
          .filter(step -> step.newParts().contains(part.name()) || isPutIn(part, step))
          .map(Step::number)
          .findFirst()
          .map(String::valueOf)
          .orElse("");
    }
  }
}
