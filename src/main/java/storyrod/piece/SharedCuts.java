package storyrod.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;

/** Makes one cut of trenches that lie in one place, such as grooves for a panel and a tongue. */
final class SharedCuts {
  private SharedCuts() {}

  /** The same cuts, each trench once, as deep as the deepest of those it stands for. */
  static List<Cut> merged(List<Cut> cuts) {
    List<Cut> merged = new ArrayList<>();
    for (Cut cut : cuts) {
      int place = cut instanceof Cut.Trench trench ? indexOfSame(merged, trench) : -1;
      if (place < 0) {
        merged.add(cut);
      } else {
        merged.set(place, one((Cut.Trench) merged.get(place), (Cut.Trench) cut));
      }
    }
    merged.stream().filter(SharedCuts::isSocket).toList().forEach(each -> give(merged, each));
    return List.copyOf(merged);
  }

  private static boolean isSocket(Cut cut) {
    return cut.term().equals(Cut.Trench.HAUNCH_SOCKET);
  }

  /** A groove that holds a haunch already is its socket too, so that nothing more is cut for it. */
  private static void give(List<Cut> cuts, Cut socket) {
    Box needed = ((Cut.Trench) socket).removed();
    for (int i = 0; i < cuts.size(); i++) {
      if (cuts.get(i) instanceof Cut.Trench groove
          && groove != socket
          && groove.from() == socket.from()
          && Arrays.stream(Axis.values())
              .allMatch(axis -> groove.removed().on(axis).contains(needed.on(axis)))) {
        cuts.set(i, taking(groove, groove.removed(), groove.depth(), socket.forWhat()));
        cuts.remove(socket);
        return;
      }
    }
  }

  private static int indexOfSame(List<Cut> cuts, Cut.Trench trench) {
    for (int i = 0; i < cuts.size(); i++) {
      if (cuts.get(i) instanceof Cut.Trench other && isOnePlace(other, trench)) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isOnePlace(Cut.Trench one, Cut.Trench other) {
    return isAlike(one, other)
        && one.from() == other.from()
        && Arrays.stream(Axis.values())
            .filter(axis -> axis != one.from().axis())
            .allMatch(axis -> one.removed().on(axis).equals(other.removed().on(axis)));
  }

  private static boolean isAlike(Cut.Trench one, Cut.Trench other) {
    return one.term().equals(other.term())
        || one.role() == other.role() && one.role() != TrenchRole.OTHER;
  }

  private static Cut.Trench one(Cut.Trench first, Cut.Trench other) {
    Cut.Trench deeper = other.depth().isLongerThan(first.depth()) ? other : first;
    return taking(first, deeper.removed(), deeper.depth(), other.forWhat());
  }

  /** A trench that also takes something else, as large as it has to be for both. */
  private static Cut.Trench taking(
      Cut.Trench first, Box removed, Length depth, Optional<String> other) {
    List<String> names =
        Stream.of(first.forWhat().stream(), first.alsoFor().stream(), other.stream())
            .flatMap(each -> each)
            .distinct()
            .toList();
    return new Cut.Trench(
        first.term(),
        first.role(),
        first.from(),
        removed,
        depth,
        names.stream().findFirst(),
        names.isEmpty() ? List.of() : names.subList(1, names.size()),
        first.at());
  }
}
