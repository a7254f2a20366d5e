package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** What a finish does is seen on an offcut, sanded as the piece is. */
final class TestBeforeFinishing implements Rule {
  @Override
  public String key() {
    return "test-before-finishing";
  }

  @Override
  public String reason() {
    return "a finish is tried on an offcut of the same wood before it goes on the piece";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.all(Verb.TEST)
        .flatMap(
            test ->
                Stream.of(Verb.PRE_FINISH, Verb.FINISH)
                    .flatMap(job::all)
                    .map(finish -> need(test.name(), finish.name())))
        .toList();
  }
}
