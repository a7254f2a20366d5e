package storyrod.build.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;
import storyrod.piece.KeptBoard;

/** A board is taken apart, glued together again and brought to size, in this order. */
final class KeptInOrder implements Rule {
  private static final List<Verb> SAWN =
      List.of(Verb.MILL, Verb.BLANK, Verb.KEEP, Verb.REJOIN, Verb.SIZE);
  private static final List<Verb> WHOLE = List.of(Verb.MILL, Verb.SIZE, Verb.KEEP);

  @Override
  public String key() {
    return "kept-in-order";
  }

  @Override
  public String reason() {
    return "a blank is cut apart at its full width, glued together again, and sized when the glue"
        + " has cured";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.piece().parts().stream()
        .flatMap(part -> job.piece().keptBoard(part.name()).stream())
        .flatMap(board -> Stream.concat(ofBoard(job, board), ofKept(job, board)))
        .toList();
  }

  private Stream<Need> ofBoard(Job job, KeptBoard board) {
    String name = board.board().name();
    List<Verb> there =
        (board.isSawn() ? SAWN : WHOLE).stream().filter(verb -> job.has(verb, name)).toList();
    List<Need> needs = new ArrayList<>();
    for (int i = 1; i < there.size(); i++) {
      needs.add(need(Job.name(there.get(i - 1), name), Job.name(there.get(i), name)));
    }
    return needs.stream();
  }

  private Stream<Need> ofKept(Job job, KeptBoard board) {
    return board.kept().stream()
        .filter(kept -> job.has(Verb.SIZE, kept))
        .map(kept -> need(Job.name(Verb.KEEP, board.board().name()), Job.name(Verb.SIZE, kept)));
  }
}
