package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.rule.Job;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;

/** Finds where a level's first rectangle of four parts closes: there its diagonals are compared. */
final class Squares {
  private final Job job;
  private final Map<String, Setting> byOperation = new LinkedHashMap<>();

  Squares(Job job) {
    this.job = job;
    List<String> closed = new ArrayList<>();
    for (Placing placing : job.placings()) {
      String level = placing.unit().level();
      if (!closed.contains(level)) {
        rectangle(placing)
            .ifPresent(
                setting -> {
                  byOperation.put(placing.name(), setting);
                  closed.add(level);
                });
      }
    }
  }

  Optional<Setting> diagonal(Operation operation) {
    return Optional.ofNullable(byOperation.get(operation.name()));
  }

  private Optional<Setting> rectangle(Placing placing) {
    boolean leans = job.piece().parts().stream().anyMatch(part -> part.pose().isTurned());
    if (placing.unit().parts().size() > 1 || leans) {
      return Optional.empty();
    }
    Part last = placing.unit().parts().getFirst();
    List<String> arms = neighbours(last.name()).filter(placing.standing()::contains).toList();
    for (String one : arms) {
      for (String two : arms.subList(arms.indexOf(one) + 1, arms.size())) {
        Optional<Setting> found =
            neighbours(one)
                .filter(far -> placing.standing().contains(far))
                .filter(far -> neighbours(two).anyMatch(far::equals))
                .flatMap(far -> diagonal(last, part(far), part(one), part(two)).stream())
                .findFirst();
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Setting> diagonal(Part last, Part far, Part one, Part two) {
    return apart(last.shoulder(), far.shoulder())
        .flatMap(
            high ->
                apart(one.shoulder(), two.shoulder())
                    .filter(wide -> wide != high)
                    .filter(wide -> hasCorners(List.of(last, far), List.of(one, two), wide, high))
                    .map(wide -> setting(List.of(last, far, one, two), wide, high)));
  }

  /** Whether two opposite parts reach from corner to corner, so that a tape can be held there. */
  private static boolean hasCorners(List<Part> flat, List<Part> upright, Axis wide, Axis high) {
    List<Part> all = Stream.concat(flat.stream(), upright.stream()).toList();
    return flat.stream().allMatch(part -> part.box().size(wide).equals(span(all, wide)))
        || upright.stream().allMatch(part -> part.box().size(high).equals(span(all, high)));
  }

  private static Setting setting(List<Part> parts, Axis wide, Axis high) {
    return new Setting(
        "diagonal", Optional.empty(), Settings.diagonal(span(parts, wide), span(parts, high)));
  }

  private static Length span(List<Part> parts, Axis axis) {
    Length from =
        parts.stream().map(part -> part.bounds().on(axis).from()).reduce(Length::min).get();
    Length to = parts.stream().map(part -> part.bounds().on(axis).to()).reduce(Length::max).get();
    return to.minus(from);
  }

  private static Optional<Axis> apart(Box one, Box other) {
    return Arrays.stream(Axis.values())
        .filter(axis -> !one.on(axis).overlaps(other.on(axis)))
        .findFirst();
  }

  private Stream<String> neighbours(String part) {
    return job.piece().joints().stream()
        .filter(Joint::holding)
        .filter(joint -> joint.first().equals(part) || joint.second().equals(part))
        .map(joint -> joint.first().equals(part) ? joint.second() : joint.first())
        .distinct();
  }

  private Part part(String name) {
    return job.piece().part(name);
  }
}
