package storyrod.stock;

import java.util.ArrayList;
import java.util.List;

/** Sheets of which a state can be kept cheaply: only those that change are copied. */
final class Sheets {
  private final List<SheetTree> current = new ArrayList<>();
  private final List<SheetTree> kept = new ArrayList<>();

  Sheets(List<SheetTree> start) {
    current.addAll(start);
    keep();
  }

  int count() {
    return current.size();
  }

  SheetTree get(int sheet) {
    return current.get(sheet);
  }

  /** A sheet that may be changed without changing the state that is kept. */
  SheetTree changed(int sheet) {
    if (sheet < kept.size() && current.get(sheet) == kept.get(sheet)) {
      current.set(sheet, current.get(sheet).copy());
    }
    return current.get(sheet);
  }

  void add(SheetTree sheet) {
    current.add(sheet);
  }

  /** Makes the current state the one to go back to. */
  void keep() {
    kept.clear();
    kept.addAll(current);
  }

  void goBack() {
    current.clear();
    current.addAll(kept);
  }

  /** The state that is kept; what changes later does not change it. */
  List<SheetTree> asKept() {
    return List.copyOf(kept);
  }

  List<SheetTree> current() {
    return List.copyOf(current);
  }
}
