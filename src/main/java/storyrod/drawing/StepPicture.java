package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.drawing.Contacts.Out;
import storyrod.drawing.Contacts.Path;
import storyrod.geometry.Face;
import storyrod.geometry.Lazy;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * A step as a picture: what stands is thin and untoned in its place; what is new is strong and
 * toned, moved out against the direction in which it goes in, with a trail and an arrow to its
 * seat. The piece lies as it lies in the step. Where two moves lead in, the trail has two legs,
 * each with its own arrow. What is put together dry is shown as it stands then.
 */
final class StepPicture implements PicturedStep {
  private static final double LEAST_SHARE = 0.15;
  private static final double MOST_SHARE = 0.7;

  /** The share of a new part's or unit's outline that must be seen. */
  private static final double ENOUGH_SEEN = 0.2;

  /** The share of the way to the seat that must be seen, for the arrow. */
  private static final double ENOUGH_OF_WAY = 0.3;

  private final Piece piece;
  private final Step step;
  private final Contacts contacts;
  private final List<String> newParts;
  private final List<Part> parts;
  private final List<List<List<String>>> tiers;
  private final List<String> staying;
  private final Shot shot;
  private final StepHardware hardware;

  private StepPicture(Piece piece, Step step, StepHardware hardware) {
    this.piece = piece;
    this.step = step;
    this.contacts = new Contacts(piece);
    Nesting nesting = Nesting.of(piece);
    this.newParts = OneOfMany.shownParts(nesting, step, coming(step));
    List<String> standing = OneOfMany.shownParts(nesting, step, step.standing());
    this.parts =
        Stream.concat(newParts.stream(), standing.stream()).distinct().map(piece::part).toList();
    this.tiers = step.enters().isPresent() ? tiers(nesting, step) : List.of();
    List<String> out = tiers.stream().flatMap(List::stream).flatMap(List::stream).toList();
    this.staying = parts.stream().map(Part::name).filter(name -> !out.contains(name)).toList();
    this.hardware = hardware.into(parts);
    DrivenSides driven = DrivenSides.of(this.hardware.coming());
    this.shot = fitted(Shots.of(views(), driven, this::shot, this::whole));
  }

  /** The picture of a step, as large as a page allows; empty if the step brings no part. */
  public static Optional<Drawing> draw(Piece piece, Step step, Size page) {
    return of(() -> piece, step, StepHardware.of(step, Hardware.of(piece)))
        .map(picture -> picture.drawn(page));
  }

  /** The picture of a step before its room is known; empty if the step brings no part. */
  static Optional<StepPicture> of(Supplier<Piece> then, Step step, StepHardware hardware) {
    return coming(step).isEmpty()
        ? Optional.empty()
        : Optional.of(new StepPicture(then.get(), step, hardware));
  }

  /** The parts that a step brings; where something is put together dry, its parts in place. */
  private static List<String> coming(Step step) {
    return step.verb() == Verb.DRY_FIT ? step.targets() : step.newParts();
  }

  /** Where the parts are drawn before any is moved out: what is not together yet stands apart. */
  private Map<String, Vector3D> offsets(View view) {
    Map<String, Vector3D> offsets = new LinkedHashMap<>();
    parts.forEach(part -> offsets.put(part.name(), Vector3D.ZERO));
    if (step.verb() == Verb.DRY_FIT && step.operations().size() > 1) {
      List<List<Part>> units =
          units().stream().map(unit -> unit.stream().map(piece::part).toList()).toList();
      offsets.putAll(SideBySide.offsets(view, units));
    }
    return offsets;
  }

  @Override
  public int step() {
    return step.number();
  }

  @Override
  public double heightMm(double widthMm) {
    return inset().heightMm(widthMm);
  }

  @Override
  public Drawing drawn(Size room) {
    return inset().drawn("step-" + step.number(), room);
  }

  /** From where it is seen. */
  View view() {
    return shot.view();
  }

  private Inset inset() {
    Viewpoint from = new Viewpoint(shot.view(), step.down());
    return new Inset(shot.picture(), shot.notes(), from, Notation.of(piece), false);
  }

  /** What comes in, tier by tier; what comes to something else as one moves as one. */
  private static List<List<List<String>>> tiers(Nesting nesting, Step step) {
    return step.tiers().stream()
        .map(tier -> OneOfMany.shown(nesting, step, tier))
        .map(tier -> tier.stream().map(Operation::parts).toList())
        .toList();
  }

  private Stream<View> views() {
    return View.AROUND.stream().map(view -> view.laidOn(step.down()));
  }

  /**
   * The best with the hardware that goes in; from another side that shows as much where too little
   * of it would be seen, and opened if that is so from all sides.
   */
  private Shot fitted(Shots shots) {
    Shot most = shots.best();
    if (!Fitted.isEnough(most.picture())) {
      most =
          shots
              .asGoodAs(most)
              .max(Comparator.comparingDouble(each -> Fitted.share(each.picture())))
              .orElse(most);
    }
    return most.with(most.fitted(newParts.size(), marked()).clear(most.picture()).ready());
  }

