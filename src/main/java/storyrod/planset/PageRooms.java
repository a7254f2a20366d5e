package storyrod.planset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.FullSize;
import storyrod.drawing.Rooms;
import storyrod.drawing.Size;
import storyrod.drawing.Strips;
import storyrod.geometry.Parallel;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The room that the pages of a plan set have for drawings beside their texts. */
public final class PageRooms implements Rooms {
  private static final double COVER_TEXTS_MM = 84;
  private static final double LAYOUT_SHARE = 0.57;

  private final Piece piece;
  private final BuildPlan build;
  private final Paper paper;
  private final StepPages.Sheet sheet;
  private final StepEntries entries;
  private final PartLines lines;

  private PageRooms(Piece piece, BuildPlan build, StepPages.Sheet sheet) {
    this.piece = piece;
    this.build = build;
    this.paper = sheet.paper();
    this.sheet = sheet;
    this.entries = new StepEntries(piece, build, sheet);
    this.lines = new PartLines(piece, build.steps(), sheet.texts());
  }

  /** The rooms on the pages of a piece's plan set in a language. */
  public static Rooms of(Piece piece, BuildPlan build, Words words) {
    return of(piece, build, Printing.usual(words));
  }

  /** The rooms on the pages of a piece's plan set as it is to be printed. */
  public static Rooms of(Piece piece, BuildPlan build, Printing printing) {
    return of(new StepTexts(piece, build), printing);
  }

  /** The rooms on the pages of a plan set as it is to be printed. */
  public static Rooms of(StepTexts texts, Printing printing) {
    Print print = Print.of(texts.piece(), texts.build(), printing);
    StepPages.Sheet sheet = new StepPages.Sheet(print, texts.in(printing));
    return new PageRooms(texts.piece(), texts.build(), sheet);
  }

  @Override
  public Size page() {
    return room(paper);
  }

  @Override
  public Size turnedPage() {
    return room(paper.turned());
  }

  private static Size room(Paper paper) {
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
  public Size explodedHardware() {
    return new Size(paper.textWidthMm(), Pages.hardwareRoom(piece, paper));
  }

  @Override
  public List<Size> opened(List<DoubleUnaryOperator> heights) {
    return OpenedPages.rooms(heights, paper, Pages.keyMm(HardwareKey.belowOpened(piece), paper));
  }

  @Override
  public Size layout() {
    return new Size(paper.textWidthMm(), paper.textHeightMm() * LAYOUT_SHARE);
  }

  @Override
  public Size layout(int cuts) {
    double alone = Layouts.roomMm(cuts, sheet.texts(), paper);
    return new Size(paper.textWidthMm(), Math.max(Layouts.LEAST_DRAWING_MM, alone));
  }

  @Override
  public double besidePartMm(Mark mark) {
    return PartPages.besideMm(mark, lines, paper);
  }

  @Override
  public double besideBlankMm(Mark mark) {
    return BlankPages.besideMm(new KeptNotes(piece, sheet.texts()), mark, paper);
  }

  @Override
  public Size fullSize(List<FullSize> templates) {
    return FullSizePages.room(templates, paper, sheet.texts());
  }

  @Override
  public Size turnedFullSize(List<FullSize> templates) {
    return FullSizePages.room(templates, paper.turned(), sheet.texts());
  }

  @Override
  public Size joint() {
    return JoineryPages.room(paper);
  }

  @Override
  public double besideGeneralMm() {
    return GeneralPages.BESIDE_MM;
  }

  @Override
  public Size besideSentences() {
    return new Size(StepMeasures.SIDE_MM, StepSlices.besideMm(paper));
  }

  @Override
  public Map<Integer, Size> steps(Map<Integer, DoubleUnaryOperator> heights) {
    List<StepRooms.Wish> wishes =
        Parallel.map(
            build.steps().stream().filter(sheet.print().chosen()::has).toList(),
            step -> wish(step, heights));
    return new StepRooms(sheet.print()).of(wishes);
  }

  private StepRooms.Wish wish(Step step, Map<Integer, DoubleUnaryOperator> heights) {
    return new StepRooms.Wish(
        entries.of(step, StepEntries.Shown.NOTHING),
        StepPages.stageMm(build, step),
        Optional.ofNullable(heights.get(step.number())),
        Strips.worth(piece, step));
  }
}
