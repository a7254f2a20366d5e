package storyrod.layout.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import storyrod.layout.Budget;
import storyrod.layout.CutList;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Missing;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.layout.LayoutReplay;
import storyrod.measure.Length;

/**
 * Blanks that are sawn as neighbours, so that the grain runs on over them. They are laid out as one
 * blank, kerfs included, and sawn apart when the rest of their piece of stock is done.
 */
public final class Neighbours {
  private final LayoutJob job;
  private final List<Group> groups;

  /** For each blank of the job that is laid out, its place in the given job; groups are behind. */
  private final List<Integer> single = new ArrayList<>();

  private Neighbours(LayoutJob job, List<Group> groups) {
    this.job = job;
    this.groups = groups;
    List<Integer> grouped = groups.stream().flatMap(group -> group.blanks().stream()).toList();
    for (int blank = 0; blank < job.blanks().size(); blank++) {
      if (!grouped.contains(blank)) {
        single.add(blank);
      }
    }
  }

  /**
   * Blanks in the order in which they follow each other.
   *
   * @param blanks their places in the job's blanks; of each there is one
   * @param endToEnd whether they follow each other along their length; else they lie side by side
   */
  public record Group(List<Integer> blanks, boolean endToEnd) {
    public Group {
      blanks = List.copyOf(blanks);
    }
  }

  /** The best layouts of a job in which these blanks stay neighbours; see {@link Layouts#plan}. */
  public static LayoutPlan plan(LayoutJob job, List<Group> groups, Budget budget) {
    if (groups.isEmpty()) {
      return Layouts.plan(job, budget);
    }
    Neighbours neighbours = new Neighbours(job, groups);
    LayoutPlan plan = neighbours.opened(Layouts.plan(neighbours.joined(), budget));
    List<String> faults = LayoutReplay.faults(job, plan);
    if (!faults.isEmpty()) {
      throw new IllegalStateException("bug: neighbours that cannot be sawn apart: " + faults);
    }
    return plan;
  }

  private LayoutJob joined() {
    List<Blank> blanks = new ArrayList<>();
    single.forEach(blank -> blanks.add(job.blanks().get(blank)));
    groups.forEach(group -> blanks.add(joined(group)));
    return new LayoutJob(blanks, job.stock(), job.kerf(), job.least());
  }

  private Blank joined(Group group) {
    List<Blank> blanks = blanks(group);
    boolean end = group.endToEnd();
    Blank first = blanks.getFirst();
    return new Blank(
        first.name(),
        end ? sum(blanks, Blank::length) : most(blanks, Blank::length),
        end ? most(blanks, Blank::width) : sum(blanks, Blank::width),
        1,
        blanks.stream().allMatch(Blank::mayTurn));
  }

  private List<Blank> blanks(Group group) {
    return group.blanks().stream().map(job.blanks()::get).toList();
  }

  private Length sum(List<Blank> blanks, Function<Blank, Length> size) {
    Length kerfs = job.kerf().times(blanks.size() - 1);
    return blanks.stream().map(size).reduce(kerfs, Length::plus);
  }

  private static Length most(List<Blank> blanks, Function<Blank, Length> size) {
    return blanks.stream().map(size).reduce(Length.ZERO, Length::max);
  }

  private LayoutPlan opened(LayoutPlan plan) {
    List<Missing> missing = new ArrayList<>();
    for (Missing each : plan.missing()) {
      blanks(each.blank())
          .forEach(blank -> missing.add(new Missing(blank, each.count(), each.fits())));
    }
    return new LayoutPlan(
        plan.pieces().stream().map(this::opened).toList(),
        missing,
        plan.value(),
        plan.lowerBound());
  }

  /** The blanks of the given job behind one that was laid out. */
  private List<Integer> blanks(int laid) {
    return isGroup(laid) ? group(laid).blanks() : List.of(single.get(laid));
  }

  private boolean isGroup(int laid) {
    return laid >= single.size();
  }

  private Group group(int laid) {
    return groups.get(laid - single.size());
  }

