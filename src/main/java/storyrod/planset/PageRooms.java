package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.Packing;
import storyrod.drawing.Rooms;
import storyrod.drawing.Size;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The room that the pages of a plan set have for drawings beside their texts. */
public final class PageRooms implements Rooms {
  private static final double COVER_TEXTS_MM = 84;
  private static final double LAYOUT_SHARE = 0.57;
  private static final double STEP_SHARE = 0.62;
  private static final double LEAST_PICTURE_MM = 35;
  private static final double PICTURE_STEP_MM = 2;

  private final Piece piece;
  private final BuildPlan build;
  private final Paper paper;
  private final StepPages.Sheet sheet;

  private PageRooms(Piece piece, BuildPlan build, StepPages.Sheet sheet) {
    this.piece = piece;
    this.build = build;
    this.paper = sheet.paper();
    this.sheet = sheet;
  }

  /** The rooms on the pages of a piece's plan set in a language. */
  public static Rooms of(Piece piece, BuildPlan build, Words words) {
    Texts texts = new Texts(piece.description().format(), words);
    Paper paper = Paper.usualFor(texts.format().unit());
    Wording wording = new StepWriter(piece, words, Templates.SHARED, build)::write;
    return new PageRooms(piece, build, new StepPages.Sheet(texts, paper, wording));
  }

  @Override
  public Size page() {
    return new Size(paper.textWidthMm(), paper.roomMm());
  }

  @Override
  public Size cover() {
    return new Size(paper.textWidthMm(), paper.heightMm() - 36 - COVER_TEXTS_MM);
  }

  @Override
  public Size exploded() {
    return new Size(paper.textWidthMm(), Pages.explodedRoom(piece, paper));
  }

  @Override
  public Size layout() {
    return new Size(paper.textWidthMm(), paper.textHeightMm() * LAYOUT_SHARE);
  }

  @Override
  public double besidePartMm(Mark mark) {
    return PartPages.besideMm(mark, sheet.texts(), paper);
  }

  @Override
  public double besideBlankMm(Mark mark) {
    return BlankPages.besideMm(new KeptNotes(piece, sheet.texts()), mark, paper);
  }

  @Override
  public Size fullSize() {
    return FullSizePages.room(paper);
  }

  @Override
  public double besideGeneralMm() {
    return GeneralPages.BESIDE_MM;
  }

  @Override
  public Map<Integer, Size> steps(Map<Integer, DoubleUnaryOperator> heights) {
    List<Packing.Item> items = new ArrayList<>();
    List<Double> beside = new ArrayList<>();
    StepHeights texts = new StepHeights(paper);
    for (Step step : build.steps()) {
      StepPages.Entry entry = StepPages.entry(piece, step, Optional.empty(), sheet);
      boolean pictured = heights.containsKey(step.number());
      double text = texts.of(entry, pictured) + StepPages.stageMm(build, step);
      beside.add(text + StepHeights.AROUND_PICTURE_MM);
      items.add(pictured ? elastic(text, heights.get(step.number())) : Packing.Item.of(text));
    }
    Map<Integer, Size> rooms = new LinkedHashMap<>();
    for (Packing.Page page : Packing.pages(items, StepHeights.roomMm(paper), StepPages.MOST)) {
      for (int i = 0; i < page.choices().size(); i++) {
        int at = page.first() + i;
        int number = build.steps().get(at).number();
        if (heights.containsKey(number)) {
          double all = items.get(at).heights().get(page.choices().get(i));
          rooms.put(number, new Size(paper.textWidthMm(), all - beside.get(at)));
        }
      }
    }
    return rooms;
  }

  /** A picture may be as high as it fills the page's width, but leaves room for its text. */
  private Packing.Item elastic(double text, DoubleUnaryOperator height) {
    double most =
        Math.min(height.applyAsDouble(paper.textWidthMm()), STEP_SHARE * paper.textHeightMm());
    double largest = Math.min(most, paper.roomMm() - text - StepHeights.AROUND_PICTURE_MM);
    List<Double> heights = new ArrayList<>();
    heights.add(text + StepHeights.AROUND_PICTURE_MM + Math.max(largest, LEAST_PICTURE_MM / 2));
    for (double less = largest - PICTURE_STEP_MM;
        less >= LEAST_PICTURE_MM;
        less -= PICTURE_STEP_MM) {
      heights.add(text + StepHeights.AROUND_PICTURE_MM + less);
    }
    return new Packing.Item(heights);
  }
}
