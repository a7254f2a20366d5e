package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import storyrod.layout.sheet.Enlarged.Kind;
import storyrod.layout.sheet.Enlarged.Type;

/** Parts of which no two fit on one piece of any stock, so that each takes a piece of its own. */
final class OneEach {
  private final List<Kind> kinds;
  private final List<Type> found = new ArrayList<>();
  private long count;

  private OneEach(List<Kind> kinds) {
    this.kinds = kinds;
  }

  /** How many such parts there are, the largest looked at first; perhaps not the most. */
  static long count(Enlarged sizes) {
    OneEach parts = new OneEach(sizes.kinds);
    sizes.types.stream().sorted(Comparator.comparingLong(type -> -type.area())).forEach(parts::add);
    return parts.count;
  }

  private void add(Type type) {
    if (found.stream().noneMatch(other -> share(type, other))) {
      found.add(type);
      count += share(type, type) ? 1 : type.count();
    }
  }

  private boolean share(Type one, Type other) {
    return kinds.stream().anyMatch(kind -> share(kind, one, other));
  }

  private static boolean share(Kind kind, Type one, Type other) {
    for (int turns = 0; turns < 4; turns++) {
      boolean first = turns % 2 == 1;
      boolean second = turns > 1;
      if (one.allows(first) && other.allows(second) && share(kind, one, first, other, second)) {
        return true;
      }
    }
    return false;
  }

  private static boolean share(Kind kind, Type one, boolean first, Type other, boolean second) {
    long along = (long) one.length(first) + other.length(second);
    long across = (long) one.width(first) + other.width(second);
    int longer = Math.max(one.length(first), other.length(second));
    int wider = Math.max(one.width(first), other.width(second));
    return along <= kind.length() && wider <= kind.width()
        || across <= kind.width() && longer <= kind.length();
  }
}
