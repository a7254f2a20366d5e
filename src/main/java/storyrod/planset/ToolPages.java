package storyrod.planset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Guides;
import storyrod.build.Instruments;
import storyrod.build.SettingTools;
import storyrod.piece.Mark;
import storyrod.planset.StepText.SettingText;
import storyrod.planset.StepText.ToolText;
import storyrod.planset.TableFlow.Table;
import storyrod.planset.TableHeights.Cell;
import storyrod.words.Words;

/**
 * The tools of the steps.
 *
 * @param set those that are set to something, each with its settings and where these are used, so
 *     that what is the same is done in one go
 * @param all every tool and the steps that name it
 */
public record ToolPages(List<TableFlow.Part<Row>> set, List<TableFlow.Part<List<Tool>>> all) {
  static final ToolPages NONE = new ToolPages(List.of(), List.of());

  /** Narrower than its column, for the name of a tool is bold. */
  private static final double TOOL_SHARE = 0.17;

  private static final double NAME_SHARE = 0.27;
  private static final double VALUE_SHARE = 0.115;

  /** What the gap before the marks leaves of their column. */
  private static final double PARTS_SHARE = 0.14;

  private static final double STEPS_SHARE = 0.2;
  private static final double NAMED_SHARE = 0.25;
  private static final double NAMED_STEPS_SHARE = 0.21;
  private static final double BELOW_COLUMNS_MM = 1;
  private static final int ABREAST = 2;
  private static final Instruments INSTRUMENTS = new Instruments();

  public ToolPages {
    set = List.copyOf(set);
    all = List.copyOf(all);
  }

  boolean hasAny() {
    return !all.isEmpty();
  }

  /** A setting of a tool; several parts or steps may have the same. */
  public record Row(String tool, String name, String value, String parts, StepRuns steps) {}

  /**
   * A tool and the steps that name it.
   *
   * @param sizes in which it is wanted; empty if in any
   */
  public record Tool(String name, String sizes, StepRuns steps) {
    /** As it is printed. */
    String named(Texts texts) {
      return sizes.isEmpty() ? name : texts.say("tools.sized", name, sizes);
    }
  }

  /**
   * The tools of some steps.
   *
   * @param atMm how far down the page before them is filled
   */
  static ToolPages of(PlanSet set, StepPages pages, Print print, double atMm) {
    List<Row> rows = new Collected(set, pages, print.texts().words()).rows();
    List<List<Tool>> all = abreast(tools(set, pages, print.texts()));
    Table<Row> settings = settings(rows, print);
    Table<List<Tool>> tools = tools(all, rows.isEmpty(), print);
    TableFlow flow = TableFlow.balanced(print.paper().roomMm(), atMm, List.of(settings, tools));
    return new ToolPages(flow.place(settings), flow.place(tools));
  }

  private static Table<Row> settings(List<Row> rows, Print print) {
    double width = print.paper().textWidthMm();
    double lead = TableHeights.text(print.texts().say("tools.lead"), width);
    Map<Row, Double> named = named(rows, width);
    double columns = TableHeights.ROW_MM + BELOW_COLUMNS_MM + namedApartMm(rows, width);
    return new Table<>(
        TableHeights.ABOVE_H1_MM,
        TableHeights.FOLLOWING_H1_MM + lead + columns,
        columns,
        rows,
        row -> rowMm(row, width) + named.getOrDefault(row, 0.0));
  }

  private static double rowMm(Row row, double width) {
    return TableHeights.row(
        List.of(
            new Cell(row.name(), NAME_SHARE * width),
            new Cell(row.value(), VALUE_SHARE * width),
            new Cell(row.parts(), PARTS_SHARE * width),
            new Cell(row.steps().text(), STEPS_SHARE * width)));
  }

  /** What the name of a tool takes more than its rows, beside which it stands; by the last. */
  private static Map<Row, Double> named(List<Row> rows, double width) {
    Map<String, List<Row>> tools =
        rows.stream().collect(Collectors.groupingBy(Row::tool, Collectors.toList()));
    return tools.values().stream()
        .collect(
            Collectors.toMap(
                List::getLast,
                its ->
                    Math.max(
                        0,
                        nameMm(its.getFirst(), width)
                            - its.stream().mapToDouble(row -> rowMm(row, width)).sum())));
  }

  private static double nameMm(Row row, double width) {
    return TableHeights.row(List.of(new Cell(row.tool(), TOOL_SHARE * width)));
  }

  /** What a name may take beside a single row, where a page ends or goes on with its tool. */
  private static double namedApartMm(List<Row> rows, double width) {
    return rows.stream()
        .mapToDouble(row -> nameMm(row, width) - TableHeights.ROW_MM)
        .max()
        .orElse(0);
  }

  private static Table<List<Tool>> tools(List<List<Tool>> rows, boolean alone, Print print) {
    double width = print.paper().textWidthMm();
    double head = alone ? TableHeights.FOLLOWING_H1_MM : TableHeights.H2_MM;
    return new Table<>(
        alone ? TableHeights.ABOVE_H1_MM : TableHeights.ABOVE_H2_MM,
        head + TableHeights.ROW_MM + BELOW_COLUMNS_MM,
        TableHeights.ROW_MM + BELOW_COLUMNS_MM,
        rows,
        row ->
            TableHeights.row(
                row.stream().flatMap(tool -> cells(tool, width, print.texts())).toList()));
  }

