package storyrod.build;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.description.HardwareEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.piece.Dovetails;
import storyrod.piece.Joint;
import storyrod.piece.KeptBoard;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;
import storyrod.words.Words;

/**
 * What is special about an operation, in words such as {@code mill-solid} or {@code fit-glue}: by
 * these the tables give times, tools and cautions, and the templates choose sentences.
 */
public final class Traits {
  /** Wider than this, or longer, a panel is moved over no jointer, sled or saw (from memory). */
  private static final Length WIDEST_ON_MACHINES = Length.inches(24);

  private static final Length LONGEST_ON_MACHINES = Length.inches(48);

  private final Piece piece;
  private final Set<String> fronts;
  private final Set<String> loose;

  public Traits(Piece piece) {
    this.piece = piece;
    this.fronts = Fronts.of(piece);
    this.loose = Nesting.of(piece).loose();
  }

  /** The traits of an operation; of fittings and mountings the one that names it best first. */
  public List<String> of(Operation operation) {
    return switch (operation.verb()) {
      case CHOOSE -> List.of(isSheet(part(operation)) ? "choose-sheet" : "choose-boards");
      case MARK -> List.of("mark");
      case MILL -> milling(part(operation));
      case BLANK -> levelled("blank-" + stuff(part(operation)), part(operation));
      case KEEP -> List.of("keep-" + board(operation).method().word());
      case REJOIN -> List.of("rejoin");
      case SIZE -> sized(part(operation));
      case CUT, DRILL, TRIM -> new CutTraits(piece).of(part(operation), operation.cuts());
      case SAND -> List.of("sand");
      case FIT -> fitting(operation);
      case DRY_FIT -> dryFitting(operation);
      case TRIAL_FIT ->
          List.of(
              Trials.asksFor(piece, operation.target())
                  ? "trial-" + kind(operation.target())
                  : "trial-lid");
      case MOUNT -> mounting(operation.target());
      case TEST -> isOiled() ? List.of("test-finish", "test-oil") : List.of("test-finish");
      case PRE_FINISH -> preFinishing(operation);
      case FINISH -> finishing("finish");
    };
  }

  /** Whether a part is glued up from several boards. */
  public boolean isPanel(Part part) {
    return isPanel(piece, part);
  }

  public static boolean isPanel(Piece piece, Part part) {
    return piece.isPanel(part);
  }

  public static boolean isSheet(Part part) {
    return part.stock().kind() == StockKind.SHEET;
  }

  /** Layers of staves are glued up twice, and the glue hardens each time. */
  private List<String> milling(Part part) {
    if (piece.isLaminated(part)) {
      return piece.isStaved(part)
          ? List.of("mill-layers", "mill-staved-layers")
          : List.of("mill-layers");
    }
    return List.of(isPanel(part) ? "mill-panel" : "mill-solid");
  }

  /** What is made for joints is small, and cut off a strip. */
  private List<String> sized(Part part) {
    List<String> traits = levelled(sizing(part), part);
    return piece.isMade(part)
        ? Stream.concat(traits.stream(), Stream.of("size-made")).toList()
        : traits;
  }

  private String sizing(Part part) {
    if (piece.keptAs(part.name()).isPresent()) {
      return "size-kept";
    }
    boolean rejoined = piece.keptBoard(part.name()).filter(KeptBoard::isSawn).isPresent();
    return rejoined
        ? "size-rejoined"
        : "size-"
            + (piece.isLaminated(part)
                ? "layers"
                : (isLargePanel(part) ? "large-" : "") + stuff(part));
  }

  /** A panel goes through the planer, or is levelled by hand where it is too wide for that. */
  private List<String> levelled(String trait, Part part) {
    if (!isPanel(part) || trait.equals("size-kept") || trait.equals("size-rejoined")) {
      return List.of(trait);
    }
    boolean isTooWide = part.finishedWidth().isLongerThan(piece.description().shop().planerWidth());
    return List.of(isTooWide ? "level-panel" : "plane-panel", trait);
  }

  private String stuff(Part part) {
    return isSheet(part) ? "sheet" : isPanel(part) ? "panel" : "solid";
  }

  /** Whether saw and router are led over a panel, and not the panel over machines. */
  public boolean isLargePanel(Part part) {
    return isLargePanel(piece, part);
  }

  static boolean isLargePanel(Piece piece, Part part) {
    return isPanel(piece, part)
        && (part.finishedWidth().isLongerThan(WIDEST_ON_MACHINES)
            || part.finishedLength().isLongerThan(LONGEST_ON_MACHINES));
  }

  private KeptBoard board(Operation operation) {
    return piece.keptBoard(operation.target()).orElseThrow();
  }

