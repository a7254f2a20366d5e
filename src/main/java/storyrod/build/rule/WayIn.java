package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;

/** A part comes in on straight lines, so whatever would stand in them comes after it. */
final class WayIn implements Rule {
  @Override
  public String key() {
    return "way-in";
  }

  @Override
  public String reason() {
    return "what comes later would stand in its way";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> placing.enters().isPresent() && !placing.tilted())
        .flatMap(
            placing ->
                job.after(placing).stream()
                    .filter(later -> job.reach().blocks(later.unit(), placing))
                    .map(later -> need(Job.fit(placing), Job.fit(later))))
        .toList();
  }
}
