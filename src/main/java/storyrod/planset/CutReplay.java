package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.SawnPiece;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;

/**
 * Makes the cuts of a piece of stock one after the other, to tell from what each is cut and what
 * falls off. What lies on the near side is named after its cut, the rest keeps its name.
 */
final class CutReplay {
  private final SawnPiece sheet;
  private final List<Held> inHand = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  private CutReplay(SawnPiece sheet) {
    this.sheet = sheet;
  }

  /**
   * A cut and what it does.
   *
   * @param of the number of the cut that gave the piece in hand; 0 for the stock itself
   * @param gives what falls off; empty if the blade takes it all
   * @param leaves what stays, if nothing more is cut from it
   */
  record Step(SawCut cut, int of, Optional<Result> gives, Optional<Result> leaves) {}

  /** A piece that a cut gives, and its mark if it is a part. */
  record Result(Kind kind, String mark, Area area) {}

  enum Kind {
    PART,
    /** Cut further. */
    PIECE,
    OFFCUT,
    WASTE
  }

  /** A piece by the number of the cut that gave it. */
  private record Held(int name, Area area) {}

  private record Split(SawCut cut, int of, Optional<Held> falls, Optional<Held> stays) {}

  static List<Step> of(SawnPiece sheet) {
    return new CutReplay(sheet).replay();
  }

  private List<Step> replay() {
    inHand.add(new Held(0, new Area(Length.ZERO, Length.ZERO, sheet.length(), sheet.width())));
    List<Split> splits = new ArrayList<>();
    sheet.cuts().forEach(cut -> splits.add(split(cut)));
    for (Split split : splits) {
      steps.add(
          new Step(
              split.cut,
              split.of,
              split.falls.map(held -> result(held, true)),
              split.stays.filter(inHand::contains).map(held -> result(held, false))));
    }
    return List.copyOf(steps);
  }

  private Split split(SawCut cut) {
    Held held =
        inHand.stream()
            .filter(each -> isCutBy(each.area, cut))
            .findFirst()
            .orElseThrow(
                () -> new IllegalStateException("bug: nothing to cut at cut " + cut.number()));
    inHand.remove(held);
    Length end = cut.at().plus(sheet.kerf());
    Length from = start(held.area, cut);
    Length to = from.plus(size(held.area, cut));
    Optional<Held> near = held(held.area, cut, from, cut.at(), cut.number());
    Optional<Held> far = held(held.area, cut, end, to, held.name);
    near.ifPresent(inHand::add);
    far.ifPresent(inHand::add);
    return new Split(cut, held.name, near, far);
  }

  private boolean isCutBy(Area area, SawCut cut) {
    Length from = cut.alongLength() ? area.x() : area.y();
    Length to = from.plus(cut.alongLength() ? area.length() : area.width());
    Length start = start(area, cut);
    return cut.from().equals(from)
        && cut.to().equals(to)
        && cut.at().plus(sheet.kerf()).isLongerThan(start)
        && cut.at().isShorterThan(start.plus(size(area, cut)));
  }

  /** Where a piece begins across a cut, and how far it reaches. */
  private static Length start(Area area, SawCut cut) {
    return cut.alongLength() ? area.y() : area.x();
  }

  private static Length size(Area area, SawCut cut) {
    return cut.alongLength() ? area.width() : area.length();
  }

  private static Optional<Held> held(Area area, SawCut cut, Length from, Length to, int name) {
    if (!to.isLongerThan(from)) {
      return Optional.empty();
    }
    Length size = to.minus(from);
    return Optional.of(
        new Held(
            name,
            cut.alongLength()
                ? new Area(area.x(), from, area.length(), size)
                : new Area(from, area.y(), size, area.width())));
  }

  private Result result(Held held, boolean mayBeCut) {
    if (mayBeCut && !inHand.contains(held)) {
      return new Result(Kind.PIECE, "", held.area);
    }
    return sheet.parts().stream()
        .filter(part -> part.area().equals(held.area))
        .findFirst()
        .map(part -> new Result(Kind.PART, part.mark(), held.area))
        .orElseGet(
            () ->
                new Result(
                    sheet.offcuts().contains(held.area) ? Kind.OFFCUT : Kind.WASTE, "", held.area));
  }
}
