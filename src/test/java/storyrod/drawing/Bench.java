package storyrod.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.description.About;
import storyrod.description.Description;
import storyrod.description.Located;
import storyrod.description.ShopEntry;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Joint;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A bench of 29 parts in inches, made straight from records, with an order of work. */
final class Bench {
  private static final SourceText SOURCE = new SourceText("bench.yaml", "bench");
  private static final Span AT = Span.startOf(SOURCE);
  private static final double PLY = 18 / 25.4;
  private static final double PLY12 = 12 / 25.4;
  private static final double THIN = 6.5 / 25.4;
  private static final double ASH = 0.75;
  private static final double W = 52.5;
  private static final double D = 16.5;
  private static final double TOP = 17.75;

  private final List<Part> parts = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  record Made(Piece piece, BuildPlan plan) {}

  static Made made() {
    Bench bench = new Bench();
    bench.carcase();
    bench.frame();
    bench.shelves();
    bench.drawer();
    bench.rest();
    bench.order();
    return new Made(piece(bench.parts, bench.joints), new BuildPlan(bench.steps, List.of()));
  }

  static Piece piece(List<Part> parts, List<Joint> joints) {
    List<Mark> marks = new ArrayList<>();
    for (Part part : parts) {
      if (marks.stream().noneMatch(mark -> mark.mark().equals(part.mark()))) {
        List<String> same =
            parts.stream().filter(p -> p.mark().equals(part.mark())).map(Part::name).toList();
        marks.add(new Mark(part.mark(), part.title(), part, same.size(), 0, same));
      }
    }
    return new Piece(description(), parts, marks, joints);
  }

  private void carcase() {
    double bottom = 3.25 + PLY;
    double back = D - 0.5 - THIN;
    add(
        "A left-side",
        box(0, PLY, ASH, D, 2.25, TOP),
        box(PLY - .375, PLY, ASH, D, 3.25, bottom),
        box(PLY - .25, PLY, back, back + THIN, bottom, TOP));
    add(
        "A right-side",
        box(W - PLY, W, ASH, D, 2.25, TOP),
        box(W - PLY, W - PLY + .375, ASH, D, 3.25, bottom),
        box(W - PLY, W - PLY + .25, back, back + THIN, bottom, TOP));
    add(
        "B bottom",
        box(PLY - .375, W - PLY + .375, ASH, D, 3.25, bottom),
        box(PLY + 16.5, 2 * PLY + 16.5, ASH, back, bottom - .25, bottom),
        box(W - 2 * PLY - 16.5, W - PLY - 16.5, ASH, back, bottom - .25, bottom),
        box(PLY, W - PLY, back, back + THIN, bottom - .25, bottom));
    double low = bottom - .25;
    add("C left-partition", box(PLY + 16.5, 2 * PLY + 16.5, ASH, back, low, TOP - ASH));
    add("C right-partition", box(W - 2 * PLY - 16.5, W - PLY - 16.5, ASH, back, low, TOP - ASH));
    add("D front-stretcher", box(PLY, W - PLY, ASH, ASH + 3, TOP - ASH, TOP));
    add("E back-stretcher", box(PLY, W - PLY, back - 3, back, TOP - ASH, TOP));
    add("F back", box(PLY - .25, W - PLY + .25, back, back + THIN, bottom - .25, TOP));
    bore("left-side", PLY, 1, bottom);
    bore("left-partition", PLY + 16.5, -1, bottom);
    bore("right-partition", W - PLY - 16.5, 1, bottom);
    bore("right-side", W - PLY, -1, bottom);
  }

