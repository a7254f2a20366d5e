package storyrod.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Sets things of some heights on pages, in their order, so that pages are well filled and things
 * are as large as they can be. Of all ways to break the row into pages the one with the least cost
 * is taken, as a paragraph is broken into lines.
 */
public final class Packing {
  /** How much a millimetre less than the largest height counts beside a millimetre left white. */
  private static final double SHRINKING = 0.3;

  /** What a page less than half full costs on top, as a share of the square of its height. */
  private static final double SPARSE = 0.2;

  /** What white on the last page counts beside that on others. */
  private static final double LAST_PAGE = 0.1;

  private static final double PAGE_COST = 400;

  private final List<Item> items;
  private final double roomMm;
  private final int most;
  private final double lastPage;

  private Packing(List<Item> items, double roomMm, int most, double lastPage) {
    this.items = items;
    this.roomMm = roomMm;
    this.most = most;
    this.lastPage = lastPage;
  }

  /**
   * A thing with the heights that it may have, in mm, the largest first.
   *
   * @param enoughMm a height beyond which more is no gain but the white that it fills
   * @param gone the share of a page left white that is as bad as its last height, at which it goes
   *     without its picture; 0 of a thing that keeps it
   */
  public record Item(List<Double> heights, double enoughMm, double gone) {
    public Item {
      heights = List.copyOf(heights);
      if (heights.isEmpty()) {
        throw new IllegalArgumentException("bug: a thing without a height");
      }
    }

    public Item(List<Double> heights, double enoughMm) {
      this(heights, enoughMm, 0);
    }

    /** A thing that is the better the larger it is. */
    public Item(List<Double> heights) {
      this(heights, Double.POSITIVE_INFINITY);
    }

    private boolean isGone(int choice) {
      return gone > 0 && choice == heights.size() - 1;
    }

    /** How much one of the heights is short of the largest that is a gain. */
    double shortMm(int choice) {
      return Math.max(0, Math.min(enoughMm, heights.getFirst()) - heights.get(choice));
    }

    public static Item of(double height) {
      return new Item(List.of(height));
    }
  }

  /** A page: its first thing, and for each of its things which of the heights it has. */
  public record Page(int first, List<Integer> choices) {
    public Page {
      choices = List.copyOf(choices);
    }
  }

  /**
   * The pages.
   *
   * @param roomMm the height of a page; a thing higher than that stands alone
   * @param most how many things a page may hold
   */
  public static List<Page> pages(List<Item> items, double roomMm, int most) {
    return new Packing(items, roomMm, most, LAST_PAGE).pages();
  }

  /**
   * Pages of which the last is filled like any other, so that nothing small is left over for it.
   */
  public static List<Page> evenPages(List<Item> items, double roomMm, int most) {
    return new Packing(items, roomMm, most, 1).pages();
  }

  private List<Page> pages() {
    int count = items.size();
    double[] cost = new double[count + 1];
    int[] first = new int[count + 1];
    Arrays.fill(cost, 1, count + 1, Double.POSITIVE_INFINITY);
    for (int end = 1; end <= count; end++) {
      for (int from = end - 1; from >= Math.max(0, end - most); from--) {
        double total = cost[from] + cost(from, end);
        if (total < cost[end]) {
          cost[end] = total;
          first[end] = from;
        }
      }
    }
    List<Page> pages = new ArrayList<>();
    for (int end = count; end > 0; end = first[end]) {
      pages.add(new Page(first[end], choices(first[end], end)));
    }
    Collections.reverse(pages);
    return pages;
  }

  private double cost(int from, int end) {
    return cost(from, end, choices(from, end));
  }

  private double cost(int from, int end, List<Integer> choices) {
    double white = roomMm - height(from, choices);
    if (white < 0 && end - from > 1) {
      return Double.POSITIVE_INFINITY;
    }
    double lost = 0;
    for (int i = 0; i < choices.size(); i++) {
      Item item = items.get(from + i);
      double less = item.shortMm(choices.get(i));
      lost += item.isGone(choices.get(i)) ? goneCost(item) : SHRINKING * less * less;
    }
    double weight = end == items.size() ? lastPage : 1;
    double sparse = from > 0 && 2 * white > roomMm ? SPARSE * roomMm * roomMm : 0;
    return PAGE_COST + weight * (white * white + sparse) + lost;
  }

  private double goneCost(Item item) {
    return item.gone() * item.gone() * roomMm * roomMm;
  }

  /** The best heights that a page holds, with all pictures or without those that may go. */
  private List<Integer> choices(int from, int end) {
    List<Integer> kept = shrunk(from, new ArrayList<>(Collections.nCopies(end - from, 0)));
    List<Integer> gone =
        items.subList(from, end).stream()
            .map(each -> each.gone() > 0 ? each.heights().size() - 1 : 0)
            .collect(Collectors.toCollection(ArrayList::new));
    List<Integer> without = shrunk(from, gone);
    return cost(from, end, without) < cost(from, end, kept) ? without : kept;
  }

  /**
   * As long as they are too much, the least loss is taken; what goes leaves its room to the rest.
   */
  private List<Integer> shrunk(int from, List<Integer> choices) {
    while (height(from, choices) > roomMm) {
      int shrinking = toShrink(from, choices, false);
      int found = shrinking < 0 ? toShrink(from, choices, true) : shrinking;
      if (found < 0) {
        break;
      }
      choices.set(found, choices.get(found) + 1);
      if (shrinking < 0) {
        enlarge(from, choices);
      }
    }
    return choices;
  }

  private void enlarge(int from, List<Integer> choices) {
    for (int i = 0; i < choices.size(); i++) {
      if (!items.get(from + i).isGone(choices.get(i))) {
        choices.set(i, 0);
      }
    }
  }

  /** The thing that loses least by its next height; of those that lose as much, the largest. */
  private int toShrink(int from, List<Integer> choices, boolean orToGo) {
    return IntStream.range(0, choices.size())
        .filter(i -> canShrink(items.get(from + i), choices.get(i) + 1, orToGo))
        .boxed()
        .min(
            Comparator.comparingDouble((Integer i) -> loss(items.get(from + i), choices.get(i)))
                .thenComparing(i -> -items.get(from + i).heights().get(choices.get(i))))
        .orElse(-1);
  }

  private static boolean canShrink(Item item, int next, boolean orToGo) {
    return next < item.heights().size() && (orToGo || !item.isGone(next));
  }

  private double loss(Item item, int choice) {
    if (item.isGone(choice + 1)) {
      return goneCost(item);
    }
    double now = item.shortMm(choice);
    double then = item.shortMm(choice + 1);
    return then * then - now * now;
  }

  private double height(int from, List<Integer> choices) {
    double sum = 0;
    for (int i = 0; i < choices.size(); i++) {
      sum += items.get(from + i).heights().get(choices.get(i));
    }
    return sum;
  }
}
