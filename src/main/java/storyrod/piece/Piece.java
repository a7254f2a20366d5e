package storyrod.piece;

import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.description.Description;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.description.Makeup;
import storyrod.description.PartEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;

/**
 * The piece of furniture: parts in the order of the description, marks in the order A, B, C.
 *
 * @param description what it was made from
 * @param kept the parts that are cut out of other parts
 * @param made what is cut in the shop for its joints and is no part; it has marks like the parts
 */
public record Piece(
    Description description,
    List<Part> parts,
    List<Mark> marks,
    List<Joint> joints,
    List<KeptCutout> kept,
    List<MadeItem> made) {
  /** Wider than this a board is glued up from narrower ones (common practice). */
  private static final Length WIDEST_BOARD = Length.inches(8);

  private static final Set<ItemKind> SCREWS =
      EnumSet.of(ItemKind.WOOD_SCREW, ItemKind.POCKET_SCREW);

  public Piece {
    kept = List.copyOf(kept);
    made = List.copyOf(made);
    parts = List.copyOf(parts);
    marks = List.copyOf(marks);
    joints = List.copyOf(joints);
  }

  /** A piece of which no part is cut out of another. */
  public Piece(Description description, List<Part> parts, List<Mark> marks, List<Joint> joints) {
    this(description, parts, marks, joints, List.of(), List.of());
  }

  /** The same with other solids for its parts. */
  public Piece with(List<Part> others) {
    return new Piece(description, others, marks, joints, kept, made);
  }

  /** The same for who has nothing on hand: the parts stay, also in how many staves they have. */
  public Piece asBought() {
    return new Piece(description.asBought(), parts, marks, joints, kept, made);
  }

  /** A part, or one of what is made for the joints, by its name. */
  public Part part(String name) {
    for (Part part : parts) {
      if (part.name().equals(name)) {
        return part;
      }
    }
    return madePieces()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no part " + name));
  }

  /** All that is cut from a stock: the parts, and after them what is made for the joints. */
  public List<Part> wood() {
    return made.isEmpty() ? parts : Stream.concat(parts.stream(), madePieces()).toList();
  }

  private Stream<Part> madePieces() {
    return made.stream().flatMap(each -> each.pieces().stream());
  }

  /** Whether a piece of wood is made for the joints, and is no part. */
  public boolean isMade(Part part) {
    return madePieces().anyMatch(each -> each.name().equals(part.name()));
  }

  /** What an item is if it is made in the shop; nothing if it is bought. */
  public Optional<MadeItem> made(String item) {
    return made.stream().filter(each -> each.item().equals(item)).findFirst();
  }

  public Mark mark(String mark) {
    return marks.stream()
        .filter(each -> each.mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no mark " + mark));
  }

  /** An item of hardware by its name in the description. */
  public Optional<ItemEntry> item(String name) {
    return Optional.ofNullable(description.items().get(name));
  }

  /** The kind of an item of hardware; {@code OTHER} for what is no item. */
  public ItemKind kind(String item) {
    return item(item).map(ItemEntry::kind).orElse(ItemKind.OTHER);
  }

  /**
   * Whether clamps hold a joint while its glue sets: a glued one that is not fastened, and whose
   * two parts no screws of another joint pull together.
   */
  public boolean isClamped(Joint joint) {
    return joint.glued()
        && joint.driven().isEmpty()
        && joints.stream().filter(joint::isOfSameParts).noneMatch(this::isScrewed);
  }

  private boolean isScrewed(Joint joint) {
    return joint.driven().isPresent()
        && joint.fasteners().stream().map(each -> kind(each.item())).anyMatch(SCREWS::contains);
  }

  /** How a part is cut out of another, if it is. */
  public Optional<KeptCutout> keptAs(String part) {
    return kept.stream().filter(each -> each.kept().equals(part)).findFirst();
  }

  /** A part with what is cut out of it and kept, if anything is. */
  public Optional<KeptBoard> keptBoard(String part) {
    List<KeptCutout> of = kept.stream().filter(each -> each.board().equals(part)).toList();
    return of.isEmpty() ? Optional.empty() : Optional.of(new KeptBoard(part(part), of));
  }

  /** The width of the blank that a part is made from before milling allowances. */
  public Length blankWidth(Part part) {
    return keptBoard(part.name()).map(KeptBoard::blankWidth).orElseGet(part::finishedWidth);
  }

  /** How many staves a part is glued up from, where its description or its boards say so. */
  public Optional<Integer> staves(Part part) {
    return new Staves(description).of(part, blankWidth(part));
  }

  /** How many boards lie edge to edge in a panel: the fewest, where the boards decide. */
  public int panelStaves(Part part) {
    return staves(part)
        .orElseGet(() -> (int) Math.ceilDiv(gluedWidth(part).ticks(), widestStave().ticks()));
  }

  /** How many boards lie on each other in a part; a sheet is one. */
  public int layers(Part part) {
    return isSolid(part) ? makeup(part).layers().map(Located::value).orElse(1) : 1;
  }

  /** Whether a part is glued up face to face. */
  public boolean isLaminated(Part part) {
    return layers(part) > 1;
  }

  /** How many blanks are sawn for a part: the staves of all its layers. */
  public int blanks(Part part) {
    return isSolid(part) ? staves(part).orElse(1) * layers(part) : 1;
  }

  /**
   * Whether staves are turned by their looks. Else their rings lie up and down in turn, so that the
   * panel stays flat on the whole (common practice); the rings of quarter-sawn boards stand upright
   * and do not cup them.
   */
  public boolean matchesStaves(Part part) {
    return makeup(part)
        .stavesLaid()
        .map(Makeup.MATCHED::equals)
        .orElse(part.stock().figures().quarterSawn());
  }

  private Makeup makeup(Part part) {
    return description.part(part.name()).map(PartEntry::makeup).orElse(Makeup.UNSAID);
  }

  private static boolean isSolid(Part part) {
    return part.stock().kind() == StockKind.SOLID;
  }

  /** Whether a part is glued up from several boards, edge to edge or face to face. */
  public boolean isPanel(Part part) {
    return isLaminated(part) || isStaved(part);
  }

  /** Whether a part is glued up edge to edge. */
  public boolean isStaved(Part part) {
    return isSolid(part)
        && staves(part)
            .map(count -> count > 1)
            .orElse(blankWidth(part).isLongerThan(widestStave()));
  }

  /** The widest board that is bought as one and that the planer takes. */
  public Length widestStave() {
    return WIDEST_BOARD.min(description.shop().planerWidth());
  }

  /**
   * The width of a stave when its edges are jointed: an even share of the blank, rounded up, and of
   * what is ripped off the panel when it has been glued up; the whole blank where boards decide.
   */
  public Length staveWidth(Part part) {
    return staves(part)
        .map(count -> gluedWidth(part).dividedBy(count, RoundingMode.CEILING))
        .orElseGet(() -> isLaminated(part) ? gluedWidth(part) : blankWidth(part));
  }

  /** The width of the blank when it has been glued up and not yet ripped. */
  public Length gluedWidth(Part part) {
    Length ripped =
        isPanel(part) ? description.shop().extraWidth(part.finishedLength()) : Length.ZERO;
    return blankWidth(part).plus(ripped);
  }
}
