package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/**
 * Pins are marked from the tails that go between them, so these are cut first (common practice; the
 * other way round is as good, but one order has to be kept). Other cuts of the same parts are free.
 */
public final class TailsBeforePins implements Rule {
  private static final String KEY = "tails-before-pins";

  @Override
  public String key() {
    return KEY;
  }

  @Override
  public String reason() {
    return "pins are marked from the tails that go between them";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.piece().joints().stream()
        .filter(joint -> isDovetailed(job.piece(), joint))
        .map(joint -> need(Job.name(Verb.CUT, joint.first()), Job.name(Verb.CUT, joint.second())))
        .distinct()
        .toList();
  }

  private static boolean isDovetailed(Piece piece, Joint joint) {
    return piece.part(joint.first()).cuts().stream()
        .anyMatch(cut -> isTails(cut) && cut.isFor(joint.second()));
  }

  private static boolean isTails(Cut cut) {
    return cut instanceof Dovetails row && row.isTails();
  }

  /** Whether a need, of any rule, means an operation when it names what comes first. */
  public static boolean meansFirst(Need need, Operation operation) {
    return !need.rule().equals(KEY) || operation.cuts().stream().anyMatch(TailsBeforePins::isTails);
  }

  /** Whether a need, of any rule, means an operation when it names what comes later. */
  public static boolean meansLater(Need need, Operation operation) {
    return !need.rule().equals(KEY)
        || operation.cuts().stream()
            .anyMatch(cut -> cut instanceof Dovetails row && !row.isTails());
  }
}
