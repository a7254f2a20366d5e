package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;
import storyrod.description.ItemKind;

/** A piece is tied to the wall where it will stand, complete. */
final class StrapLast implements Rule {
  @Override
  public String key() {
    return "strap-last";
  }

  @Override
  public String reason() {
    return "a piece is tied to the wall when it is complete and stands in its place";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.all(Verb.MOUNT)
        .filter(mount -> job.kind(mount) == ItemKind.ANTI_TIP_STRAP)
        .flatMap(
            mount ->
                job.operations().stream()
                    .filter(other -> job.kind(other) != ItemKind.ANTI_TIP_STRAP)
                    .filter(other -> other.verb() == Verb.FIT || other.verb() == Verb.MOUNT)
                    .map(other -> need(other.name(), mount.name())))
        .toList();
  }
}
