package storyrod.description;

import java.util.Optional;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** What is marked as bad on a board on hand lies on that board. */
final class OnHandCheck {
  private final Context context;

  OnHandCheck(Context context) {
    this.context = context;
  }

  void check(String name, Entry piece) {
    for (Entry defect : piece.list("defects")) {
      within(name, piece, defect, "x", "length");
      within(name, piece, defect, "y", "width");
    }
  }

  private void within(String name, Entry piece, Entry defect, String axis, String size) {
    Optional<Range> range = defect.find(axis, Range.class);
    Optional<Length> whole = piece.findLength(size);
    boolean isOutside =
        range.isPresent()
            && whole.isPresent()
            && (range.get().from().isNegative() || range.get().to().isLongerThan(whole.get()));
    if (isOutside) {
      context
          .diagnostics()
          .add(
              Diagnostic.error(
                      "defect-outside",
                      defect.at(axis),
                      "this place is not on '%s', whose %s is %s"
                          .formatted(name, size, context.figures().of(whole.get())))
                  .also(piece.at(size), "its " + size)
                  .hint("measure x along the board from one end, and y across it from one edge"));
    }
  }
}
