package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.drawing.GeneralDrawing.Plan;
import storyrod.drawing.GeneralMeasures.Plate;
import storyrod.drawing.Openings.Block;
import storyrod.drawing.Seen.Region;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** What the general drawings of a piece show, before their scales are known. */
final class GeneralPlans {
  /** The letter of the one section. */
  static final String LETTER = "A";

  private final Piece piece;
  private final Words words;
  private final HungUnits units;
  private final LengthFormat format;
  private final List<Hardware> mounted;

  GeneralPlans(Piece piece, Words words) {
    this.piece = piece;
    this.words = words;
    this.units = HungUnits.of(piece);
    this.format = piece.description().printed();
    this.mounted = Hardware.mountedOn(piece);
  }

  HungUnits units() {
    return units;
  }

  /** The whole piece: its views on one drawing or on several, and its section. */
  record Whole(List<List<Plan>> arrangements, Optional<Plan> section) {}

  Whole whole() {
    List<Part> parts = piece.parts();
    List<Part> standing = units.standing();
    Box box = Extent.around(parts);
    Optional<Section> section = Section.of(parts);
    List<Elevation> views =
        Stream.of(Face.FRONT, Face.TOP, Face.RIGHT)
            .parallel()
            .map(face -> Elevation.of(parts, mounted, face))
            .toList();
    GeneralMeasures measures = measures(box, views);
    section.ifPresent(each -> addInside(measures, standing, each));
    Optional<CuttingPlane> plane = section.map(each -> new CuttingPlane(each.at(), LETTER));
    List<CutNotes.CutNote> gaps = new FrontGaps(piece, units, words).notes();
    Look look = new Look(measures.all(), gaps, plane);
    Plan front = plan("general-front", views.subList(0, 1), look);
    Stream<Plan> top =
        Stream.of(plan("general-top", views.subList(1, 2), look))
            .filter(plan -> saysMore(views.get(1), plan));
    Plan side = plan("general-side", views.subList(2, 3), look);
    return new Whole(
        List.of(
            List.of(plan("general", views, look)),
            List.of(plan("general-front-top", views.subList(0, 2), look), side),
            Stream.concat(Stream.of(front, side), top).toList()),
        section.map(each -> plan(each, measures)));
  }

  /** Whether a view has a size of its own or shows more than one board. */
  private boolean saysMore(Elevation view, Plan plan) {
    return !plan.wanted().isEmpty() || piece.parts().stream().filter(view::shows).count() > 1;
  }

  /** What may stand beside views. */
  private record Look(
      List<Wanted> wanted, List<CutNotes.CutNote> notes, Optional<CuttingPlane> plane) {}

  private Plan plan(String name, List<Elevation> views, Look look) {
    Set<Face> faces = GeneralDrawing.faces(views);
    return new Plan(
        name,
        views,
        captions(),
        look.wanted.stream().filter(each -> faces.contains(each.view())).toList(),
        look.notes.stream().filter(each -> faces.contains(each.view())).toList(),
        look.plane,
        Optional.empty(),
        List.of());
  }

  private Map<Face, String> captions() {
    Map<Face, String> captions = new EnumMap<>(Face.class);
    for (Face face : List.of(Face.FRONT, Face.TOP, Face.RIGHT)) {
      captions.put(face, words.say("general.view." + face.word()));
    }
    return captions;
  }

  private GeneralMeasures measures(Box box, List<Elevation> views) {
    List<Part> standing = units.standing();
    GeneralMeasures measures = new GeneralMeasures(box, format);
    measures.overall(Face.FRONT, Axis.X, Side.ABOVE);
    measures.overall(Face.FRONT, Axis.Z, Side.LEFT);
    measures.overall(Face.RIGHT, Axis.Y, Side.BELOW);
    Plate top = Plate.of(standing, box, Face.TOP);
    measures.thickness(Face.FRONT, top, Side.LEFT);
    measures.overhang(Face.FRONT, top, Axis.X, Side.ABOVE);
    measures.overhang(Face.RIGHT, top, Axis.Y, Side.ABOVE);
    measures.feet(Face.FRONT, top, Axis.X);
    measures.feet(Face.RIGHT, top, Axis.Y);
    for (Elevation view : views) {
      List<Part> front =
          Elevation.foremost(standing, box, view.face()).stream().filter(view::shows).toList();
      measures.openings(view.face(), front, floor(view.face()));
    }
    measures.seams(Face.TOP, top.plate(), Axis.X, Side.ABOVE);
    measures.seams(Face.TOP, top.plate(), Axis.Y, Side.LEFT);
    return measures;
  }

  /** Which side of a view the floor closes. */
  private static Set<Side> floor(Face face) {
    return face == Face.TOP ? EnumSet.noneOf(Side.class) : EnumSet.of(Side.BELOW);
  }

