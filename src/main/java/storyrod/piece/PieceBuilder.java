package storyrod.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import storyrod.description.AssemblyEntry;
import storyrod.description.Description;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.FaceRef;
import storyrod.description.PartEntry;
import storyrod.description.StockEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.Pose;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.JointEffect.CutIn;

/**
 * From a description to the piece:
 *
 * <ol>
 *   <li>each part becomes a blank, a box with its length and thickness, turned if it says so;
 *   <li>slanted cuts are read, and parts that are cut to a plane end there;
 *   <li>joints lengthen blanks;
 *   <li>joints and the description's own cuts cut them;
 *   <li>what is left becomes a solid;
 *   <li>equal parts and mirror images get one mark.
 * </ol>
 */
public final class PieceBuilder {
  private final Description description;
  private final Diagnostics diagnostics;
  private final Map<String, String> assemblyOf;
  private final Map<String, Blank> blanks = new LinkedHashMap<>();
  private final Map<String, List<Cut>> cuts = new LinkedHashMap<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<KeptCutout> kept = new ArrayList<>();

  private PieceBuilder(Description description, Diagnostics diagnostics) {
    this.description = description;
    this.diagnostics = diagnostics;
    this.assemblyOf = assemblyOf(description);
  }

  /** The piece, or nothing if a joint or a cut is at fault; all such faults are reported. */
  public static Optional<Piece> build(Description description, Diagnostics diagnostics) {
    PieceBuilder builder = new PieceBuilder(description, diagnostics);
    builder.layOut();
    SlantedCuts slants = SlantedCuts.read(description, builder.blanks, diagnostics);
    List<Placed> placed = builder.meetings(slants);
    builder.lengthen(placed);
    slants.on(builder.blanks).forEach(builder::addCut);
    builder.shape();
    builder.join(placed);
    builder.cut();
    placed.forEach(builder::checkContact);
    diagnostics.addAll(KeptTogether.faults(builder.kept));
    if (diagnostics.hasErrors()) {
      return Optional.empty();
    }
    Piece piece = builder.piece();
    return diagnostics.hasErrors() ? Optional.empty() : Optional.of(piece);
  }

  /** A joint that meets, before parts are lengthened. */
  private record Placed(JointType type, Entry entry, Box contact, Optional<Askew> askew) {
    /** What an extension takes along its part to reach as deep square to the other's face. */
    Length along(Extension extension) {
      return askew
          .map(each -> each.cosine(extension.face().face()))
          .map(cosine -> Length.nearest(extension.by().toMm() / cosine))
          .orElse(extension.by());
    }
  }

  private void layOut() {
    for (PartEntry part : description.parts()) {
      StockEntry stock = description.stock().get(part.stock().value());
      Box box = new Box(part.x().value(), part.y().value(), part.z().value());
      Axis length = part.grain().value();
      Axis thickness = thicknessAxis(box, length, stock);
      Pose pose = new PoseReader(diagnostics).read(part);
      blanks.put(part.name(), new Blank(part, stock, box, box, length, thickness, pose));
      cuts.put(part.name(), new ArrayList<>());
    }
  }

  private static Axis thicknessAxis(Box box, Axis length, StockEntry stock) {
    for (Axis axis : Axis.values()) {
      if (axis != length && box.size(axis).equals(stock.thickness().value())) {
        return axis;
      }
    }
    throw new IllegalStateException("bug: a part of stock " + stock.name() + " has no thickness");
  }

  private List<Placed> meetings(SlantedCuts slants) {
    Contacts contacts = new Contacts(blanks, description.format(), slants);
    List<Placed> placed = new ArrayList<>();
    for (Entry entry : description.joints()) {
      JointType type = JointTypes.named(entry.kind());
      Contacts.Found found = contacts.find(entry, type);
      found.fault().ifPresent(diagnostics::add);
      found
          .contact()
          .ifPresent(contact -> placed.add(new Placed(type, entry, contact, found.askew())));
    }
    return placed;
  }

  private void lengthen(List<Placed> placed) {
    Map<FaceRef, Length> most = new LinkedHashMap<>();
    for (Placed each : placed) {
      for (Extension extension : extensions(each)) {
        most.merge(extension.face(), each.along(extension), Length::max);
      }
    }
    most.forEach(
        (face, by) ->
            blanks.computeIfPresent(
                face.part(),
                (name, blank) -> blank.withBox(blank.box().extended(face.face(), by))));
  }

  private void shape() {
    for (Blank blank : blanks.values()) {
      new OutlineReader(blank, description.format(), diagnostics)
          .read()
          .ifPresent(cut -> addCut(new CutIn(blank.name(), cut)));
    }
  }

  private List<Extension> extensions(Placed each) {
    Blank first = blanks.get(each.type().meeting(each.entry()).part());
    Blank second = blanks.get(each.type().into(each.entry()));
    JointType.Pair parts = new JointType.Pair(first, second, description.format().unit());
    return each.type().extensions(each.entry(), parts);
  }