  private void bore(String name, double x, int out, double bottom) {
    List<Cylinder> bores = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      for (double y : new double[] {ASH + 2, D - 2.7}) {
        Vector3D mouth = Vector3D.of(x, y, bottom + 3 + 1.25 * i).multiply(25.4);
        bores.add(new Cylinder(mouth, Vector3D.of(-out, 0, 0), 3.175, 9.5));
      }
    }
    parts.replaceAll(p -> p.name().equals(name) ? with(p, p.solid().bored(bores)) : p);
  }

  private void frame() {
    double low = 3.25 + PLY;
    add("G frame.left-stile", box(0, 2, 0, ASH, 2.25, TOP));
    add("G frame.right-stile", box(W - 2, W, 0, ASH, 2.25, TOP));
    add("H frame.top-rail", box(2, W - 2, 0, ASH, TOP - 2, TOP));
    add("I frame.bottom-rail", box(2, W - 2, 0, ASH, 2.25, low));
    double mid = 2 * PLY + 16.5;
    add("J frame.left-middle-stile", box(mid - 1.5, mid, 0, ASH, low, TOP - 2));
    add("J frame.right-middle-stile", box(W - mid, W - mid + 1.5, 0, ASH, low, TOP - 2));
  }

  private void shelves() {
    double z = 3.25 + PLY + 6;
    double back = D - 0.5 - THIN - .125;
    double right = W - PLY - 16.5 + .0625;
    add("K left-shelf.panel", box(PLY + .0625, PLY + 16.44, 2 * ASH + .125, back, z, z + PLY));
    add(
        "L left-shelf.edge",
        box(PLY + .0625, PLY + 16.44, ASH + .125, 2 * ASH + .125, z + PLY - 1.25, z + PLY));
    add("K right-shelf.panel", box(right, right + 16.38, 2 * ASH + .125, back, z, z + PLY));
    add(
        "L right-shelf.edge",
        box(right, right + 16.38, ASH + .125, 2 * ASH + .125, z + PLY - 1.25, z + PLY));
  }

  private void drawer() {
    double low = 3.25 + PLY;
    double left = 2 * PLY + 17;
    double right = W - left;
    double y = ASH;
    double z = low + .75;
    double in = 6 / 25.4;
    add(
        "M drawer.left-side",
        box(left, left + PLY12, y, y + 14, z, z + 9),
        box(left + in, left + PLY12, y, y + PLY12, z, z + 9),
        box(left + in, left + PLY12, y, y + 14, z + .39, z + .39 + THIN));
    add(
        "M drawer.right-side",
        box(right - PLY12, right, y, y + 14, z, z + 9),
        box(right - PLY12, right - in, y, y + PLY12, z, z + 9),
        box(right - PLY12, right - in, y, y + 14, z + .39, z + .39 + THIN));
    add("N drawer.box-front", box(left + in, right - in, y, y + PLY12, z, z + 9));
    add("O drawer.box-back", box(left + PLY12, right - PLY12, y + 14 - PLY12, y + 14, z, z + 9));
    add("P drawer.panel", box(left + in, right - in, y + in, y + 14 - in, z + .39, z + .39 + THIN));
    add("Q drawer.face", box(left - .44, right + .44, 0, ASH, low + .0625, TOP - 2.0625));
  }

  private void rest() {
    for (String name : List.of("left-front", "right-front", "left-back", "right-back")) {
      double x = name.startsWith("left") ? PLY : W - PLY - 4;
      double y = name.endsWith("front") ? ASH : D - 1.75;
      add("R " + name + "-foot", box(x, x + 4, y, y + 1.75, 0, 3.25));
    }
    add("S top", box(-.75, W + .75, -.75, D + .25, TOP, 18.5));
  }

  private void order() {
    join("frame.left-middle-stile", "frame.top-rail", Face.TOP);
    join("frame.right-middle-stile", "frame.top-rail", Face.TOP);
    join("frame.bottom-rail", "frame.left-middle-stile", Face.TOP);
    join("frame.bottom-rail", "frame.right-middle-stile", Face.TOP);
    join("frame.top-rail", "frame.left-stile", Face.LEFT);
    join("frame.bottom-rail", "frame.left-stile", Face.LEFT);
    join("frame.top-rail", "frame.right-stile", Face.RIGHT);
    join("frame.bottom-rail", "frame.right-stile", Face.RIGHT);
    join("bottom", "left-side", Face.LEFT);
    join("bottom", "right-side", Face.RIGHT);
    join("left-partition", "bottom", Face.BOTTOM);
    join("right-partition", "bottom", Face.BOTTOM);
    join("back", "left-side", Face.BOTTOM);
    join("back", "right-side", Face.BOTTOM);
    join("front-stretcher", "left-side", Face.BOTTOM);
    join("front-stretcher", "right-side", Face.BOTTOM);
    join("back-stretcher", "left-side", Face.BOTTOM);
    join("back-stretcher", "right-side", Face.BOTTOM);
    join("front-stretcher", "left-partition", Face.BOTTOM);
    join("left-side", "frame.left-stile", Face.FRONT);
    join("right-side", "frame.right-stile", Face.FRONT);
    join("bottom", "frame.bottom-rail", Face.FRONT);
    for (String name : List.of("left-front", "right-front", "left-back", "right-back")) {
      join(name + "-foot", "bottom", Face.TOP);
    }
    join("top", "front-stretcher", Face.BOTTOM);
    join("top", "back-stretcher", Face.BOTTOM);
    join("drawer.box-front", "drawer.left-side", Face.LEFT);
    join("drawer.box-back", "drawer.left-side", Face.LEFT);
    join("drawer.panel", "drawer.left-side", Face.LEFT);
    join("drawer.box-front", "drawer.right-side", Face.RIGHT);
    join("drawer.box-back", "drawer.right-side", Face.RIGHT);
    join("drawer.panel", "drawer.right-side", Face.RIGHT);
    join("drawer.box-front", "drawer.face", Face.FRONT);
    join("left-shelf.edge", "left-shelf.panel", Face.BACK);
    join("right-shelf.edge", "right-shelf.panel", Face.BACK);
    step("frame", Face.TOP, "frame.left-middle-stile", "frame.top-rail");
    step("frame", Face.TOP, "frame.right-middle-stile");
    step("frame", Face.TOP, "frame.bottom-rail");
    step("frame", Face.RIGHT, "frame.left-stile");
    step("frame", Face.LEFT, "frame.right-stile");
    step("", Face.BOTTOM, "left-partition", "bottom");
    step("", Face.BOTTOM, "right-partition");
    step("", Face.RIGHT, "left-side");
    step("", Face.LEFT, "right-side");
    step("", Face.BOTTOM, "back");
    step("", Face.BOTTOM, "back-stretcher");
    step("", Face.BOTTOM, "front-stretcher");
    unit("frame", Face.BACK);
    step("", Face.TOP, "left-front-foot");
    step("", Face.TOP, "right-front-foot");
    step("", Face.TOP, "left-back-foot");
    step("", Face.TOP, "right-back-foot");
    step("drawer", Face.LEFT, "drawer.box-front", "drawer.left-side");
    step("drawer", Face.LEFT, "drawer.box-back");
    step("drawer", Face.LEFT, "drawer.panel");
    step("drawer", Face.LEFT, "drawer.right-side");
    step("drawer", Face.BACK, "drawer.face");
    step("left-shelf", Face.BACK, "left-shelf.edge", "left-shelf.panel");
    step("right-shelf", Face.BACK, "right-shelf.edge", "right-shelf.panel");
    unit("drawer", Face.BACK);
    unit("left-shelf", Face.BACK);
    unit("right-shelf", Face.BACK);
    step("", Face.BOTTOM, "top");
  }

  private final List<String> loose = new ArrayList<>();

  private void step(String assembly, Face enters, String... names) {
    List<String> standing =
        assembly.isEmpty()
            ? List.copyOf(loose)
            : steps.stream()
                .flatMap(s -> s.newParts().stream())
                .filter(n -> n.startsWith(assembly + "."))
                .toList();
    add(names[0], List.of(names), standing, enters);
    if (assembly.isEmpty()) {
      loose.addAll(List.of(names));
    }
  }

  private void unit(String assembly, Face enters) {
    List<String> names =
        parts.stream().map(Part::name).filter(n -> n.startsWith(assembly + ".")).toList();
    add(assembly, names, List.copyOf(loose), enters);
    loose.addAll(names);
  }

  private void add(String target, List<String> names, List<String> standing, Face enters) {
    List<Operation> fits = standing.isEmpty() ? toEachOther(names) : List.of(fit(target, names));
    steps.add(
        new Step(
            steps.size() + 1,
            new Stage("fitting", Optional.empty()),
            fits,
            names,
            standing,
            Optional.of(enters),
            List.of(),
            Optional.empty(),
            Face.BOTTOM,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            5,
            0));
  }

  /** The first comes to the others, which lie ready. */
  private List<Operation> toEachOther(List<String> names) {
    List<Operation> fits = new ArrayList<>();
    names.forEach(name -> fits.add(fit(name, List.of(name))));
    List<Joint> closed =
        joints.stream()
            .filter(joint -> names.contains(joint.first()) && names.contains(joint.second()))
            .toList();
    Operation first = fits.getFirst();
    fits.set(
        0,
        new Operation(Verb.FIT, first.target(), first.parts(), List.of(), closed, List.of(), 5, 0));
    return fits;
  }

  private static Operation fit(String target, List<String> names) {
    return new Operation(Verb.FIT, target, names, List.of(), List.of(), List.of(), 5, 0);
  }

  private void add(String markAndName, Box box, Box... cuts) {
    String[] words = markAndName.split(" ");
    Solid solid = Solid.of(box).minus(Arrays.asList(cuts));
    int dot = words[1].indexOf('.');
    Optional<String> assembly =
        dot < 0 ? Optional.empty() : Optional.of(words[1].substring(0, dot));
    parts.add(
        new Part(
            words[1],
            title(words[1]),
            words[0],
            false,
            assembly,
            stock(),
            box,
            box,
            Axis.X,
            Axis.Z,
            List.of(),
            solid,
            Optional.empty(),
            AT));
  }

  private static Part with(Part p, Solid solid) {
    return new Part(
        p.name(),
        p.title(),
        p.mark(),
        false,
        p.assembly(),
        p.stock(),
        p.shoulder(),
        p.box(),
        p.length(),
        p.thickness(),
        p.cuts(),
        solid,
        p.say(),
        p.at());
  }

  private static String title(String name) {
    String last = name.substring(name.indexOf('.') + 1).replace('-', ' ');
    return last.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + last.substring(1);
  }

  private void join(String first, String second, Face entry) {
    Box one = box(first);
    Box two = box(second);
    Box contact = new Box(meet(one.x(), two.x()), meet(one.y(), two.y()), meet(one.z(), two.z()));
    joints.add(
        new Joint(
            "butt",
            first,
            entry,
            second,
            entry,
            contact,
            true,
            true,
            List.of(),
            Optional.empty(),
            AT));
  }

  private Box box(String name) {
    return parts.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow().box();
  }

  private static Range meet(Range one, Range two) {
    Length from = one.from().max(two.from());
    Length to = one.to().min(two.to());
    return to.isShorterThan(from) ? new Range(to, from) : new Range(from, to);
  }

  private static StockEntry stock() {
    return new StockEntry(
        "ash",
        AT,
        StockKind.SOLID,
        "ash",
        new Located<>(Length.mm(19), AT),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        true);
  }

  static Description description() {
    return new Description(
        SOURCE,
        new About(
            new Located<>("Bench", AT),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        new LengthFormat(Unit.INCH, 32),
        java.util.Map.of(),
        java.util.Map.of(),
        List.of(),
        List.of(),
        List.of(),
        java.util.Map.of(),
        java.util.Map.of(),
        List.of(),
        Optional.empty(),
        new ShopEntry(
            Length.mm(3), Length.mm(6), Length.mm(25), Length.mm(6), Length.mm(330), 20, 6),
        List.of());
  }

  /** A box in inches. */
  static Box box(double x0, double x1, double y0, double y1, double z0, double z1) {
    return new Box(range(x0, x1), range(y0, y1), range(z0, z1));
  }

  private static Range range(double from, double to) {
    return new Range(Length.nearest(from * 25.4), Length.nearest(to * 25.4));
  }
}