  private Shot whole(Shot shot) {
    return hardware.coming().isEmpty()
        ? shot
        : shot.with(shot.fitted(newParts.size(), marked()).whole(hardware.coming()));
  }

  private Shot shot(View view) {
    Map<String, Vector3D> offsets = offsets(view);
    List<List<Path>> out = step.enters().isPresent() ? moveOut(view, offsets) : List.of();
    BuiltApart built = BuiltApart.of(piece, step, List.copyOf(offsets.keySet()));
    Map<String, Vector3D> apart = built.offsets(view, offsets);
    apart.forEach((part, by) -> offsets.merge(part, by, Vector3D::add));
    List<List<Path>> ways = BuiltApart.moved(out, apart);
    Scene scene = Scene.of(parts, offsets).wearing(hardware.on());
    Picture picture = Picture.of(scene, parts, newParts.size(), view, marked());
    List<Path> trails = ways.stream().flatMap(List::stream).toList();
    Sight sight =
        new Sight(
            new Lazy<>(() -> Math.min(1, leastSeen(picture, view) / ENOUGH_SEEN)),
            Math.min(1, picture.leastSeen(ways, view) / ENOUGH_OF_WAY));
    Picture.Notes notes =
        new Picture.Notes(
            trails, ways, marked(), step.firstMove().isPresent(), true, built.names());
    return new Shot(view, scene, picture, notes, sight);
  }

  /** Moves each tier out past the one before it. */
  private List<List<Path>> moveOut(View view, Map<String, Vector3D> offsets) {
    if (staying.isEmpty()) {
      return List.of();
    }
    double diagonal = Extent.diagonalMm(Extent.around(parts));
    Clearance clearance = new Clearance(parts, view);
    List<List<Path>> paths = new ArrayList<>();
    List<String> placed = new ArrayList<>(staying);
    double from = 0;
    for (List<List<String>> tier : tiers) {
      Map<String, Vector3D> ways = new LinkedHashMap<>();
      tier.forEach(unit -> ways.putAll(contacts.waysOut(List.of(unit), placed, out(unit))));
      double least = from + LEAST_SHARE * diagonal;
      double most = from + MOST_SHARE * diagonal;
      from =
          step.firstMove()
              .map(first -> first.beside().toMm())
              .orElseGet(
                  () ->
                      clearance.distance(new Clearance.Moving(ways, placed), offsets, least, most));
      move(ways, from, offsets);
      List<List<Path>> over = tier.stream().map(unit -> path(unit, placed, offsets)).toList();
      paths.addAll(over);
      step.firstMove()
          .map(first -> first.enters().opposite().normal())
          .ifPresent(
              out -> {
                Map<String, Vector3D> straight = new LinkedHashMap<>(ways);
                straight.replaceAll((part, way) -> out);
                Clearance.Moving moving = new Clearance.Moving(straight, placed);
                double way = clearance.distance(moving, offsets, least, most);
                move(straight, way, offsets);
                over.forEach(each -> paths.add(before(each, out.multiply(way))));
              });
      tier.forEach(placed::addAll);
    }
    return paths;
  }

  /** The side to which a unit is moved out. */
  private Face out(List<String> unit) {
    return step.enters(unit).orElseThrow().opposite();
  }

  private static void move(Map<String, Vector3D> ways, double mm, Map<String, Vector3D> offsets) {
    ways.forEach((part, way) -> offsets.merge(part, way.multiply(mm), Vector3D::add));
  }

  /** The ways to where other ways begin, from as far out as their parts are drawn. */
  private static List<Path> before(List<Path> ways, Vector3D out) {
    return ways.stream().map(way -> new Path(way.part(), way.from().add(out), way.from())).toList();
  }

  /** The way of a unit to what it is joined to, as far out as that is drawn. */
  private List<Path> path(List<String> unit, List<String> placed, Map<String, Vector3D> offsets) {
    List<String> met = contacts.neighbours(unit, placed);
    Vector3D seat =
        met.stream()
            .map(offsets::get)
            .max(Comparator.comparingDouble(Vector3D::norm))
            .orElse(Vector3D.ZERO);
    List<String> nearest = met.stream().filter(part -> offsets.get(part).equals(seat)).toList();
    Out out = new Out(unit, out(unit), offsets.get(unit.getFirst()).subtract(seat));
    return contacts.paths(out, nearest.isEmpty() ? placed : nearest, offsets);
  }

  /** The new parts and what they are joined to. */
  private List<String> marked() {
    return Stream.concat(newParts.stream(), contacts.neighbours(newParts, step.standing()).stream())
        .toList();
  }

  /** The least share that is seen of the outline of any unit among the new parts. */
  private double leastSeen(Picture picture, View view) {
    return units().stream()
        .mapToDouble(unit -> picture.seenArea(unit) / outline(unit, view).area())
        .min()
        .orElse(1);
  }

  private List<List<String>> units() {
    return OneOfMany.shown(Nesting.of(piece), step, step.operations()).stream()
        .map(Operation::parts)
        .toList();
  }

  private Outline outline(List<String> unit, View view) {
    return Outline.of(unit.stream().map(name -> piece.part(name).placed()).toList(), view);
  }
}