  /** The dimensions inside, in a list of their own so that the section shows them. */
  private void addInside(GeneralMeasures measures, List<Part> standing, Section section) {
    List<Block> blocks = section.blocks(standing);
    if (blocks.isEmpty()) {
      return;
    }
    Plate top = Plate.of(standing, Extent.around(standing), Face.TOP);
    List<Block> body = section.blocks(top.isPlate() ? top.body() : standing);
    Block plane =
        (body.isEmpty() ? blocks : body)
            .stream()
                .reduce(
                    (one, other) ->
                        new Block(one.across().around(other.across()), one.up().around(other.up())))
                .orElseThrow();
    List<FlatFace> faces =
        standing.stream()
            .filter(part -> section.solids().containsKey(part.name()))
            .flatMap(part -> section.solids().get(part.name()).faces().stream())
            .toList();
    measures.inside(new Openings(blocks, plane, EnumSet.allOf(Side.class)), faces);
  }

  private Plan plan(Section section, GeneralMeasures measures) {
    Elevation view = Elevation.of(section, mounted, Face.RIGHT);
    Map<Face, String> captions = new EnumMap<>(Face.class);
    captions.put(Face.RIGHT, words.say("general.view.section", LETTER));
    return new Plan(
        "general-section",
        List.of(view),
        captions,
        measures.allInside(),
        List.of(),
        Optional.empty(),
        Optional.of(section),
        List.of());
  }

  /**
   * A sub-assembly by its full name: overall sizes, its joints named, its parts marked. Either the
   * front leads, or what is wide and deep is seen from above first, the side beside that.
   */
  List<Plan> unit(String name) {
    Plan plan = fromTheFront(name);
    return plan.views().size() == 3 ? List.of(plan, fromAbove(plan)) : List.of(plan);
  }

  private static Plan fromAbove(Plan plan) {
    List<Elevation> views = plan.views();
    return new Plan(
        plan.name(),
        List.of(views.get(1), views.get(0), views.get(2).onItsSide()),
        plan.captions(),
        plan.wanted().stream().map(GeneralPlans::besideTop).toList(),
        plan.notes(),
        plan.plane(),
        plan.section(),
        plan.balloons());
  }

  private static Wanted besideTop(Wanted wanted) {
    return switch (wanted.view()) {
      case RIGHT -> wanted.onItsSide();
      case FRONT -> wanted.side() == Side.ABOVE ? wanted.onOtherSide() : wanted;
      default -> wanted;
    };
  }

  private Plan fromTheFront(String name) {
    List<Part> parts = units.nesting().parts(name);
    Box box = Extent.around(parts);
    boolean flat = box.size(Axis.Y).times(4).isShorterThan(box.size(Axis.X).min(box.size(Axis.Z)));
    List<Face> faces =
        flat ? List.of(Face.FRONT, Face.RIGHT) : List.of(Face.FRONT, Face.TOP, Face.RIGHT);
    List<Elevation> views = faces.stream().map(face -> Elevation.of(parts, mounted, face)).toList();
    GeneralMeasures measures = new GeneralMeasures(box, format);
    measures.overall(Face.FRONT, Axis.X, Side.ABOVE);
    measures.overall(Face.FRONT, Axis.Z, Side.LEFT);
    measures.overall(Face.RIGHT, Axis.Y, Side.BELOW);
    Plate front = Plate.of(parts, box, Face.FRONT);
    if (!flat) {
      measures.overhang(Face.TOP, front, Axis.X, Side.ABOVE);
      measures.overhang(Face.RIGHT, front, Axis.Z, Side.RIGHT);
      measures.thickness(Face.RIGHT, front, Side.BELOW);
      measures.openings(
          Face.TOP, Elevation.foremost(parts, box, Face.TOP), EnumSet.noneOf(Side.class));
    }
    measures.openings(
        Face.FRONT, Elevation.foremost(parts, box, Face.FRONT), EnumSet.noneOf(Side.class));
    return new Plan(
        "general-" + name.replace('.', '-'),
        views,
        captions(),
        measures.all(),
        new JointNotes(piece, words).of(parts, faces.contains(Face.TOP) ? Face.TOP : Face.FRONT),
        Optional.empty(),
        Optional.empty(),
        balloons(parts, views));
  }

  /** For each mark the largest region that any view shows of any of its parts. */
  private static List<GeneralDrawing.Pointer> balloons(List<Part> parts, List<Elevation> views) {
    Map<String, GeneralDrawing.Pointer> pointers = new LinkedHashMap<>();
    Map<String, Double> areas = new LinkedHashMap<>();
    for (Part part : parts) {
      for (Elevation view : views) {
        view.regions(part.name()).stream()
            .max(Comparator.comparingDouble(Region::areaMm2))
            .filter(region -> region.areaMm2() > areas.getOrDefault(part.mark(), 0.0))
            .ifPresent(
                region -> {
                  areas.put(part.mark(), region.areaMm2());
                  pointers.put(
                      part.mark(),
                      new GeneralDrawing.Pointer(part.mark(), view.face(), Tips.inside(region)));
                });
      }
    }
    return new ArrayList<>(pointers.values());
  }
}
