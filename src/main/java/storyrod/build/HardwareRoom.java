package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.HardwareBodies.Body;
import storyrod.description.Diagnostic;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Mounted hardware, as it is drawn, that stands in wood where none was taken away or in other
 * hardware, and screws of it whose points come out. Follows from the description; that a point
 * stays under the wood is common practice, and the skin is from memory.
 *
 * <p>Let through: screws in the part that they go into, the members of slides in each other, stems
 * of feet in their part, leaves and cups of hinges, and whatever is drawn in a usual place or size
 * only: arms of hinges, catches, straps. Screws of joints are the matter of the checks.
 */
final class HardwareRoom {
  /** Less than this, in mm³, is what rounding and facets leave. */
  private static final double NOTHING_MM3 = 25;

  /** The same of thin screws, whose points meet in little room. */
  private static final double NO_SCREW_MM3 = 1;

  /** What runs less into a part is let through, for slides differ more than that. */
  private static final Length PLAY = Length.inch(1, 32);

  /** What stays in front of a point; thin sides take screws that leave hardly more. */
  private static final Length SKIN = Length.inch(1, 64);

  private final Piece piece;
  private final List<Body> bodies;

  HardwareRoom(Piece piece) {
    this.piece = piece;
    this.bodies = HardwareBodies.of(piece).all();
  }

  /** All findings, each place of one line of the list in one part told once. */
  List<Diagnostic> findings() {
    Map<List<Object>, Diagnostic> found = new LinkedHashMap<>();
    for (Body body : bodies) {
      if (body.isMounted()) {
        for (Finding each : of(body)) {
          found.putIfAbsent(each.told(), each.diagnostic());
        }
      }
    }
    return List.copyOf(found.values());
  }

  /** What is told once only, by whom it is about. */
  private record Finding(List<Object> told, Diagnostic diagnostic) {}

  private List<Finding> of(Body body) {
    List<Finding> found = new ArrayList<>();
    if (body.isScrew()) {
      found.addAll(comingOut(body));
    } else {
      found.addAll(inParts(body));
    }
    found.addAll(meeting(body));
    return found;
  }

  private List<Finding> inParts(Body body) {
    return piece.parts().stream()
        .filter(part -> !isLetIn(body, part))
        .filter(part -> body.sharedMm3(part) > NOTHING_MM3)
        .filter(part -> deep(body.bounds(), part.bounds()).isLongerThan(PLAY))
        .map(part -> new Finding(List.of("in", at(body), part.name()), inPart(body, part)))
        .toList();
  }

  /** A stem goes into a hole that is drilled when it is mounted, a pin into one that is there. */
  private static boolean isLetIn(Body body, Part part) {
    return switch (body.kind()) {
      case LEVELLING_FOOT, SHELF_PIN -> body.item().host().equals(part.name());
      default -> false;
    };
  }

  private Diagnostic inPart(Body body, Part part) {
    return Diagnostic.warning(
            "hardware-in-wood",
            at(body),
            "`%s` on `%s` stands in `%s`, up to %s on %s"
                .formatted(
                    body.item().item(),
                    body.item().host(),
                    part.name(),
                    print(deep(body.bounds(), part.bounds())),
                    thinnest(body.bounds(), part.bounds()).word()))
        .also(part.at(), part.name() + " is defined here")
        .hint("move one of them, pack the hardware out, or cut room for it");
  }

  private List<Finding> comingOut(Body screw) {
    boolean isSized = piece.item(screw.item().item()).flatMap(item -> item.length()).isPresent();
    Vector3D beyond =
        HardwareBodies.tip(screw.item()).subtract(screw.item().out().multiply(SKIN.toMm()));
    boolean isIn = piece.parts().stream().anyMatch(part -> part.placed().holds(beyond));
    return isIn || !isSized
        ? List.of()
        : List.of(
            new Finding(
                List.of("out", at(screw), screw.item().host()),
                Diagnostic.warning(
                        "screw-comes-out",
                        at(screw),
                        "the point of `%s` comes out of `%s`, or very nearly"
                            .formatted(screw.item().item(), screw.item().host()))
                    .also(
                        piece.part(screw.item().host()).at(),
                        screw.item().host() + " is defined here")
                    .hint("take a shorter screw")));
  }

  private List<Finding> meeting(Body body) {
    return bodies.stream()
        .filter(other -> other != body && !isLetThrough(body, other))
        .filter(other -> body.sharedMm3(other) > least(body, other))
        .map(other -> new Finding(pair(body, other), met(body, other)))
        .toList();
  }

  private static boolean isLetThrough(Body one, Body other) {
    return one.isOfOneLine(other) && !(one.isScrew() && other.isScrew());
  }

  private static double least(Body one, Body other) {
    return one.isScrew() || other.isScrew() ? NO_SCREW_MM3 : NOTHING_MM3;
  }

  /** The same for both, whichever is looked at first. */
  private List<Object> pair(Body one, Body other) {
    List<String> both =
        Stream.of(one, other)
            .map(each -> each.item().item() + " in " + each.item().host() + " " + at(each))
            .sorted()
            .toList();
    return List.of("meets", both);
  }

  private Diagnostic met(Body one, Body other) {
    return Diagnostic.warning(
            "hardware-meets",
            at(one),
            "`%s` in `%s` runs into `%s` in `%s`"
                .formatted(
                    one.item().item(), one.item().host(), other.item().item(), other.item().host()))
        .also(at(other), "the other one stands here")
        .hint("move one of them, or take shorter screws");
  }

  private static Span at(Body body) {
    return body.item()
        .origin()
        .entry()
        .map(entry -> entry.item().at())
        .or(() -> body.item().origin().joint().map(joint -> joint.at()))
        .orElseThrow();
  }

  private static Length deep(Box one, Box other) {
    return one.shared(other).orElseThrow().size(thinnest(one, other));
  }

  private static Axis thinnest(Box one, Box other) {
    Box both = one.shared(other).orElseThrow();
    return Arrays.stream(Axis.values()).min(Comparator.comparing(both::size)).orElseThrow();
  }

  private String print(Length length) {
    return piece.description().format().formatWithUnit(length);
  }
}
