package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.rule.Job;
import storyrod.description.Diagnostic;
import storyrod.piece.Joint;
import storyrod.piece.Part;

/**
 * Finds screws that no driver reaches when they are driven: the line of each, outwards from its
 * hole, is held against the wood of all that stands by then ({@link Driving}). The order has been
 * chosen to leave these lines clear where it can be.
 */
final class DriverReach {
  private final Job job;
  private final Driving driving;

  DriverReach(Job job) {
    this.job = job;
    this.driving = job.reach().driving();
  }

  List<Diagnostic> findings() {
    List<Diagnostic> findings = new ArrayList<>();
    for (Placing placing : job.placings()) {
      placing.closes().stream()
          .flatMap(joint -> finding(joint, there(placing)).stream())
          .findFirst()
          .ifPresent(findings::add);
    }
    return findings;
  }

  /** What stands when a unit is fixed, part by part, with the unit itself. */
  private static List<String> there(Placing placing) {
    return Stream.concat(placing.standing().stream(), placing.unit().partNames().stream()).toList();
  }

  private Optional<Diagnostic> finding(Joint joint, List<String> there) {
    return driving.inTheWay(joint).stream()
        .filter(there::contains)
        .findFirst()
        .map(part -> told(joint, job.piece().part(part)));
  }

  private Diagnostic told(Joint joint, Part inTheWay) {
    String screws = "the screws of `" + joint.first() + "` to `" + joint.second() + "`";
    return Diagnostic.advice(
            "driver-blocked",
            joint.at(),
            screws
                + " cannot be driven: `"
                + inTheWay.name()
                + "` stands in the line of the driver")
        .also(inTheWay.at(), "`" + inTheWay.name() + "` is there by then")
        .hint(wayOut(joint, inTheWay.name()));
  }

  private String wayOut(Joint joint, String inTheWay) {
    String others = "drive them from the other side, or see that a right-angle driver finds room";
    return wouldBlock(joint, inTheWay)
        ? "no order helps, for the screws of `"
            + inTheWay
            + "` have the same fault if it comes later: "
            + others
        : "fit `" + inTheWay + "` after them, " + others;
  }

  /** Whether what is in the way could not be screwed on later, past what this joint holds. */
  private boolean wouldBlock(Joint joint, String inTheWay) {
    return job.piece().joints().stream()
        .filter(each -> each.first().equals(inTheWay) || each.second().equals(inTheWay))
        .anyMatch(
            each ->
                driving.inTheWay(each).contains(joint.first())
                    || driving.inTheWay(each).contains(joint.second()));
  }
}
