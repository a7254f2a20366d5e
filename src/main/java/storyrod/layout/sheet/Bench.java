package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.layout.sheet.Enlarged.Kind;

/** The state of a search: the sheets in work, the parts that are out, and what to go back to. */
final class Bench {
  final Enlarged sizes;
  final Chance chance;
  final BestFit fit;

  OpenSheet[] sheets = new OpenSheet[0];

  /** How many parts of each type are out. */
  final int[] out;

  long value;
  private final StepCount steps;
  private final Kind[] kinds;
  private final long[] areas;
  private final int[] left;
  private final int[] keptOut;
  private final int[] keptLeft;
  private long keptValue;

  Bench(Enlarged sizes, Chance chance, StepCount steps) {
    this.sizes = sizes;
    this.chance = chance;
    this.steps = steps;
    this.fit = new BestFit(sizes, chance, steps);
    kinds = sizes.kinds.toArray(Kind[]::new);
    areas = sizes.types.stream().mapToLong(Enlarged.Type::area).toArray();
    out = new int[areas.length];
    keptOut = new int[areas.length];
    left = new int[kinds.length];
    keptLeft = new int[kinds.length];
    clear();
  }

  /** Takes everything off the bench. */
  void clear() {
    for (OpenSheet sheet : sheets) {
      sheet.kind = OpenSheet.CLOSED;
    }
    for (int i = 0; i < out.length; i++) {
      out[i] = sizes.types.get(i).count();
    }
    for (int i = 0; i < left.length; i++) {
      left[i] = kinds[i].available();
    }
    value = 0;
    keep();
  }

  void load(Found found) {
    clear();
    for (Found.Laid laid : found.sheets()) {
      OpenSheet sheet = closedSheet();
      sheet.touch();
      sheet.kind = laid.kind();
      sheet.tree.copyFrom(laid.tree());
      left[laid.kind()]--;
    }
    System.arraycopy(found.out(), 0, out, 0, out.length);
    value = found.value();
    keep();
  }

  /** All types, the largest first. */
  int[] byArea() {
    return IntStream.range(0, areas.length)
        .boxed()
        .sorted(Comparator.comparingLong(type -> -areas[type]))
        .mapToInt(type -> type)
        .toArray();
  }

  long areaOut() {
    long area = 0;
    for (int i = 0; i < out.length; i++) {
      area += out[i] * areas[i];
    }
    return area;
  }

  boolean isComplete() {
    return Arrays.stream(out).allMatch(each -> each == 0);
  }

  /** The kinds of which there is one more and that keep the value within a limit. */
  boolean mayOpen(int kind, long limit) {
    return left[kind] > 0 && value + kinds[kind].worth() <= limit;
  }

  /** Puts an empty sheet of a kind on the bench and says at which place. */
  int open(int kind) {
    OpenSheet sheet = closedSheet();
    sheet.touch();
    sheet.kind = kind;
    Clearing.start(sheet.tree, kinds[kind], Math.toIntExact(sizes.kerfTicks / sizes.unit), chance);
    steps.look(20 + 300 * kinds[kind].defects().size());
    left[kind]--;
    value += kinds[kind].worth();
    return Arrays.asList(sheets).indexOf(sheet);
  }

  /** Puts a sheet with a pattern of parts that are out on the bench. */
  void use(Pattern pattern) {
    int at = open(pattern.kind());
    sheets[at].tree.copyFrom(pattern.tree());
    int[] counts = pattern.counts();
    for (int type = 0; type < counts.length; type++) {
      out[type] -= counts[type];
    }
  }

  /** Takes a sheet off the bench; its parts are out. */
  void close(OpenSheet sheet) {
    sheet.touch();
    sheet.tree.remove(CutTree.ROOT, out);
    left[sheet.kind]++;
    value -= kinds[sheet.kind].worth();
    sheet.kind = OpenSheet.CLOSED;
  }

  private OpenSheet closedSheet() {
    for (OpenSheet sheet : sheets) {
      if (sheet.kind == OpenSheet.CLOSED) {
        return sheet;
      }
    }
    sheets = Arrays.copyOf(sheets, sheets.length + 1);
    OpenSheet sheet = new OpenSheet();
    sheets[sheets.length - 1] = sheet;
    return sheet;
  }

  void keep() {
    for (OpenSheet sheet : sheets) {
      sheet.keep();
    }
    System.arraycopy(out, 0, keptOut, 0, out.length);
    System.arraycopy(left, 0, keptLeft, 0, left.length);
    keptValue = value;
  }

  void goBack() {
    for (OpenSheet sheet : sheets) {
      sheet.goBack();
    }
    System.arraycopy(keptOut, 0, out, 0, out.length);
    System.arraycopy(keptLeft, 0, left, 0, left.length);
    value = keptValue;
  }

  /** A copy of the present state, without sheets that hold nothing. */
  Found found() {
    List<Found.Laid> laid = new ArrayList<>();
    long taken = 0;
    for (OpenSheet sheet : sheets) {
      if (sheet.kind != OpenSheet.CLOSED && sheet.tree.parts() > 0) {
        CutTree tree = new CutTree();
        tree.copyFrom(sheet.tree);
        laid.add(new Found.Laid(sheet.kind, tree));
        taken += kinds[sheet.kind].worth();
      }
    }
    return new Found(List.copyOf(laid), out.clone(), taken);
  }
}
