package storyrod.planset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Pilots;
import storyrod.build.Sticking;
import storyrod.description.ItemEntry;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The items of hardware that a step uses up, and where fasteners are driven. */
record HardwareData(Piece piece, PartPhrases phrases) {
  List<Map<String, Object>> of(Step step) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (ItemCount each : bradsLast(step)) {
      Map<String, Object> item = new LinkedHashMap<>();
      item.put("kind", kind(each.item()));
      item.put("title", piece.item(each.item()).map(ItemEntry::title).orElse(each.item()));
      item.put("count", each.count());
      Optional<ItemEntry> entry = piece.item(each.item());
      item.put("sticks", entry.filter(Sticking::is).isPresent());
      item.put("overWax", entry.filter(one -> Sticking.isOverWax(piece, one)).isPresent());
      List<Joint> joints = joints(step, each.item());
      item.put(
          "drivenFrom", Stream.concat(drivenFrom(joints), peggedFrom(joints)).distinct().toList());
      item.put("through", phrases.parts(drivenThrough(joints)));
      item.put("into", phrases.parts(drivenInto(joints)));
      item.put("first", phrases.parts(joints.stream().map(Joint::first).toList()));
      item.put("against", phrases.parts(joints.stream().map(Joint::second).toList()));
      item.put("seen", joints.stream().allMatch(this::isDrivenInSight));
      item.put("joints", joints.size());
      item.put("held", new RailData(piece, phrases).of(joints, each.item()));
      item.put("piloted", joints.stream().anyMatch(j -> !Pilots.of(piece, j).isEmpty()));
      all.add(item);
    }
    return all;
  }

  /** Whether fasteners go in from the front, where one sees their heads. */
  private boolean isDrivenInSight(Joint joint) {
    return joint.driven().filter(driven -> driven.face() == Face.FRONT).isPresent();
  }

  private static List<Joint> joints(Step step, String item) {
    return step.operations().stream()
        .flatMap(operation -> operation.joints().stream())
        .filter(joint -> joint.fasteners().stream().anyMatch(each -> each.item().equals(item)))
        .toList();
  }

  private static List<String> drivenThrough(List<Joint> joints) {
    return joints.stream().flatMap(each -> each.driven().stream()).map(Joint.Driven::part).toList();
  }

  private static List<String> drivenInto(List<Joint> joints) {
    return joints.stream()
        .flatMap(
            joint ->
                Stream.of(joint.first(), joint.second())
                    .filter(part -> joint.driven().filter(d -> !d.part().equals(part)).isPresent()))
        .toList();
  }

  private static Stream<String> drivenFrom(List<Joint> joints) {
    return joints.stream().flatMap(joint -> joint.driven().stream()).map(d -> d.face().word());
  }

  /** The faces in which the blind holes for pegs through unglued joints open. */
  private Stream<String> peggedFrom(List<Joint> joints) {
    return joints.stream()
        .filter(new AcrossGrain(piece)::isDry)
        .flatMap(joint -> piece.part(joint.second()).cuts().stream())
        .flatMap(cut -> cut instanceof Cut.Holes holes ? Stream.of(holes) : Stream.empty())
        .filter(holes -> !holes.through())
        .map(holes -> holes.from().word());
  }

  /** Brads go in when screws hold the parts still. */
  private List<ItemCount> bradsLast(Step step) {
    return step.hardware().stream()
        .sorted(Comparator.comparing((ItemCount each) -> kind(each.item()).equals("brad")))
        .toList();
  }

  /** How many items of a kind the step uses up. */
  int count(Step step, String kind) {
    return step.hardware().stream()
        .filter(each -> kind(each.item()).equals(kind))
        .mapToInt(ItemCount::count)
        .sum();
  }

  /** The mark, in brackets, of what a step puts into its joints that was made in the shop. */
  String madeMark(Step step) {
    return step.hardware().stream()
        .flatMap(each -> piece.made(each.item()).stream())
        .map(made -> " (" + made.mark() + ")")
        .distinct()
        .collect(Collectors.joining());
  }

  /** The word for the kind of an item. */
  String kind(String name) {
    return Words.hyphenated(piece.kind(name));
  }
}
