package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/**
 * Finds what hangs on one glued line until something else holds it too: a side glued into the dado
 * of a bottom, before the stretchers and the frame are on. Tipped or leaned on, it breaks its joint
 * like a lever. Light parts, and those held by tenons, dovetails or fasteners, do not count.
 *
 * <p>The limits are our own: of less than 2 kg the weight alone breaks nothing, and what is held
 * over a quarter of its length and of its width stands firm.
 */
public final class WeakUnits {
  private static final double LIGHT_KG = 2;
  private static final int SHARE = 4;

  private final Piece piece;
  private final Weight weight;

  public WeakUnits(Piece piece) {
    this.piece = piece;
    this.weight = new Weight(piece);
  }

  /** Parts that come in together, and the joints that this closes. */
  public record Fitted(List<String> parts, List<Joint> closes) {
    public static Fitted of(Placing placing) {
      return new Fitted(placing.unit().partNames(), placing.closes());
    }
  }

  /**
   * What is weak for a while; all by their places in an order.
   *
   * @param from what it is joined to, or itself
   * @param until what makes it firm
   */
  public record Weak(int unit, int from, int until) {}

  /** Whether parts are heavy enough to break such a joint when they are set on it. */
  public boolean isLoad(List<String> parts) {
    return weight.kg(parts) >= LIGHT_KG;
  }

  /** All that is weak in an order of one level, and becomes firm later. */
  public List<Weak> in(List<Fitted> given) {
    List<Fitted> order = closing(given);
    List<Weak> weak = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      int unit = i;
      joined(order, unit).flatMap(from -> weak(order, unit, from)).ifPresent(weak::add);
    }
    return List.copyOf(weak);
  }

  /**
   * The same order, each joint with the later of its parts: what is glued up at once may be told in
   * another order than that in which it was found to go together.
   */
  private static List<Fitted> closing(List<Fitted> order) {
    List<List<Joint>> closes = order.stream().<List<Joint>>map(e -> new ArrayList<>()).toList();
    for (int i = 0; i < order.size(); i++) {
      int at = i;
      order.get(i).closes().forEach(joint -> closes.get(later(order, joint, at)).add(joint));
    }
    return IntStream.range(0, order.size())
        .mapToObj(i -> new Fitted(order.get(i).parts(), closes.get(i)))
        .toList();
  }

  private static int later(List<Fitted> order, Joint joint, int at) {
    return IntStream.range(at, order.size())
        .filter(i -> !touching(List.of(joint), order.get(i)).isEmpty())
        .max()
        .orElse(at);
  }

  /**
   * Where in an order a unit is first joined to another: as it comes, or when the next one does.
   */
  private static Optional<Integer> joined(List<Fitted> order, int unit) {
    return IntStream.range(unit, order.size())
        .boxed()
        .filter(i -> !touching(order.get(i), order.get(unit)).isEmpty())
        .findFirst();
  }

  static List<Joint> touching(Fitted fitted, Fitted unit) {
    return touching(fitted.closes(), unit);
  }

  private static List<Joint> touching(List<Joint> joints, Fitted unit) {
    return joints.stream()
        .filter(
            joint -> unit.parts().contains(joint.first()) || unit.parts().contains(joint.second()))
        .toList();
  }

  private Optional<Weak> weak(List<Fitted> order, int unit, int from) {
    Fitted held = order.get(unit);
    List<Joint> holding = new ArrayList<>(touching(order.get(from), held));
    if (!isLoad(held.parts())
        || !holding.stream().allMatch(this::isGlueAlone)
        || isFirm(held.parts(), holding)) {
      return Optional.empty();
    }
    Ties ties = new Ties(order, held, holding);
    for (int i = from + 1; i < order.size(); i++) {
      if (ties.add(order.get(i), i) && isFirm(held.parts(), ties.holding())) {
        return Optional.of(new Weak(unit, from, i));
      }
    }
    return Optional.empty();
  }

  private boolean isGlueAlone(Joint joint) {
    return joint.glued()
        && joint.fasteners().isEmpty()
        && Stream.of(joint.first(), joint.second())
            .flatMap(part -> piece.part(part).cuts().stream())
            .filter(cut -> cut.at().equals(joint.at()))
            .noneMatch(WeakUnits::locks);
  }

  /** Whether a cut makes a joint that holds by its shape too. */
  private static boolean locks(Cut cut) {
    return cut instanceof Cut.Tenon || cut instanceof Dovetails || cut instanceof Comb;
  }

  /** Whether joints hold parts over enough of their two larger extents. */
  private boolean isFirm(List<String> parts, List<Joint> joints) {
    Box all = around(parts.stream().map(part -> piece.part(part).bounds()));
    Box held = around(joints.stream().map(Joint::contact));
    return Arrays.stream(Axis.values())
        .sorted(Comparator.comparing(all::size).reversed())
        .limit(2)
        .noneMatch(axis -> held.size(axis).times(SHARE).isShorterThan(all.size(axis)));
  }

  private static Box around(Stream<Box> boxes) {
    return boxes.reduce(Box::around).orElseThrow();
  }
}
