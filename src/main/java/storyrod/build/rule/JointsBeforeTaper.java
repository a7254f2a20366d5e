package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Slanted;

/**
 * A part is mortised, grooved and drilled while it is square, and tapered after that: a tapered
 * face lies flat on no table and is no place to measure or to clamp from (common practice). What
 * only takes an edge off comes later still, for a taper takes that edge away with the rest. So does
 * a notch come after the rabbet or dado whose end it takes away: a router runs on over whole wood.
 */
public final class JointsBeforeTaper implements Rule {
  private static final String KEY = "joints-before-taper";
  private static final List<String> EDGES = List.of("chamfer", "roundover");

  @Override
  public String key() {
    return KEY;
  }

  @Override
  public String reason() {
    return "a part is cut and drilled for its joints while its faces are square, and tapered then";
  }

  @Override
  public List<Need> needs(Job job) {
    Stream<Need> tapers =
        job.piece().parts().stream()
            .filter(JointsBeforeTaper::isTapered)
            .flatMap(part -> needs(job, part));
    Stream<Need> notches =
        job.piece().parts().stream()
            .filter(JointsBeforeTaper::isNotchedAcross)
            .map(part -> Job.name(Verb.CUT, part.name()))
            .map(cut -> need(cut, cut));
    return Stream.concat(tapers, notches).toList();
  }

  private Stream<Need> needs(Job job, Part part) {
    return Stream.of(Verb.CUT, Verb.DRILL)
        .filter(
            verb ->
                job.all(verb)
                    .filter(each -> each.target().equals(part.name()))
                    .anyMatch(each -> !isTaper(each)))
        .map(verb -> need(Job.name(verb, part.name()), Job.name(Verb.CUT, part.name())));
  }

  private static boolean isTapered(Part part) {
    return part.cuts(Slanted.Slope.class).stream()
        .anyMatch(slope -> slope.kind() == Slanted.Slope.Kind.TAPER);
  }

  /** Whether a notch takes away the end of a slot. */
  private static boolean isNotchedAcross(Part part) {
    List<Cut.Trench> trenches = part.cuts(Cut.Trench.class);
    return trenches.stream()
        .filter(JointsBeforeTaper::isNotch)
        .anyMatch(
            notch ->
                trenches.stream()
                    .filter(each -> each.forWhat().isPresent())
                    .anyMatch(each -> each.removed().overlaps(notch.removed())));
  }

  private static boolean isNotch(Cut cut) {
    return cut.term().equals("notch") && cut.forWhat().isEmpty();
  }

  private static boolean isTaper(Operation operation) {
    return operation.cuts().stream()
        .anyMatch(
            cut -> cut instanceof Slanted.Slope slope && slope.kind() == Slanted.Slope.Kind.TAPER);
  }

  /** Whether a need, of any rule, means two operations on parts that it names. */
  public static boolean means(Need need, Operation first, Operation later) {
    return !need.rule().equals(KEY) || rank(first) < rank(later);
  }

  /** Joints, then notches, then tapers, then edges; nothing is cut into an edge that is gone. */
  private static int rank(Operation operation) {
    boolean isEdge = operation.cuts().stream().anyMatch(cut -> EDGES.contains(cut.term()));
    boolean isNotch =
        !operation.cuts().isEmpty()
            && operation.cuts().stream().allMatch(JointsBeforeTaper::isNotch);
    return isEdge ? 3 : isTaper(operation) ? 2 : isNotch ? 1 : 0;
  }
}
