package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import storyrod.build.BuildPlan;
import storyrod.build.Levels;
import storyrod.build.Unit;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The exploded views of a piece. Where all of it opened at once is crowded, its sub-assemblies stay
 * closed in the view of the piece and have views of their own; every mark has a balloon in one.
 */
final class ExplodedViews {
  /** More marks than these are too many for one view. */
  private static final int MOST_MARKS = 12;

  private final Piece piece;
  private final BuildPlan plan;
  private final Rooms rooms;
  private final Map<String, List<Unit>> levels;

  private final List<Hardware> hardware;

  private ExplodedViews(Piece piece, BuildPlan plan, List<Hardware> hardware, Rooms rooms) {
    this.hardware = hardware;
    this.piece = piece;
    this.plan = plan;
    this.rooms = rooms;
    this.levels = Levels.withFronts(piece);
  }

  /** Isometric exploded views, each as large as its room, at scales of their own. */
  static Exploded draw(Piece piece, BuildPlan plan, List<Hardware> hardware, Rooms rooms) {
    ExplodedViews views = new ExplodedViews(piece, plan, hardware, rooms);
    List<String> assemblies = views.assemblies();
    if (assemblies.isEmpty() || piece.marks().size() <= MOST_MARKS) {
      ExplodedView open = ExplodedView.open(piece, plan, hardware);
      return open.piece(open.names(), rooms, List.of());
    }
    return views.closed(views.opened(assemblies));
  }

  /** The sub-assemblies of which there is something to open. */
  private List<String> assemblies() {
    return levels.keySet().stream()
        .filter(name -> !name.equals(Nesting.PIECE) && levels.get(name).size() > 1)
        .toList();
  }

  /** The piece with closed sub-assemblies, a balloon at the part of each that is seen best. */
  private Exploded closed(List<GeneralSheet> opened) {
    ExplodedView view = view(Nesting.PIECE, piece.parts());
    List<String> named =
        levels.get(Nesting.PIECE).stream().map(unit -> best(unit, view.picture())).toList();
    return view.piece(named, rooms, opened);
  }

  private static String best(Unit unit, Picture picture) {
    return unit.partNames().stream()
        .max(Comparator.comparingDouble(name -> picture.seenArea(List.of(name))))
        .orElseThrow();
  }

  /** A view of each sub-assembly; one for those that are alike. */
  private List<GeneralSheet> opened(List<String> assemblies) {
    List<List<String>> alike = GeneralSheets.alike(Nesting.of(piece), assemblies);
    List<ExplodedView> views =
        alike.stream().map(List::getFirst).map(name -> view(name, parts(name))).toList();
    List<Size> sizes = rooms.opened(heights(views));
    List<GeneralSheet> sheets = new ArrayList<>();
    for (int i = 0; i < alike.size(); i++) {
      String name = "exploded-" + alike.get(i).getFirst();
      sheets.add(new GeneralSheet(views.get(i).drawn(name, sizes.get(i)), alike.get(i)));
    }
    return sheets;
  }

  private static List<DoubleUnaryOperator> heights(List<ExplodedView> views) {
    return views.stream().map(view -> (DoubleUnaryOperator) view::heightMm).toList();
  }

  private List<Part> parts(String level) {
    return levels.get(level).stream().flatMap(unit -> unit.parts().stream()).toList();
  }

  private ExplodedView view(String level, List<Part> parts) {
    return ExplodedView.of(
        Explosion.ofLevel(piece, plan, View.USUAL, level), parts, hardware(level));
  }

  /**
   * What is put in when a level is put together: its parts are all of it, and of no level inside.
   */
  private List<Hardware> hardware(String level) {
    return hardware.stream().filter(each -> level(each).equals(level)).toList();
  }

  private String level(Hardware each) {
    List<String> joined = each.placed().origin().parts();
    return assemblies().stream()
        .filter(name -> parts(name).stream().map(Part::name).toList().containsAll(joined))
        .findFirst()
        .orElse(Nesting.PIECE);
  }
}
