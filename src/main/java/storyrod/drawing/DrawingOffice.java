package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import storyrod.build.BuildPlan;
import storyrod.geometry.Lazy;
import storyrod.geometry.Parallel;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;
import storyrod.words.Words;

/**
 * Draws one plan for the pages of one edition after another. A drawing is made anew only where its
 * room is another, from what is seen in rooms of any size; drawings are the same as those of an
 * office that has drawn nothing yet. Not for several threads at once.
 */
public final class DrawingOffice {
  private final Piece piece;
  private final Kept<Drawing> covers;
  private final Kept<List<GeneralSheet>> general;
  private final Kept<Exploded> exploded;
  private final Kept<PartSheets.Sheets> parts;
  private final Kept<List<JointSheet>> joints;
  private final Kept<Map<String, List<Drawing>>> layouts;
  private final Kept<List<TemplateSheets>> templates;
  private final Kept<Map<Integer, Drawing>> slides;
  private final Map<Integer, PicturedStep> pictures = new LinkedHashMap<>();
  private final Map<StepRoom, Drawing> steps = new ConcurrentHashMap<>();

  /** An office for a plan; the pictures of its steps are made ready to be drawn in any size. */
  public DrawingOffice(Piece piece, StockPlan stock, BuildPlan build) {
    this.piece = piece;
    List<Hardware> hardware = Hardware.of(piece);
    Lazy<Picture> cover = new Lazy<>(() -> AssembledView.picture(piece, hardware));
    parts = new Kept<>(PartSheets.of(piece));
    covers = new Kept<>(rooms -> AssembledView.draw(cover.get(), rooms.cover()));
    general = new Kept<>(GeneralSheets.of(piece));
    exploded = new Kept<>(new ExplodedViews(piece, build, hardware)::draw);
    joints = new Kept<>(JointSheets.of(piece, hardware));
    layouts = new Kept<>(rooms -> layouts(stock, rooms));
    Lazy<List<FullSize>> fullSize = new Lazy<>(() -> FullSize.of(piece));
    Words words = piece.description().words();
    templates = new Kept<>(rooms -> TemplateSheets.draw(fullSize.get(), words, rooms));
    slides =
        new Kept<>(rooms -> SlideLines.of(piece, build.steps(), hardware, rooms.besideSentences()));
    Parallel.map(
            build.steps(),
            step ->
                PicturedStep.of(piece, build, step, hardware)
                    .or(() -> GridPicture.of(piece, stock, step))
                    .or(() -> BoardPicture.chosen(piece, step)))
        .forEach(each -> each.ifPresent(picture -> pictures.put(picture.step(), picture)));
  }

  private record StepRoom(int step, Size room) {}

  /** What was drawn, each with the rooms for which it was. */
  private static final class Kept<T> {
    private final Function<Rooms, T> draw;
    private final Map<AskedRooms, T> drawn = new LinkedHashMap<>();

    Kept(Function<Rooms, T> draw) {
      this.draw = draw;
    }

    T drawn(Rooms rooms) {
      return drawn.entrySet().stream()
          .filter(each -> each.getKey().areLike(rooms))
          .map(Map.Entry::getValue)
          .findFirst()
          .orElseGet(() -> anew(new AskedRooms(rooms)));
    }

    private T anew(AskedRooms rooms) {
      T made = draw.apply(rooms);
      drawn.put(rooms, made);
      return made;
    }
  }

  /** All that a plan set shows, each drawing for the room that its page has. */
  public Drawings drawings(Rooms rooms) {
    Lazy<Drawing> cover = new Lazy<>(() -> covers.drawn(rooms));
    Lazy<Exploded> views = new Lazy<>(() -> exploded.drawn(rooms));
    Lazy<Map<Integer, Drawing>> ofSteps = new Lazy<>(() -> steps(rooms));
    Lazy<List<GeneralSheet>> sheets = new Lazy<>(() -> general.drawn(rooms));
    Lazy<PartSheets.Sheets> ofParts = new Lazy<>(() -> parts.drawn(rooms));
    Lazy<List<JointSheet>> ofJoints = new Lazy<>(() -> joints.drawn(rooms));
    Lazy<Map<String, List<Drawing>>> ofStock = new Lazy<>(() -> layouts.drawn(rooms));
    Lazy<Map<Integer, Drawing>> ofSlides = new Lazy<>(() -> slides.drawn(rooms));
    Lazy<List<TemplateSheets>> fullSize = new Lazy<>(() -> templates.drawn(rooms));
    Parallel.map(
        List.of(views, ofSteps, sheets, ofParts, ofJoints, cover, fullSize, ofStock, ofSlides),
        Lazy::get);
    return new Drawings(
        cover.get(),
        sheets.get(),
        views.get(),
        ofParts.get().parts(),
        ofParts.get().blanks(),
        ofJoints.get(),
        ofStock.get(),
        ofSteps.get(),
        ofSlides.get(),
        fullSize.get());
  }

  private Map<String, List<Drawing>> layouts(StockPlan stock, Rooms rooms) {
    Map<String, List<Drawing>> drawn = new LinkedHashMap<>();
    boolean first = true;
    for (StockPlan.SheetPlan plan : stock.layouts()) {
      List<Drawing> sheets = new ArrayList<>();
      for (StockPlan.SheetLayout each : plan.sheets()) {
        SawnPiece sheet = SawnPiece.of(each, piece);
        Size room = first ? rooms.layout() : rooms.layout(sheet.cuts().size());
        sheets.add(LayoutDrawing.draw(sheet, Notation.of(piece), room));
        first = false;
      }
      drawn.put(plan.stock().name(), sheets);
    }
    return drawn;
  }

  private Map<Integer, Drawing> steps(Rooms rooms) {
    Map<Integer, DoubleUnaryOperator> heights = new LinkedHashMap<>();
    pictures.forEach((step, picture) -> heights.put(step, picture::heightMm));
    Map<Integer, Size> all = rooms.steps(heights);
    List<Drawing> made =
        Parallel.map(List.copyOf(all.entrySet()), each -> step(each.getKey(), each.getValue()));
    Map<Integer, Drawing> drawn = new LinkedHashMap<>();
    all.keySet().forEach(step -> drawn.put(step, made.get(drawn.size())));
    return drawn;
  }

  private Drawing step(int step, Size room) {
    return steps.computeIfAbsent(
        new StepRoom(step, room), each -> pictures.get(each.step).drawn(each.room));
  }
}
