package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import storyrod.drawing.SawnPiece;
import storyrod.drawing.SawnPiece.Laid;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.measure.LengthFormat;
import storyrod.piece.Mark;

/**
 * Layouts of plain lists, without a project.
 *
 * @param title the head of the pages
 * @param lengthsOnly whether only lengths matter
 * @param costPlaces the decimal places of costs; below zero where there are none
 */
public record LayoutSet(
    String title,
    LayoutJob job,
    LayoutPlan plan,
    boolean lengthsOnly,
    int costPlaces,
    LengthFormat format) {
  private static final int SHORT_NAME = 3;

  /** The marks of the blanks: their names if all are short, else letters. */
  List<String> marks() {
    List<String> names = job.blanks().stream().map(Blank::name).toList();
    boolean areMarks =
        names.stream().allMatch(name -> name.length() <= SHORT_NAME)
            && names.stream().distinct().count() == names.size();
    return areMarks ? names : IntStream.range(0, names.size()).mapToObj(Mark::letters).toList();
  }

  /** The pieces that are sawn from one stock. */
  List<SawnPiece> pieces(int stock) {
    List<String> marks = marks();
    int[] given = new int[job.blanks().size()];
    List<SawnPiece> pieces = new ArrayList<>();
    for (Sawn sawn : plan.pieces()) {
      List<Laid> parts = sawn.spots().stream().map(spot -> laid(spot, marks, given)).toList();
      if (sawn.stock() == stock) {
        pieces.add(piece(sawn, parts));
      }
    }
    return cutAlike(pieces);
  }

  private SawnPiece piece(Sawn sawn, List<Laid> parts) {
    Stock from = job.stock().get(sawn.stock());
    return new SawnPiece(
        from.length(),
        from.width(),
        lengthsOnly,
        job.kerf(),
        parts,
        sawn.cuts(),
        sawn.offcuts(),
        from.defects());
  }

  /** Of pieces that give the same parts, each is cut as the first of them. */
  private static List<SawnPiece> cutAlike(List<SawnPiece> pieces) {
    Map<List<String>, SawnPiece> first = new LinkedHashMap<>();
    return pieces.stream()
        .map(
            piece ->
                first.computeIfAbsent(
                    piece.parts().stream().map(Laid::mark).sorted().toList(), marks -> piece))
        .toList();
  }

  private Laid laid(Spot spot, List<String> marks, int[] given) {
    String mark = marks.get(spot.blank());
    String name = job.blanks().get(spot.blank()).name();
    String id = "%d-%d".formatted(spot.blank() + 1, ++given[spot.blank()]);
    boolean isHeld = !lengthsOnly && !job.blanks().get(spot.blank()).mayTurn();
    return new Laid(
        "part-" + id, mark, name.equals(mark) ? "" : name, spot.area(), spot.turned(), isHeld);
  }

  /** How much of the area of the stock becomes parts, in whole per cent. */
  int usedPercent() {
    double parts = 0;
    double stock = 0;
    for (Sawn sawn : plan.pieces()) {
      Stock from = job.stock().get(sawn.stock());
      stock += from.length().toMm() * from.width().toMm();
      for (Spot spot : sawn.spots()) {
        parts += spot.area().length().toMm() * spot.area().width().toMm();
      }
    }
    return stock > 0 ? (int) Math.floor(100 * parts / stock) : 0;
  }

  long cost() {
    return plan.pieces().stream().mapToLong(piece -> job.stock().get(piece.stock()).cost()).sum();
  }
}
