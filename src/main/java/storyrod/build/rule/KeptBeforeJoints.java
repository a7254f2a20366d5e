package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.KeptBoard;

/** Pieces are cut out of a board, and what is left is whole again, before it gets other joints. */
final class KeptBeforeJoints implements Rule {
  private static final List<Verb> LATER = List.of(Verb.CUT, Verb.DRILL, Verb.SAND, Verb.FIT);

  @Override
  public String key() {
    return "kept-before-joints";
  }

  @Override
  public String reason() {
    return "kept pieces are cut out, and their board is whole again, before other joints are cut";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.piece().parts().stream()
        .flatMap(part -> job.piece().keptBoard(part.name()).stream())
        .flatMap(board -> needs(job, board))
        .distinct()
        .toList();
  }

  private Stream<Need> needs(Job job, KeptBoard board) {
    String name = board.board().name();
    Stream<Need> own =
        Stream.of(Verb.KEEP, Verb.REJOIN)
            .filter(verb -> job.has(verb, name))
            .flatMap(verb -> needs(job, Job.name(verb, name), name));
    Stream<Need> ofKept =
        board.kept().stream().flatMap(kept -> needs(job, Job.name(Verb.KEEP, name), kept));
    return Stream.concat(own, ofKept);
  }

  private Stream<Need> needs(Job job, String before, String part) {
    return job.operations().stream()
        .filter(each -> LATER.contains(each.verb()) && touches(each, part))
        .map(each -> need(before, each.name()));
  }

  private static boolean touches(Operation operation, String part) {
    return operation.parts().contains(part);
  }
}