  private void join(List<Placed> placed) {
    Meeting.Items items = new Meeting.Items(description.items(), description.format());
    for (Placed each : placed) {
      Blank first = blanks.get(each.type().meeting(each.entry()).part());
      Blank second = blanks.get(each.type().into(each.entry()));
      JointEffect effect =
          each.type()
              .effect(
                  new Meeting(
                      each.entry(),
                      first,
                      each.type().meeting(each.entry()).face(),
                      second,
                      each.contact(),
                      each.askew(),
                      items));
      diagnostics.addAll(effect.faults());
      if (effect.faults().stream().noneMatch(Diagnostic::isError)) {
        joints.add(effect.joint().posed(first.pose(), second.pose()));
        effect.cuts().forEach(this::addCut);
      }
    }
  }

  private void cut() {
    HoleReader holes = new HoleReader(blanks, description.format(), diagnostics);
    BoxCutReader boxes = new BoxCutReader(blanks, description.format(), diagnostics);
    ShapedCutReader shapes =
        new ShapedCutReader(blanks, outlines(), description.format(), diagnostics);
    for (Entry entry : description.cuts()) {
      switch (entry.kind()) {
        case "holes" -> holes.read(entry).forEach(this::addCut);
        case "notch" -> opening(entry, boxes, shapes).ifPresent(this::addCut);
        case "cutout" -> opening(entry, boxes, shapes).ifPresent(cut -> cutOut(entry, cut));
        case "bevel", "chamfer", "mitre", "taper" -> {}
        case "slot" -> shapes.slot(entry).ifPresent(this::addCut);
        case "roundover" -> shapes.roundover(entry).ifPresent(this::addCut);
        default -> throw new IllegalStateException("bug: a cut '" + entry.kind() + "' was read");
      }
    }
  }

  private void cutOut(Entry entry, CutIn cut) {
    addCut(cut);
    if (cut.cut() instanceof Cut.Trench trench) {
      new KeptReader(blanks, description, diagnostics)
          .read(entry, trench.removed())
          .ifPresent(kept::add);
    }
  }

  private void checkContact(Placed joint) {
    FaceRef meeting = joint.type().meeting(joint.entry());
    checkContact(joint, meeting.part(), new Reached(joint.contact(), meeting.face()));
    Reached second =
        joint
            .askew()
            .map(askew -> new Reached(askew.inSecond(), askew.touchedInSecond()))
            .orElseGet(() -> new Reached(joint.contact(), meeting.face().opposite()));
    checkContact(joint, joint.type().into(joint.entry()), second);
  }

  /** Where a joint reaches a part, in that part's frame, and the face that it reaches. */
  private record Reached(Box contact, Face face) {}

  private void checkContact(Placed joint, String part, Reached at) {
    ContactLeft.fault(joint.entry(), blanks.get(part), cuts.get(part), at.contact(), at.face())
        .ifPresent(diagnostics::add);
  }

  private static Optional<CutIn> opening(Entry entry, BoxCutReader boxes, ShapedCutReader shapes) {
    if (entry.has("points")) {
      return shapes.path(entry);
    }
    Optional<CutIn> box = boxes.read(entry);
    return entry.has("radius") ? box.flatMap(cut -> shapes.rounded(entry, cut)) : box;
  }

  private Map<String, Contour> outlines() {
    Map<String, Contour> outlines = new LinkedHashMap<>();
    cuts.forEach(
        (name, own) -> {
          for (Cut cut : own) {
            if (cut instanceof Cut.Shaped shaped && !shaped.inside()) {
              outlines.put(name, shaped.contour());
            }
          }
        });
    return outlines;
  }

  private void addCut(CutIn cut) {
    cuts.get(cut.part()).add(cut.cut());
  }

  private Piece piece() {
    List<Part> parts = blanks.values().stream().map(this::part).toList();
    List<MadeItem> made = new MadeItems(description, parts, joints, diagnostics).read();
    List<Part> all =
        Stream.concat(parts.stream(), made.stream().flatMap(each -> each.pieces().stream()))
            .toList();
    MarkedParts marked = MarkedParts.of(all, origin(parts));
    return new Piece(
        description,
        marked.parts().subList(0, parts.size()),
        marked.marks(),
        joints,
        kept,
        made.stream().map(marked::made).toList());
  }

  /** What keeps parts of one shape apart: what they are cut out of, and from how many boards. */
  private UnaryOperator<String> origin(List<Part> parts) {
    UnaryOperator<String> cutOutOf = KeptShape.of(parts, kept);
    return part ->
        cutOutOf.apply(part)
            + Optional.ofNullable(blanks.get(part))
                .map(blank -> blank.entry().makeup().key())
                .orElse(" made");
  }

  private Part part(Blank blank) {
    List<Cut> all = SharedCuts.merged(cuts.get(blank.name()));
    Solid solid = Carving.of(blank.box(), all, Fineness.USUAL);
    return new Part(
        blank.name(),
        blank.entry().title(),
        "",
        false,
        Optional.ofNullable(assemblyOf.get(blank.name())),
        blank.stock(),
        blank.shoulder(),
        blank.box(),
        blank.length(),
        blank.thickness(),
        all,
        solid,
        Stance.of(blank.pose(), solid, blank.box()),
        blank.entry().say(),
        blank.at());
  }

  private static Map<String, String> assemblyOf(Description description) {
    Map<String, String> assemblies = new LinkedHashMap<>();
    for (AssemblyEntry assembly : description.assemblies().values()) {
      assembly.parts().forEach(part -> assemblies.put(part, assembly.name()));
    }
    return assemblies;
  }
}
