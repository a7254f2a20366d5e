package storyrod.stock;

import java.util.ArrayList;
import java.util.List;
import storyrod.measure.Length;
import storyrod.stock.LayoutReplay.Wanted;
import storyrod.stock.SheetProblem.Rectangle;
import storyrod.stock.SheetProblem.Sheet;
import storyrod.stock.SheetProblem.Trim;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SheetLayout;

/** Layout jobs for tests, in millimetres. */
final class Layouts {
  private static final long MM = Length.TICKS_PER_MM;

  private Layouts() {}

  static Sheet sheet(double length, double width, double kerf, double trim) {
    return new Sheet(ticks(length), ticks(width), ticks(kerf), Trim.all(ticks(trim)));
  }

  static Rectangle part(double length, double width, boolean mayTurn) {
    return new Rectangle(ticks(length), ticks(width), mayTurn);
  }

  private static long ticks(double mm) {
    return Math.round(mm * MM);
  }

  static List<SheetLayout> sawn(SheetProblem problem, LayoutEngine.Result result) {
    Sheet sheet = problem.sheet();
    List<SheetLayout> layouts = new ArrayList<>();
    for (SheetTree tree : result.sheets()) {
      CutSequence.Sawing sawing = CutSequence.of(tree, result.sizes(), sheet);
      List<Placed> placed =
          sawing.spots().stream()
              .map(spot -> new Placed("A", name(spot.part()), spot.area(), spot.turned()))
              .toList();
      layouts.add(
          new SheetLayout(
              new Length(sheet.length()),
              new Length(sheet.width()),
              placed,
              sawing.cuts(),
              sawing.offcuts()));
    }
    return layouts;
  }

  static List<Wanted> wanted(SheetProblem problem) {
    List<Wanted> wanted = new ArrayList<>();
    for (Rectangle part : problem.parts()) {
      wanted.add(
          new Wanted(
              name(wanted.size()),
              new Length(part.length()),
              new Length(part.width()),
              part.mayTurn()));
    }
    return wanted;
  }

  private static String name(int part) {
    return "part-" + part;
  }

  static List<String> faults(SheetProblem problem, LayoutEngine.Result result) {
    Length kerf = new Length(problem.sheet().kerf());
    return LayoutReplay.faults(sawn(problem, result), kerf, wanted(problem));
  }
}
