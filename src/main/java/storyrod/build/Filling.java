package storyrod.build;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Network.Lag;
import storyrod.build.OneMaker.Rest;
import storyrod.build.OneMaker.Run;
import storyrod.description.ShopEntry;

/**
 * Fills waits with other work: where hands would have to wait, what has to dry is done sooner, or
 * what can be done comes first.
 *
 * <ol>
 *   <li>What goes on without a wait stays together as one block.
 *   <li>Of all moves that shorten a wait, the best is made, until none is left.
 *   <li>Where waits cannot be shorter, late ones are better than early ones: the more is done by
 *       then.
 *   <li>A trial is never put off to fill a wait: one that disappoints leaves time for another.
 *   <li>A move that tears a stage apart has to save an hour for each part more; a stage of the
 *       maker's own is never torn.
 * </ol>
 *
 * The same batches always give the same order.
 */
final class Filling {
  /** Less than this is not worth another heading between the steps. */
  private static final int REAL_WAIT = 60;

  /** Makes steps of batches. */
  interface Maker {
    List<Step> of(List<List<Task>> batches);

    /** Whether one goes on to another without a wait. */
    boolean goesOn(List<Task> batch, List<Task> next);
  }

  private final Maker steps;
  private final List<Link> links;
  private final ShopEntry shop;
  private List<Block> blocks = List.of();
  private OneMaker maker;

  Filling(Maker steps, List<Link> links, ShopEntry shop) {
    this.steps = steps;
    this.links = links;
    this.shop = shop;
  }

  /** Batches that are done one right after the other; {@code before} are blocks, by number. */
  private record Block(
      int from, int to, String stage, boolean isOwn, boolean isTrial, BitSet before) {}

  /**
   * An order of blocks and how it goes.
   *
   * @param delay how much later a step is done for waits before it, in minutes of work, on average
   */
  private record Order(
      List<Integer> blocks, int end, int idle, int delay, int parts, List<Rest> rests) {
    /** Whether it is worth its further headings. */
    boolean isBetterThan(Order other) {
      int sooner = other.end - end;
      int saved = other.idle - idle;
      int price = REAL_WAIT * Math.max(0, parts - other.parts);
      return sooner == 0 && saved == 0
          ? delay < other.delay && other.delay - delay >= price
          : sooner >= 0 && sooner + saved > 0 && Math.max(sooner, saved) >= price;
    }

    /** Whether it saves more, or as much with fewer headings. */
    boolean isPreferredTo(Order other) {
      if (end != other.end) {
        return end < other.end;
      }
      if (idle != other.idle) {
        return idle < other.idle;
      }
      return delay != other.delay ? delay < other.delay : parts < other.parts;
    }
  }

  List<List<Task>> of(List<List<Task>> batches) {
    List<Precedence> precedence = Precedence.between(batches, links);
    List<Step> made = steps.of(batches);
    if (made.stream().allMatch(step -> step.waitMinutes() == 0)) {
      return batches;
    }
    blocks = blocks(batches, made, precedence);
    WorkDay day = WorkDay.ofHours(shop.hoursPerDay());
    // The later coats of a step count as part of its wait here, see Work.of: the schedule places
    // them.
    List<Work> works = made.stream().map(Work::of).toList();
    maker = new OneMaker(day, shop.clamps(), works, Lag.of(precedence, works));
    Order order = order(IntStream.range(0, blocks.size()).boxed().toList());
    for (Optional<Order> better = better(order); better.isPresent(); better = better(order)) {
      order = better.get();
    }
    return order.blocks().stream()
        .map(blocks::get)
        .flatMap(block -> batches.subList(block.from(), block.to()).stream())
        .toList();
  }

  private List<Block> blocks(
      List<List<Task>> batches, List<Step> made, List<Precedence> precedence) {
    List<Block> found = new ArrayList<>();
    int[] blockOf = new int[batches.size()];
    for (int from = 0, to; from < batches.size(); from = to) {
      to = from + 1;
      while (to < batches.size() && steps.goesOn(batches.get(to - 1), batches.get(to))) {
        to++;
      }
      for (int i = from; i < to; i++) {
        blockOf[i] = found.size();
      }
      boolean isOwn = batches.get(from).getFirst().own().isPresent();
      String stage = made.get(from).stage().title().orElse(made.get(from).stage().key());
      boolean isTrial = made.get(from).verb() == Verb.TEST;
      found.add(new Block(from, to, isOwn + stage, isOwn, isTrial, new BitSet()));
    }
    for (Precedence each : precedence) {
      found.get(blockOf[each.after() - 1]).before().set(blockOf[each.before() - 1]);
    }
    for (int i = 0; i < found.size(); i++) {
      found.get(i).before().clear(i);
    }
    return found;
  }

