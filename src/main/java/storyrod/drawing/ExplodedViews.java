package storyrod.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import storyrod.build.BuildPlan;
import storyrod.build.Levels;
import storyrod.build.Unit;
import storyrod.geometry.Lazy;
import storyrod.piece.Mark;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The exploded views of a piece. Where all of it opened at once is crowded, its sub-assemblies stay
 * closed in the view of the piece and have views of their own; every mark has a balloon in one.
 * What is seen is worked out once, for rooms of any size.
 */
final class ExplodedViews {
  /** More marks than these are too many for one view. */
  private static final int MOST_MARKS = 12;

  private final Piece piece;
  private final BuildPlan plan;
  private final Map<String, List<Unit>> levels;
  private final List<Hardware> hardware;
  private final Lazy<ExplodedView> whole = new Lazy<>(this::whole);
  private final Lazy<List<Inner>> inner = new Lazy<>(this::inner);

  /** Those of a piece; nothing is worked out before they are drawn for the first time. */
  ExplodedViews(Piece piece, BuildPlan plan, List<Hardware> hardware) {
    this.hardware = hardware;
    this.piece = piece;
    this.plan = plan;
    this.levels = Levels.withFronts(piece);
  }

  /** Sub-assemblies that are alike, and the view that shows them. */
  private record Inner(List<String> alike, ExplodedView view) {
    GeneralSheet drawn(Size room) {
      return new GeneralSheet(view.drawn("exploded-" + alike.getFirst(), room), alike);
    }
  }

  /** Isometric exploded views, each as large as its room, at scales of their own. */
  Exploded draw(Rooms rooms) {
    return isOpen() ? open(rooms) : closed(opened(rooms), rooms);
  }

  /** Marks that find no room beside one view stand beside the same view, shown again. */
  private Exploded open(Rooms rooms) {
    ExplodedView view = whole.get();
    List<List<String>> shares = shares(Balloons.most(rooms.exploded().heightMm()));
    int further = shares.size() - 1;
    List<Size> sizes = rooms.opened(Collections.nCopies(further, view::heightMm));
    List<GeneralSheet> sheets = new ArrayList<>();
    for (int i = 1; i <= further; i++) {
      String name = "exploded-marks-" + (i + 1);
      Drawing drawing = view.marked(name, shares.get(i), sizes.get(i - 1));
      sheets.add(new GeneralSheet(drawing, List.of()));
    }
    return view.piece(shares.getFirst(), rooms, sheets);
  }

  /** The names of the parts, all of one mark together: at once, if there is room for so many. */
  private List<List<String>> shares(int room) {
    List<Mark> marks = piece.marks();
    if (marks.size() <= room) {
      return List.of(whole.get().names());
    }
    int count = Math.ceilDiv(marks.size(), Picture.MOST_BALLOONS);
    return IntStream.range(0, count)
        .mapToObj(i -> marks.subList(marks.size() * i / count, marks.size() * (i + 1) / count))
        .map(share -> share.stream().flatMap(mark -> mark.parts().stream()).toList())
        .toList();
  }

  /** Whether all of it is opened at once. */
  private boolean isOpen() {
    return assemblies().isEmpty() || piece.marks().size() <= MOST_MARKS;
  }

  private ExplodedView whole() {
    return isOpen() ? ExplodedView.open(piece, plan, hardware) : view(Nesting.PIECE, piece.parts());
  }

  /** The sub-assemblies of which there is something to open. */
  private List<String> assemblies() {
    return levels.keySet().stream()
        .filter(name -> !name.equals(Nesting.PIECE) && levels.get(name).size() > 1)
        .toList();
  }

  /** The piece with closed sub-assemblies, a balloon at the part of each that is seen best. */
  private Exploded closed(List<GeneralSheet> opened, Rooms rooms) {
    ExplodedView view = whole.get();
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
  private List<Inner> inner() {
    return GeneralSheets.alike(Nesting.of(piece), assemblies()).stream()
        .map(alike -> new Inner(alike, view(alike.getFirst(), parts(alike.getFirst()))))
        .toList();
  }

  private List<GeneralSheet> opened(Rooms rooms) {
    List<Inner> views = inner.get();
    List<Size> sizes = rooms.opened(heights(views));
    List<GeneralSheet> sheets = new ArrayList<>();
    for (int i = 0; i < views.size(); i++) {
      sheets.add(views.get(i).drawn(sizes.get(i)));
    }
    return sheets;
  }

  private static List<DoubleUnaryOperator> heights(List<Inner> views) {
    return views.stream().map(each -> (DoubleUnaryOperator) each.view::heightMm).toList();
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
