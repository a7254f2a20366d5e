package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Guides;
import storyrod.drawing.AllProjects;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.words.Words;

/** A distance reads in a step, in its list of settings and on a part's drawing as one and same. */
class SamePlaceTest {
  /** Figures alone: no total of a row, no auxiliary size, no step of a chain. */
  private static final Pattern FIGURES = Pattern.compile("(?:≈ )?\\d[\\d /.]*");

  @TestFactory
  List<DynamicTest> aStepTellsADistanceAsThePartsDrawing() {
    return AllProjects.each(
        sample -> {
          PlanSet set = sample.set();
          List<String> others = new ArrayList<>();
          set.build().steps().forEach(step -> others.addAll(others(set, step)));
          assertEquals(List.of(), others);
        });
  }

  /** 4 3/64 in the drawing of a divider was 4 1/16 beside its saw line. */
  @Test
  void placesOnA64thAreComparedAtAll() {
    PlanSet set = AllProjects.named("sewing-box");
    List<String> told =
        set.build().steps().stream().flatMap(step -> places(set, step).stream()).toList();
    assertTrue(told.contains("4 3/64 in"), told.toString());
    assertTrue(figures(set, "N").containsValue("4 3/64"), figures(set, "N").toString());
  }

  /** What a step tells otherwise than the drawing of the part, or in its sentences. */
  private static List<String> others(PlanSet set, Step step) {
    LengthFormat format = set.piece().description().printed();
    StepText text = text(set, step);
    List<String> others = new ArrayList<>();
    for (Setting setting : places(step)) {
      String mark = set.piece().part(setting.part().orElseThrow()).mark();
      String told = new SettingWords(set.piece(), Words.ENGLISH).text(setting).value();
      String drawn = figures(set, mark).get(setting.value());
      if (drawn != null && !withoutUnit(told).equals(drawn)) {
        others.add(step.number() + " " + mark + " " + told + ", drawn " + drawn);
      }
      String rounded = format.formatWithUnit(setting.value());
      Stream<String> said =
          Stream.concat(
              text.sentences().stream().filter(each -> each.contains(" " + rounded)),
              profile(set, step).stream().filter(withoutUnit(rounded)::equals));
      said.filter(each -> !rounded.equals(told) && !each.contains(told))
          .forEach(each -> others.add(step.number() + " " + mark + " " + each));
    }
    return others;
  }

  private static String withoutUnit(String told) {
    return told.substring(0, told.lastIndexOf(' '));
  }

  private static List<String> places(PlanSet set, Step step) {
    SettingWords words = new SettingWords(set.piece(), Words.ENGLISH);
    return places(step).stream().map(each -> words.text(each).value()).toList();
  }

  private static List<Setting> places(Step step) {
    return step.settings().stream().filter(Guides::isOne).toList();
  }

  private static StepText text(PlanSet set, Step step) {
    return new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build()).write(step);
  }

  /** What the dimensions of a step's picture say. */
  private static List<String> profile(PlanSet set, Step step) {
    Drawing picture = set.drawings().steps().get(step.number());
    return picture == null
        ? List.of()
        : dimensions(picture.elements()).map(Dimension::text).toList();
  }

  /** The distances that a part's drawing gives, with their figures. */
  private static Map<Length, String> figures(PlanSet set, String mark) {
    Map<Length, String> figures = new LinkedHashMap<>();
    dimensions(set.drawings().parts().get(mark).elements())
        .filter(each -> FIGURES.matcher(each.text()).matches())
        .forEach(each -> figures.putIfAbsent(each.measure(), each.text()));
    return figures;
  }

  private static Stream<Dimension> dimensions(List<Element> elements) {
    return elements.stream()
        .flatMap(
            each ->
                each instanceof Group group
                    ? dimensions(group.elements())
                    : Stream.of(each)
                        .filter(Dimension.class::isInstance)
                        .map(Dimension.class::cast));
  }
}