  private static Stream<Cell> cells(Tool tool, double width, Texts texts) {
    return Stream.of(
        new Cell(tool.named(texts), NAMED_SHARE * width),
        new Cell(tool.steps().text(), NAMED_STEPS_SHARE * width));
  }

  private static List<Tool> tools(PlanSet set, StepPages pages, Texts texts) {
    Map<String, String> sizes = new ToolSizes(set, pages.all(), texts).byTool();
    List<ToolText> named =
        pages.all().stream().flatMap(step -> step.text().toolTexts().stream()).distinct().toList();
    Map<ToolText, Set<Integer>> steps = new LinkedHashMap<>();
    for (StepEntry step : pages.all()) {
      step.text()
          .toolTexts()
          .forEach(
              tool ->
                  steps
                      .computeIfAbsent(atHand(tool, named), t -> new TreeSet<>())
                      .add(step.number()));
    }
    return steps.entrySet().stream()
        .map(each -> tool(each.getKey(), sizes, each.getValue()))
        .sorted(Comparator.comparing(Tool::name, texts.words().order()))
        .toList();
  }

  /** Of several that do the same work the first, if it is named for other work too. */
  private static ToolText atHand(ToolText tool, List<ToolText> named) {
    List<String> any = INSTRUMENTS.anyOf(tool.key());
    return named.stream()
        .filter(other -> any.size() > 1 && other.key().equals(any.getFirst()))
        .findFirst()
        .orElse(tool);
  }

  private static Tool tool(ToolText tool, Map<String, String> sizes, Set<Integer> steps) {
    String size = sizes.getOrDefault(tool.key(), "");
    return new Tool(Texts.capital(tool.words()), size, StepRuns.of(steps));
  }

  private static List<List<Tool>> abreast(List<Tool> tools) {
    int rows = Math.ceilDiv(tools.size(), ABREAST);
    List<List<Tool>> abreast = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      abreast.add(
          row + rows < tools.size()
              ? List.of(tools.get(row), tools.get(row + rows))
              : List.of(tools.get(row)));
    }
    return abreast;
  }

  /** The settings of all steps, the same ones together. */
  private record Collected(PlanSet set, StepPages pages, Words words) {
    /** What makes two settings the same. */
    private record Key(String tool, String name, String value) {}

    private static final class Uses {
      private final Set<String> marks =
          new TreeSet<>(
              Comparator.comparing(String::length).thenComparing(Comparator.naturalOrder()));
      private final Set<Integer> steps = new TreeSet<>();
      private final Setting setting;

      private Uses(Setting setting) {
        this.setting = setting;
      }
    }

    List<Row> rows() {
      Map<Key, Uses> uses = new LinkedHashMap<>();
      for (StepEntry entry : pages.all()) {
        Step step = set.build().steps().get(entry.number() - 1);
        step.settings().stream()
            .filter(setting -> isDrawn(setting, step))
            .forEach(setting -> add(uses, setting, step, entry));
      }
      List<String> tools = uses.keySet().stream().map(Key::tool).distinct().toList();
      List<String> names = uses.keySet().stream().map(Key::name).distinct().toList();
      return uses.entrySet().stream()
          .sorted(
              Comparator.<Map.Entry<Key, Uses>>comparingInt(e -> tools.indexOf(e.getKey().tool))
                  .thenComparingInt(e -> names.indexOf(e.getKey().name))
                  .thenComparing(e -> e.getValue().setting.value()))
          .map(each -> row(each.getKey(), each.getValue()))
          .toList();
    }

    private Row row(Key key, Uses uses) {
      String marks = MarkRuns.of(set.piece()).text(uses.marks);
      return new Row(key.tool, key.name, key.value, marks, StepRuns.of(uses.steps));
    }

    private void add(Map<Key, Uses> uses, Setting setting, Step step, StepEntry entry) {
      tool(setting, entry)
          .ifPresent(
              tool -> {
                SettingText text = new SettingWords(set.piece(), words).text(setting);
                Uses use =
                    uses.computeIfAbsent(
                        new Key(tool, text.name(), text.value()), key -> new Uses(setting));
                use.steps.add(step.number());
                use.marks.addAll(text.mark().isEmpty() ? marks(step) : List.of(text.mark()));
              });
    }

    private Optional<String> tool(Setting setting, StepEntry entry) {
      return SettingTools.STANDARD
          .of(setting, entry.text()::uses)
          .map(key -> Texts.capital(words.say("tool." + key)));
    }

    private List<String> marks(Step step) {
      return step.operations().stream()
          .flatMap(operation -> operation.parts().stream())
          .map(name -> set.piece().part(name).mark())
          .toList();
    }

    /** Of the parts of a mark, mirror images among them, fences are told for the drawn one. */
    private boolean isDrawn(Setting setting, Step step) {
      if (!Guides.isOne(setting)) {
        return true;
      }
      Mark mark = set.piece().mark(set.piece().part(setting.part().orElseThrow()).mark());
      String drawn = mark.shown().name();
      boolean isHere =
          step.settings().stream().anyMatch(each -> each.part().filter(drawn::equals).isPresent());
      return !isHere || setting.part().filter(drawn::equals).isPresent();
    }
  }
}