  private Sawn opened(Sawn sawn) {
    List<Spot> spots = new ArrayList<>();
    List<SawCut> cuts = new ArrayList<>(sawn.cuts());
    for (Spot spot : sawn.spots()) {
      if (isGroup(spot.blank())) {
        new Apart(group(spot.blank()), spot, spots, cuts).saw();
      } else {
        spots.add(new Spot(single.get(spot.blank()), spot.area(), spot.turned()));
      }
    }
    return new Sawn(sawn.stock(), spots, numbered(cuts), sawn.offcuts());
  }

  private static List<SawCut> numbered(List<SawCut> cuts) {
    CutList list = new CutList();
    cuts.forEach(
        cut ->
            list.cut(
                cut.alongLength(),
                cut.at().ticks(),
                cut.from().ticks(),
                cut.to().ticks(),
                cut.fence().ticks()));
    return list.cuts();
  }

  /** Saws the piece of one group apart. */
  private final class Apart {
    private final Group group;
    private final Spot whole;
    private final List<Spot> spots;
    private final List<SawCut> cuts;

    /** Whether the blanks follow each other along the length of the stock. */
    private final boolean alongX;

    Apart(Group group, Spot whole, List<Spot> spots, List<SawCut> cuts) {
      this.group = group;
      this.whole = whole;
      this.spots = spots;
      this.cuts = cuts;
      this.alongX = group.endToEnd() != whole.turned();
    }

    void saw() {
      Area area = whole.area();
      Length at = alongX ? area.x() : area.y();
      Length start = alongX ? area.y() : area.x();
      Length across = alongX ? area.width() : area.length();
      List<SawCut> apart = new ArrayList<>();
      List<Spot> sawn = new ArrayList<>();
      for (int blank : group.blanks()) {
        Length size = along(blank);
        apart.add(cut(!alongX, at.plus(size), start, start.plus(across), size));
        sawn.add(new Spot(blank, area(at, start, size, acrossOf(blank)), whole.turned()));
        at = at.plus(size).plus(job.kerf());
      }
      insert(apart);
      sawn.forEach(spot -> narrowed(spot, across));
      spots.addAll(sawn);
    }

    /**
     * The last of a row is sawn to a fence, as the others are, where the row is at the end of its
     * strip: then the strip is sawn up from its near edge, and no cut takes the whole row off it.
     */
    private void insert(List<SawCut> apart) {
      SawCut last = apart.getLast();
      List<SawCut> off = cuts.stream().filter(cut -> isSame(cut, last)).toList();
      if (off.isEmpty()) {
        cuts.addAll(apart.subList(0, apart.size() - 1));
      } else {
        int place = cuts.indexOf(off.getFirst());
        cuts.remove(place);
        cuts.addAll(place, apart);
      }
    }

    private static boolean isSame(SawCut one, SawCut other) {
      return one.alongLength() == other.alongLength()
          && one.at().equals(other.at())
          && one.from().equals(other.from())
          && one.to().equals(other.to());
    }

    /** Takes off what a blank is narrower than the widest of them. */
    private void narrowed(Spot spot, Length across) {
      Length size = acrossOf(spot.blank());
      if (size.isShorterThan(across)) {
        Area area = spot.area();
        Length from = alongX ? area.x() : area.y();
        Length start = alongX ? area.y() : area.x();
        cuts.add(cut(alongX, start.plus(size), from, from.plus(along(spot.blank())), size));
      }
    }

    private SawCut cut(boolean alongLength, Length at, Length from, Length to, Length fence) {
      return new SawCut(cuts.size() + 1, alongLength, at, from, to, fence);
    }

    private Length along(int blank) {
      Blank each = job.blanks().get(blank);
      return group.endToEnd() ? each.length() : each.width();
    }

    private Length acrossOf(int blank) {
      Blank each = job.blanks().get(blank);
      return group.endToEnd() ? each.width() : each.length();
    }

    private Area area(Length at, Length start, Length size, Length across) {
      return alongX ? new Area(at, start, size, across) : new Area(start, at, across, size);
    }
  }
}
