package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import storyrod.description.ItemEntry;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Names the joints inside a sub-assembly: the trade's word, glue, fasteners. */
record JointNotes(Piece piece, Words words) {
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
          notes.add(
              new CutNote(
                  view, counted, joints.stream().map(each -> each.contact().middle()).toList(), 0));
        });
    return notes;
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
