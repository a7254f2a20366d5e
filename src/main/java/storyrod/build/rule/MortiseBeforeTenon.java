package storyrod.build.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Piece;
import storyrod.piece.TrenchRole;

/**
 * A tenon is fitted to its mortise and a tongue to its groove, since it is easier to take a shaving
 * off the one than to move the sides of the other (common practice); so is what an open mortise
 * sits astride. Other cuts of the same parts are free.
 */
public final class MortiseBeforeTenon implements Rule {
  private static final String KEY = "mortise-before-tenon";
  private static final List<String> TAKING =
      List.of("mortise", "open mortise", Cut.Trench.HAUNCH_SOCKET, "lid groove");

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
        .flatMap(joint -> needs(job.piece(), joint))
        .distinct()
        .toList();
  }

  private Stream<Need> needs(Piece piece, Joint joint) {
    String first = Job.name(Verb.CUT, joint.first());
    String second = Job.name(Verb.CUT, joint.second());
    return Stream.of(
            Optional.of(need(second, first)).filter(need -> isTenoned(piece, joint)),
            Optional.of(need(first, second)).filter(need -> isAstride(piece, joint)))
        .flatMap(Optional::stream);
  }

  /** Whether the first part has an open mortise for what is left of the second. */
  private static boolean isAstride(Piece piece, Joint joint) {
    return piece.part(joint.second()).cuts().stream()
        .anyMatch(cut -> isCheek(cut) && cut.isFor(joint.first()));
  }

  private static boolean isCheek(Cut cut) {
    return cut.term().equals("bridle cheek");
  }

  private static boolean isTenoned(Piece piece, Joint joint) {
    return piece.part(joint.first()).cuts().stream()
        .anyMatch(cut -> cut instanceof Cut.Tenon && cut.isFor(joint.second()));
  }

  /** Whether a need, of any rule, means an operation when it names what comes first. */
  public static boolean meansFirst(Need need, Operation operation) {
    return !need.rule().equals(KEY)
        || operation.cuts().stream().anyMatch(MortiseBeforeTenon::isTaking);
  }

  private static boolean isTaking(Cut cut) {
    return TrenchRole.GROOVE.isOf(cut) || TAKING.contains(cut.term());
  }

  /** Whether a need, of any rule, means an operation when it names what comes later. */
  public static boolean meansLater(Need need, Operation operation) {
    return !need.rule().equals(KEY)
        || operation.cuts().stream().anyMatch(cut -> cut instanceof Cut.Tenon || isCheek(cut));
  }
}
