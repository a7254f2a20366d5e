package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Placing;

/** A part comes in on a straight line, so whatever would stand in that line comes after it. */
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
                    .filter(later -> blocks(job, later, placing))
                    .map(later -> need(Job.fit(placing), Job.fit(later))))
        .toList();
  }

  private static boolean blocks(Job job, Placing later, Placing placing) {
    return !job.reach()
        .isFree(placing.unit(), later.unit(), placing.enters().orElseThrow().opposite());
  }
}
