package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.description.ItemEntry;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.piece.Askew;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Names the joints inside a sub-assembly: the trade's word, glue, fasteners. */
record JointNotes(Piece piece, List<PlacedItem> placed, Words words) {
  JointNotes(Piece piece, Words words) {
    this(piece, PlacedHardware.of(piece), words);
  }

  /** One note for equal joints between some parts, all on one view. */
  List<CutNote> of(List<Part> parts, Face view) {
    Set<String> names = parts.stream().map(Part::name).collect(Collectors.toSet());
    Map<String, List<Joint>> alike = new LinkedHashMap<>();
    piece.joints().stream()
        .filter(joint -> names.contains(joint.first()) && names.contains(joint.second()))
        .forEach(joint -> alike.computeIfAbsent(said(joint), key -> new ArrayList<>()).add(joint));
    List<CutNote> notes = new ArrayList<>();
    alike.forEach(
        (said, joints) -> {
          String counted = joints.size() == 1 ? said : words.say("part.times", joints.size(), said);
          notes.add(new CutNote(view, counted, joints.stream().flatMap(this::tips).toList(), 0));
        });
    return notes;
  }

  /** Where what holds a joint goes from one part into the other; else the middle of the contact. */
  private Stream<Point> tips(Joint joint) {
    Point middle = joint.contact().middle();
    List<Point> held =
        placed.stream()
            .filter(item -> item.origin().joint().filter(joint::equals).isPresent())
            .map(item -> through(item, middle))
            .toList();
    return held.isEmpty() ? Stream.of(middle) : held.stream();
  }

  /** Where an item's line goes through the plane across it on which a point lies. */
  private static Point through(PlacedItem item, Point middle) {
    Axis along = Face.nearest(item.out()).axis();
    return Askew.nearest(item.at()).with(along, middle.on(along));
  }

  private String said(Joint joint) {
    String said = words.say("joint." + joint.type());
    String glued = joint.glued() ? words.say("general.glued", said) : said;
    return joint.fasteners().stream()
        .map(each -> words.say("general.fasteners", each.count(), title(each.item())))
        .reduce(glued, (one, next) -> words.say("general.joint-with", one, next));
  }

  private String title(String item) {
    return piece.item(item).map(ItemEntry::title).orElse(item);
  }
}
