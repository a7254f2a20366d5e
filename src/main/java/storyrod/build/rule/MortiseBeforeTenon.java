package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/**
 * A tenon is fitted to its mortise and a tongue to its groove, since it is easier to take a shaving
 * off the one than to move the sides of the other (common practice). Other cuts of the same parts
 * are free.
 */
public final class MortiseBeforeTenon implements Rule {
  private static final String KEY = "mortise-before-tenon";
  private static final List<String> TAKING =
      List.of("mortise", Cut.Trench.HAUNCH_SOCKET, "groove", "lid groove");

  @Override
  public String key() {
    return KEY;
  }

  @Override
  public String reason() {
    return "a tenon or a tongue is fitted to what it goes into";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.piece().joints().stream()
        .filter(joint -> isTenoned(job.piece(), joint))
        .map(joint -> need(Job.name(Verb.CUT, joint.second()), Job.name(Verb.CUT, joint.first())))
        .distinct()
        .toList();
  }

  private static boolean isTenoned(Piece piece, Joint joint) {
    return piece.part(joint.first()).cuts().stream()
        .anyMatch(cut -> cut instanceof Cut.Tenon && cut.isFor(joint.second()));
  }

  /** Whether a need, of any rule, means an operation when it names what comes first. */
  public static boolean meansFirst(Need need, Operation operation) {
    return !need.rule().equals(KEY)
        || operation.cuts().stream().anyMatch(cut -> TAKING.contains(cut.term()));
  }

  /** Whether a need, of any rule, means an operation when it names what comes later. */
  public static boolean meansLater(Need need, Operation operation) {
    return !need.rule().equals(KEY)
        || operation.cuts().stream().anyMatch(Cut.Tenon.class::isInstance);
  }
}
