package storyrod.layout.search;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import storyrod.layout.Budget;
import storyrod.layout.Jobs;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutJob.Trim;
import storyrod.layout.LayoutPlan;

/**
 * Lays out the published instance sets in a folder and prints a table: each set's value beside the
 * best known one. A set NAME has three files: NAME.items.csv, NAME.stock.csv and NAME.best.csv.
 *
 * <pre>PublicSets FOLDER [SECONDS [SET...]]</pre>
 *
 * <p>Seconds are steps of search, so that a busy machine gives the same table; the time beside them
 * is what the processor took. Where no best value is published the use of the stock stands in for
 * it ({@link PublishedUse}), and where none is published either, the lower bound.
 *
 * <p>With {@code -Dstop=SECONDS} each instance is told to stop after so much time of the processor
 * instead, and the last column says how long the slowest of a set went on.
 */
final class PublicSets {
  /** Variants that other cutting rules belong to: not cut right across, or in three stages. */
  private static final Set<String> LEFT_OUT = Set.of("OF", "RF", "O3H", "R3H");

  private final Path folder;
  private final double seconds;
  private final boolean each;
  private final double stop;

  private PublicSets(Path folder, double seconds) {
    this.folder = folder;
    this.seconds = seconds;
    this.each = Boolean.getBoolean("each");
    this.stop = Double.parseDouble(System.getProperty("stop", "0"));
  }

  /** Runs the sets named, or all in the folder. */
  public static void main(String[] args) throws IOException {
    double seconds = args.length > 1 ? Double.parseDouble(args[1]) : 2;
    PublicSets sets = new PublicSets(Path.of(args[0]), seconds);
    List<String> names = args.length > 2 ? List.of(args).subList(2, args.length) : sets.names();
    System.out.println(
        "set variant instances value best ratio proved reached most-over cpu-seconds longest");
    for (String name : names) {
      sets.run(name);
    }
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".items.csv"))
          .map(name -> name.substring(0, name.indexOf('.')))
          .sorted()
          .toList();
    }
  }

  /** The lines of a file after its head, as fields, by the instance in the first one. */
  private Map<String, List<String[]>> read(String file) throws IOException {
    Map<String, List<String[]>> rows = new LinkedHashMap<>();
    List<String> lines = Files.readAllLines(folder.resolve(file));
    for (String line : lines.subList(1, lines.size())) {
      String[] fields = line.split(",");
      rows.computeIfAbsent(fields[0], instance -> new ArrayList<>()).add(fields);
    }
    return rows;
  }

  private void run(String set) throws IOException {
    Map<String, List<String[]>> items = read(set + ".items.csv");
    Map<String, List<String[]>> stock = read(set + ".stock.csv");
    Map<String, List<String[]>> best = read(set + ".best.csv");
    Set<String> variants = new TreeSet<>();
    best.values().forEach(rows -> rows.forEach(row -> variants.add(row[1])));
    variants.removeAll(LEFT_OUT);
    for (String variant : variants.isEmpty() ? Set.of("OG-area") : variants) {
      Row row = new Row(set, variant);
      for (String instance : items.keySet()) {
        LayoutJob job = job(items.get(instance), stock.get(instance), variant);
        String[] known =
            best.getOrDefault(instance, List.of()).stream()
                .filter(fields -> fields[1].equals(variant))
                .findFirst()
                .orElse(new String[] {instance, variant, "", "0"});
        row.add(instance, job, known(known, items.get(instance)));
      }
      row.print();
    }
  }

  private static long known(String[] best, List<String[]> items) {
    return best[2].isEmpty()
        ? PublishedUse.stock(best[0], items).orElse(Long.parseLong(best[3]))
        : Long.parseLong(best[2]);
  }

  private Budget budget() {
    if (stop == 0) {
      return Budget.ofSteps((long) (seconds * Budget.STEPS_A_SECOND));
    }
    long end = processorNanos() + (long) (stop * 1e9);
    return new Budget(Long.MAX_VALUE, 1, () -> processorNanos() > end);
  }

  private static long processorNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  static LayoutJob job(List<String[]> items, List<String[]> stock, String variant) {
    boolean mayTurn = !variant.startsWith("O") && !variant.startsWith("1");
    List<Blank> blanks =
        items.stream()
            .map(
                f ->
                    new Blank(
                        f[1],
                        Jobs.mm(Double.parseDouble(f[2])),
                        Jobs.mm(Double.parseDouble(f[3])),
                        Integer.parseInt(f[4]),
                        mayTurn && f[5].equals("0")))
            .toList();
    boolean cost = variant.endsWith("-cost") || variant.endsWith("-area");
    return new LayoutJob(
        blanks,
        stock.stream().map(PublicSets::stock).toList(),
        Jobs.mm(Double.parseDouble(stock.getFirst()[6])),
        cost ? Least.COST : Least.PIECES);
  }

  private static Stock stock(String[] f) {
    Trim trim =
        new Trim(
            Jobs.mm(Double.parseDouble(f[7])),
            Jobs.mm(Double.parseDouble(f[8])),
            Jobs.mm(Double.parseDouble(f[9])),
            Jobs.mm(Double.parseDouble(f[10])));
    return new Stock(
        f[1],
        Jobs.mm(Double.parseDouble(f[2])),
        Jobs.mm(Double.parseDouble(f[3])),
        Integer.parseInt(f[4]),
        Long.parseLong(f[5]),
        trim,
        List.of());
  }

  /** One line of the table, as its instances are added up. */
  private final class Row {
    private final String name;
    private int instances;
    private long value;
    private long best;
    private int proved;
    private int reached;
    private long mostOver;
    private long nanos;
    private long longest;

    Row(String set, String variant) {
      name = set + " " + variant;
    }

    void add(String instance, LayoutJob job, long known) {
      long before = processorNanos();
      LayoutPlan plan = Layouts.plan(job, budget());
      long taken = processorNanos() - before;
      longest = Math.max(longest, taken);
      if (!plan.missing().isEmpty()) {
        throw new IllegalStateException(instance + " lacks " + plan.missing());
      }
      long beside = known > 0 ? known : plan.lowerBound();
      nanos += taken;
      instances++;
      value += plan.value();
      best += beside;
      proved += plan.proved() ? 1 : 0;
      reached += plan.value() <= beside ? 1 : 0;
      mostOver = Math.max(mostOver, plan.value() - beside);
      if (each) {
        System.out.printf(
            "  %s value %d best %d bound %d cpu %.2f%n",
            instance, plan.value(), beside, plan.lowerBound(), taken / 1e9);
      }
    }

    void print() {
      System.out.printf(
          "%s %d %d %d %.4f %d%% %d%% %d %.1f %.2f%n",
          name,
          instances,
          value,
          best,
          value / (double) best,
          100 * proved / instances,
          100 * reached / instances,
          mostOver,
          nanos / 1e9,
          longest / 1e9);
    }
  }
}
