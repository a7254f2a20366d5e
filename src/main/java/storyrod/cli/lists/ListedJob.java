package storyrod.cli.lists;

import java.util.List;
import storyrod.description.Span;
import storyrod.layout.LayoutJob;

/**
 * A job as lists have it.
 *
 * @param name the instance; empty where the lists have none
 * @param lengthsOnly whether only lengths matter
 * @param costPlaces the decimal places of costs, which the job counts in whole units; {@link
 *     #NO_COSTS} where the lists have none
 * @param partsAt where each blank of the job is listed
 * @param stockAt where each stock of the job is listed
 */
public record ListedJob(
    String name,
    LayoutJob job,
    boolean lengthsOnly,
    int costPlaces,
    List<Span> partsAt,
    List<Span> stockAt) {
  public static final int NO_COSTS = -1;

  public ListedJob {
    partsAt = List.copyOf(partsAt);
    stockAt = List.copyOf(stockAt);
  }
}