  private List<String> fitting(Operation operation) {
    Set<String> traits = new LinkedHashSet<>();
    if (fronts.contains(operation.target())) {
      traits.addAll(new FrontTraits(piece).of(operation));
    }
    if (operation.joints().stream().anyMatch(piece::isClamped)) {
      traits.add("fit-glue");
      if (operation.joints().stream().anyMatch(this::isPressed)) {
        traits.add("fit-clamped");
      }
    } else if (operation.joints().stream().anyMatch(Joint::glued)) {
      traits.add("fit-glue-held");
    }
    if (operation.joints().stream().anyMatch(this::isMitred)) {
      traits.add("fit-mitre");
    }
    if (operation.joints().stream().anyMatch(this::isSplined)) {
      traits.add("fit-spline");
    }
    if (operation.joints().stream().anyMatch(this::isTailed)) {
      traits.add("fit-tails");
    }
    operation.joints().stream()
        .flatMap(joint -> joint.fasteners().stream())
        .forEach(each -> traits.add("fit-" + kind(each.item())));
    if (operation.joints().stream().anyMatch(joint -> !joint.holding())) {
      traits.add("fit-panel");
    }
    if (operation.joints().stream().anyMatch(this::isSlotted)) {
      traits.add("fit-slotted");
    }
    if (operation.joints().stream().anyMatch(this::isPegged)) {
      traits.add("fit-pegged");
    }
    if (operation.joints().stream().anyMatch(Joint::slides)) {
      traits.add("fit-lid");
    }
    if (traits.isEmpty()) {
      traits.add(operation.joints().isEmpty() ? alone(operation) : "fit-dry");
    }
    return List.copyOf(traits);
  }

  private List<String> dryFitting(Operation operation) {
    boolean isClamped =
        piece.joints().stream()
            .filter(joint -> operation.parts().contains(joint.first()))
            .filter(joint -> operation.parts().contains(joint.second()))
            .anyMatch(joint -> joint.glued() && piece.isClamped(joint));
    return isClamped ? List.of("dry-fit", "dry-fit-clamped") : List.of("dry-fit");
  }

  /** Whether clamps press it: slots on edge that cross hold each other. */
  private boolean isPressed(Joint joint) {
    return piece.isClamped(joint) && !ClampsInUse.isLappedOnEdge(piece, joint);
  }

  private boolean isMitred(Joint joint) {
    return joint.glued()
        && piece.part(joint.first()).cuts().stream()
            .anyMatch(cut -> cut instanceof Slanted.Slope && cut.at().equals(joint.at()));
  }

  /** Whether splines lie in it whose ends stand out of a frame until they are trimmed. */
  private boolean isSplined(Joint joint) {
    return joint.glued()
        && piece.part(joint.first()).cuts(SplineSlot.class).stream()
            .anyMatch(cut -> cut.at().equals(joint.at()));
  }

  /** Whether it is closed across tails, which go home only by blows. */
  private boolean isTailed(Joint joint) {
    return joint.glued()
        && piece.part(joint.first()).cuts(Dovetails.class).stream()
            .anyMatch(cut -> cut.at().equals(joint.at()));
  }

  /** Whether its fasteners go through slots, in which they let a part move. */
  private boolean isSlotted(Joint joint) {
    return joint
        .driven()
        .map(driven -> piece.part(driven.part()))
        .filter(
            part ->
                part.cuts(Slots.class).stream().anyMatch(slots -> slots.at().equals(joint.at())))
        .isPresent();
  }

  private boolean isPegged(Joint joint) {
    return isPegged(piece, joint);
  }

  /** Whether pegs hold it, which do not draw it home as screws do. */
  static boolean isPegged(Piece piece, Joint joint) {
    return !joint.glued()
        && piece.part(joint.second()).cuts().stream()
            .anyMatch(cut -> cut.term().equals("peg hole") && cut.at().equals(joint.at()));
  }

  private String alone(Operation operation) {
    if (!loose.contains(operation.target())) {
      return "fit-first";
    }
    return isDoor(operation) ? "fit-door" : "fit-loose";
  }

  /** Whether it is hung on hinges. */
  private boolean isDoor(Operation operation) {
    return piece.description().hardware().stream()
        .filter(entry -> piece.kind(entry.item().value()).isHinge())
        .flatMap(entry -> entry.parts().stream())
        .anyMatch(part -> operation.parts().contains(part.value()));
  }

  private List<String> preFinishing(Operation operation) {
    List<String> traits = finishing("pre-finish");
    boolean isMasked = !new PreFinished(piece).masked(operation.target()).isEmpty();
    return isMasked
        ? Stream.concat(traits.stream(), Stream.of("pre-finish-masked")).toList()
        : traits;
  }

  private List<String> finishing(String trait) {
    return isOiled() ? List.of(trait, "finish-oil") : List.of(trait);
  }

  /** Whether its rags can catch fire by themselves. */
  private boolean isOiled() {
    return piece.description().finish().stream()
        .map(finish -> finish.product().toLowerCase(Locale.ROOT))
        .anyMatch(
            product ->
                product.matches(".*(\\boils?\\b|linseed|tung|danish|stain|öl|firnis|beize).*"));
  }

  /** The rest of a slide's screws go in when it comes back; a hinge's holes are drilled. */
  private List<String> mounting(String item) {
    if (!Trials.asksFor(piece, item)) {
      return List.of("mount-" + kind(item));
    }
    return kind(item).endsWith("slide")
        ? List.of("mount-again", "mount-slide-again")
        : List.of("mount-again");
  }

  private String kind(String item) {
    return Words.hyphenated(piece.kind(item));
  }

  /** The entries of the hardware list that a mounting operation mounts. */
  public List<HardwareEntry> mounted(Operation operation) {
    return mounted(piece, operation).toList();
  }

  static Stream<HardwareEntry> mounted(Piece piece, Operation operation) {
    return piece.description().hardware().stream()
        .filter(entry -> entry.item().value().equals(operation.target()));
  }

  private Part part(Operation operation) {
    return piece.part(operation.parts().getFirst());
  }
}
