package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Cut;

/**
 * A joint that is not cut cannot be tried. Holes other than for dowels can wait, and so can a part
 * without joints of its own, which is often cut to fit what stands (common practice).
 */
final class DryFitAfterCutting implements Rule {
  @Override
  public String key() {
    return "dry-fit-after-cutting";
  }

  @Override
  public String reason() {
    return "joints are tried when all of them are cut and what is built in is together";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.all(Verb.DRY_FIT).flatMap(dry -> needs(job, dry)).distinct().toList();
  }

  private Stream<Need> needs(Job job, Operation dry) {
    Stream<String> cut =
        job.operations().stream()
            .filter(each -> isForAJoint(each) && dry.parts().containsAll(each.parts()))
            .map(Operation::name);
    Stream<String> inner =
        job.placings().stream()
            .filter(placing -> job.isBuiltIntoDry(placing.unit(), dry))
            .map(Job::fit);
    return Stream.concat(cut, inner).map(before -> need(before, dry.name()));
  }

  private static boolean isForAJoint(Operation operation) {
    return switch (operation.verb()) {
      case CUT -> true;
      case DRILL -> operation.cuts().stream().map(Cut::term).anyMatch("dowel hole"::equals);
      case MILL, BLANK, KEEP, REJOIN, SIZE, SAND, DRY_FIT, FIT, TRIM, TRIAL_FIT, MOUNT -> false;
      case CHOOSE, MARK, PRE_FINISH, TEST, FINISH -> false;
    };
  }
}
