package storyrod.check;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A brad that hardly reaches into the second part, or comes out of it again. */
final class BradLength implements Check {
  private static final Length ENOUGH = Length.inch(1, 2);

  @Override
  public String code() {
    return "brad-length";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A brad reaches at least as far into the second part as the first one is thick,"
            + " or 1/2 in if that is less, and does not come out of it.",
        "Common practice.",
        "It takes brads to be driven square to the face and wood to be without knots.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.joints().stream()
        .flatMap(joint -> driven(piece, joint).stream())
        .flatMap(brad -> finding(piece, brad).stream())
        .toList();
  }

  /** A brad of some length, the part it is driven through and the one it ends in. */
  private record Driven(ItemEntry brad, Joint joint, Part through, Part into) {
    Axis axis() {
      return joint.entry().axis();
    }

    Length skin() {
      return through.box().size(axis());
    }

    Length bite() {
      return brad.length().orElseThrow().minus(skin());
    }

    Length room() {
      return into.box().size(axis());
    }
  }

  private static List<Driven> driven(Piece piece, Joint joint) {
    return joint.fasteners().stream()
        .map(each -> piece.description().items().get(each.item()))
        .filter(item -> item.kind() == ItemKind.BRAD && item.length().isPresent())
        .map(item -> new Driven(item, joint, piece.part(joint.first()), piece.part(joint.second())))
        .toList();
  }

  private Optional<Diagnostic> finding(Piece piece, Driven brad) {
    if (!brad.bite().isShorterThan(brad.room())) {
      return Optional.of(breaksThrough(piece, brad));
    }
    return brad.bite().isShorterThan(brad.skin().min(ENOUGH))
        ? Optional.of(tooShort(piece, brad))
        : Optional.empty();
  }

  private Diagnostic breaksThrough(Piece piece, Driven brad) {
    return Diagnostic.error(
            code(),
            brad.joint.at(),
            "%s reaches %s into %s, which is only %s thick there"
                .formatted(
                    brad.brad.name(),
                    print(piece, brad.bite()),
                    brad.into.name(),
                    print(piece, brad.room())))
        .also(brad.brad.at(), brad.brad.name() + " is defined here")
        .hint("take a brad shorter than " + print(piece, brad.skin().plus(brad.room())));
  }

  private Diagnostic tooShort(Piece piece, Driven brad) {
    String message =
        brad.bite().isPositive()
            ? "%s reaches only %s into %s"
                .formatted(brad.brad.name(), print(piece, brad.bite()), brad.into.name())
            : "%s does not reach through %s, which is %s thick there"
                .formatted(brad.brad.name(), brad.through.name(), print(piece, brad.skin()));
    Length wanted = brad.skin().plus(brad.skin().min(ENOUGH));
    Diagnostic finding =
        brad.bite().isPositive()
            ? Diagnostic.warning(code(), brad.joint.at(), message)
            : Diagnostic.error(code(), brad.joint.at(), message);
    return finding
        .also(brad.brad.at(), brad.brad.name() + " is defined here")
        .hint("take a brad of " + print(piece, wanted) + " or longer");
  }

  private static String print(Piece piece, Length length) {
    return piece.description().format().formatWithUnit(length);
  }
}
