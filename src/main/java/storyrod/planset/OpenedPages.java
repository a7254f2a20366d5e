package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.GeneralSheet;
import storyrod.drawing.Size;
import storyrod.piece.Mark;

/**
 * The exploded views of sub-assemblies, or those of the piece with the marks that find no room in
 * its first: up to two on a page, one below the other.
 *
 * @param lead the key of what the first view says of these; empty if there are none
 * @param keys for each page, what the marks of its hardware mean
 */
public record OpenedPages(String lead, List<List<Entry>> pages, List<List<HardwareList.Row>> keys) {
  private static final int MOST = 2;

  /** What title and lead take above a drawing, and the space below. */
  private static final double BESIDE_MM = 21;

  public OpenedPages {
    pages = List.copyOf(pages);
    keys = List.copyOf(keys);
  }

  /** A view of sub-assemblies that are alike; the lead is empty for a single one. */
  public record Entry(String title, String lead, DrawingBox drawing) {}

  /** The rooms for views, in order; each as high as it needs to be, if its page has room. */
  static List<Size> rooms(List<DoubleUnaryOperator> heights, Paper paper, double keyMm) {
    double width = paper.textWidthMm();
    List<Size> rooms = new ArrayList<>();
    for (int count : counts(heights.size())) {
      List<Double> wished =
          heights.subList(rooms.size(), rooms.size() + count).stream()
              .map(each -> each.applyAsDouble(width))
              .toList();
      double most = most(wished, paper.roomMm() - 1 - keyMm - count * BESIDE_MM);
      wished.forEach(each -> rooms.add(new Size(width, Math.min(most, each))));
    }
    return rooms;
  }

  /** How many views each page holds, all nearly as many. */
  static List<Integer> counts(int views) {
    int pages = Math.ceilDiv(views, MOST);
    return IntStream.range(0, pages).map(page -> (views + page) / pages).boxed().toList();
  }

  /** The height that none may exceed if all are to find room; the highest give way. */
  private static double most(List<Double> wished, double room) {
    List<Double> sorted = wished.stream().sorted().toList();
    double left = room;
    for (int i = 0; i < sorted.size(); i++) {
      double share = left / (sorted.size() - i);
      if (sorted.get(i) > share) {
        return share;
      }
      left -= sorted.get(i);
    }
    return Double.POSITIVE_INFINITY;
  }

  static OpenedPages of(PlanSet set, Texts texts) {
    List<GeneralSheet> sheets = set.drawings().exploded().opened();
    List<List<Entry>> pages = new ArrayList<>();
    List<List<HardwareList.Row>> keys = new ArrayList<>();
    HardwareList all = HardwareList.whole(set, texts);
    Map<String, Integer> told = new LinkedHashMap<>();
    int at = 0;
    for (int count : counts(sheets.size())) {
      pages.add(
          sheets.subList(at, at + count).stream().map(each -> entry(set, each, texts)).toList());
      keys.add(
          HardwareKey.ofSheets(sheets.subList(at, at + count), all).stream()
              .map(row -> once(row, all, told))
              .toList());
      at += count;
    }
    return new OpenedPages(lead(sheets, pages.size()), pages, keys);
  }

  private static String lead(List<GeneralSheet> sheets, int pages) {
    if (sheets.isEmpty()) {
      return "";
    }
    String what = sheets.getFirst().units().isEmpty() ? "exploded.further" : "exploded.closed";
    return pages == 1 ? what : what + ".pages";
  }

  /** What has a body on each of two sub-assemblies, such as a catch, counts where it is first. */
  private static HardwareList.Row once(
      HardwareList.Row row, HardwareList all, Map<String, Integer> told) {
    int before = told.getOrDefault(row.mark(), 0);
    int left = Math.min(row.count(), all.count(row.mark()) - before);
    told.put(row.mark(), before + left);
    return row.counting(left);
  }

  private static Entry entry(PlanSet set, GeneralSheet sheet, Texts texts) {
    Drawing drawing = sheet.drawing();
    DrawingBox box =
        DrawingBox.within(drawing.name(), drawing, drawing.widthMm(), drawing.heightMm());
    if (sheet.units().isEmpty()) {
      return new Entry(marks(set, drawing, texts), "", box);
    }
    LikeUnits like = LikeUnits.of(set.piece(), sheet.units());
    return new Entry(like.same().getFirst(), lead(like, texts), box);
  }

  private static String lead(LikeUnits like, Texts texts) {
    List<String> told = new ArrayList<>();
    if (like.same().size() > 1) {
      String others = String.join(", ", like.same().subList(1, like.same().size()));
      told.add(texts.say("exploded.alike", others));
    }
    if (!like.mirrored().isEmpty()) {
      told.add(texts.say("exploded.mirrored", like.mirroredTold()));
    }
    return String.join(" ", told);
  }

  /** The first and the last mark of a view of the piece that shows some of them. */
  private static String marks(PlanSet set, Drawing drawing, Texts texts) {
    List<String> shown =
        drawing.elements().stream()
            .flatMap(each -> each instanceof Balloon ring ? Stream.of(ring.mark()) : Stream.empty())
            .toList();
    List<String> marks =
        set.piece().marks().stream().map(Mark::mark).filter(shown::contains).toList();
    return texts.say("exploded.marks", marks.getFirst(), marks.getLast());
  }
}
