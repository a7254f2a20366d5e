package storyrod.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.build.BuildPlan;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;

/**
 * All drawings of a plan set.
 *
 * @param cover the piece put together
 * @param general the whole piece, its section, and each drawer and door
 * @param parts one drawing for each mark, in the order of the marks
 * @param blanks for the marks of parts out of which pieces are cut that are kept, their blanks
 * @param layouts for each sheet stock's name, one drawing a sheet
 * @param joints one drawing for each kind of joint, in the order of the joints
 * @param steps pictures of steps by their number; a step that changes nothing to see has none
 * @param slides where steps set out the slides of drawers, by the steps' numbers
 * @param templates the full-size templates, on sheets of the plan set's paper
 */
public record Drawings(
    Drawing cover,
    List<GeneralSheet> general,
    Exploded exploded,
    Map<String, Drawing> parts,
    Map<String, Drawing> blanks,
    List<JointSheet> joints,
    Map<String, List<Drawing>> layouts,
    Map<Integer, Drawing> steps,
    Map<Integer, Drawing> slides,
    List<TemplateSheets> templates) {
  public Drawings {
    templates = List.copyOf(templates);
    general = List.copyOf(general);
    joints = List.copyOf(joints);
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    blanks = Collections.unmodifiableMap(new LinkedHashMap<>(blanks));
    layouts = Collections.unmodifiableMap(new LinkedHashMap<>(layouts));
    slides = Collections.unmodifiableMap(new LinkedHashMap<>(slides));
    steps = Collections.unmodifiableMap(new LinkedHashMap<>(steps));
  }

  /** The drawings of a piece of which no part is cut out of another. */
  public Drawings(
      Drawing cover,
      Drawing exploded,
      Map<String, Drawing> parts,
      Map<String, List<Drawing>> layouts,
      Map<Integer, Drawing> steps) {
    this(
        cover,
        List.of(),
        new Exploded(exploded, Optional.empty(), List.of()),
        parts,
        Map.of(),
        List.of(),
        layouts,
        steps,
        Map.of(),
        List.of());
  }

  /** Draws all that a plan set shows, each drawing for the room that its page has. */
  public static Drawings of(Piece piece, StockPlan stock, BuildPlan build, Rooms rooms) {
    return new DrawingOffice(piece, stock, build).drawings(rooms);
  }
}