  private Order order(List<Integer> places) {
    int[] works =
        places.stream()
            .map(blocks::get)
            .flatMapToInt(block -> IntStream.range(block.from(), block.to()))
            .toArray();
    Run run = maker.run(works);
    int parts = 1;
    for (int i = 1; i < places.size(); i++) {
      parts += stage(places, i).equals(stage(places, i - 1)) ? 0 : 1;
    }
    return new Order(places, run.end(), run.idleMinutes(), delay(run, works), parts, run.rests());
  }

  private static int delay(Run run, int[] works) {
    int delay = 0;
    for (Rest rest : run.rests()) {
      int place = IntStream.range(0, works.length).filter(i -> works[i] == rest.work()).sum();
      delay += rest.minutes() * (works.length - place);
    }
    return delay / works.length;
  }

  private String stage(List<Integer> places, int at) {
    return blocks.get(places.get(at)).stage();
  }

  private Optional<Order> better(Order order) {
    Order best = order;
    for (Rest rest : order.rests()) {
      for (List<Integer> places : moved(order.blocks(), rest)) {
        Order other = order(places);
        if (other.isBetterThan(order) && (best == order || other.isPreferredTo(best))) {
          best = other;
        }
      }
    }
    return best == order ? Optional.empty() : Optional.of(best);
  }

  /** Orders in which a wait may be shorter; what dries may go to before any stage by itself. */
  private List<List<Integer>> moved(List<Integer> places, Rest rest) {
    int gap = places.indexOf(blockOf(rest.work()));
    int dries = places.indexOf(blockOf(rest.awaited()));
    List<List<Integer>> moved = new ArrayList<>();
    sooner(places, dries).forEach(moved::add);
    for (int to = dries - 1; to >= 0 && canMove(places, dries, to); to--) {
      if (to == 0 || !stage(places, to - 1).equals(stage(places, to))) {
        moved.add(moved(places, dries, to));
      }
    }
    for (int from = 0; from < places.size(); from++) {
      if (from != gap && from != dries && canMove(places, from, gap)) {
        moved.add(moved(places, from, gap));
      }
    }
    return moved;
  }

  private int blockOf(int work) {
    return IntStream.range(0, blocks.size())
        .filter(i -> blocks.get(i).from() <= work && work < blocks.get(i).to())
        .findFirst()
        .orElseThrow();
  }

  /** Orders in which what dries, with all that it needs, comes sooner within its stage. */
  private List<List<Integer>> sooner(List<Integer> places, int dries) {
    int first = dries;
    while (first > 0 && stage(places, first - 1).equals(stage(places, dries))) {
      first--;
    }
    List<Integer> group = new ArrayList<>();
    BitSet needed = new BitSet();
    needed.set(places.get(dries));
    for (int at = dries; at >= first; at--) {
      if (needed.get(places.get(at))) {
        group.addFirst(places.get(at));
        needed.or(blocks.get(places.get(at)).before());
      }
    }
    if (group.stream().anyMatch(each -> blocks.get(each).isOwn())) {
      return List.of();
    }
    List<List<Integer>> orders = new ArrayList<>();
    for (int to = dries - 1; to >= first; to--) {
      List<Integer> order = new ArrayList<>(places.subList(0, to));
      group.stream().filter(each -> !order.contains(each)).forEach(order::add);
      places.stream().filter(each -> !order.contains(each)).forEach(order::add);
      if (!order.equals(places)) {
        orders.add(order);
      }
    }
    return orders;
  }

  /** Whether a block can go to another place, with all needs kept and no own stage torn. */
  private boolean canMove(List<Integer> places, int from, int to) {
    Block block = blocks.get(places.get(from));
    if (block.isOwn() || isInOwnStage(places, from, to)) {
      return false;
    }
    if (from > to) {
      return places.subList(to, from).stream().noneMatch(block.before()::get);
    }
    return !block.isTrial()
        && places.subList(from + 1, to).stream()
            .noneMatch(each -> blocks.get(each).before().get(places.get(from)));
  }

  private boolean isInOwnStage(List<Integer> places, int from, int to) {
    int left = to - 1 == from ? to - 2 : to - 1;
    return left >= 0
        && blocks.get(places.get(to)).isOwn()
        && stage(places, left).equals(stage(places, to));
  }

  private static List<Integer> moved(List<Integer> places, int from, int to) {
    List<Integer> moved = new ArrayList<>(places);
    Integer block = moved.remove(from);
    moved.add(from < to ? to - 1 : to, block);
    return moved;
  }
}
