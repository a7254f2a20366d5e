package storyrod.piece;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/**
 * Two parts where a joint puts them together.
 *
 * @param entry the joint in the description
 * @param first the part whose face meets the other
 * @param face the face of the first part
 * @param second the part that takes it
 * @param contact where they touch before either is lengthened, in the frame of the first part, flat
 *     on the face's axis unless its end is slanted; where they cross, the space that both take
 * @param askew more about it, where one of them is turned or cut at an angle
 */
public record Meeting(
    Entry entry,
    Blank first,
    Face face,
    Blank second,
    Box contact,
    Optional<Askew> askew,
    Items items) {

  /** The ends keep so much of their room that all lose no more than this part of one share. */
  private static final int AT_ENDS = 5;

  /** How items are looked up and lengths are printed. */
  public record Items(java.util.Map<String, ItemEntry> byName, LengthFormat format) {
    public ItemEntry item(String name) {
      return byName.get(name);
    }
  }

  /** The way into the second part. */
  public Axis axis() {
    return face.axis();
  }

  /** The face of the second part that is touched. */
  public Face touched() {
    return face.opposite();
  }

  /** Of some faces, by their names where the joint was written, the one that lies on an axis. */
  public Face onAxis(Axis axis, Face... own) {
    return Stream.of(own)
        .map(entry::placed)
        .filter(face -> face.axis() == axis)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no such face lies on " + axis));
  }

  public Optional<ItemEntry> item(String key) {
    return entry.find(key, String.class).map(items::item);
  }

  public String print(Length length) {
    return items.format().formatWithUnit(length);
  }

  /** The slot that the first part's end fills in the second, right across the second part. */
  public Box slot(Length depth) {
    Axis run = Axis.other(axis(), first.thickness());
    return contact
        .with(axis(), contact.on(axis()).extended(face.sign(), depth))
        .with(first.thickness(), first.box().on(first.thickness()))
        .with(run, second.box().on(run));
  }

  /**
   * Equal spacing over the contact along one axis, from the middle outwards: the contact's share of
   * each of {@code count}, or so little more that print need not round it and both ends read the
   * same.
   */
  public List<Length> spread(Axis along, int count) {
    Length width = contact.size(along);
    Length share = width.dividedBy(count, RoundingMode.HALF_EVEN);
    Length even = printed(share, count % 2 == 0 ? width : Length.ZERO);
    Length over = even.times(count).minus(width);
    Length step = over.times(AT_ENDS).isLongerThan(share) ? share : even;
    Length beside = width.minus(step.times(count - 1L)).dividedBy(2, RoundingMode.HALF_EVEN);
    Length first = contact.on(along).from().plus(beside);
    return LongStream.range(0, count).mapToObj(i -> first.plus(step.times(i))).toList();
  }

  /**
   * A step, or a little more, that print need not round: an even number of what printed lengths are
   * whole numbers of, or an odd one where what it is taken from has one. So its half, which is left
   * on either side, need not be rounded either.
   */
  private Length printed(Length step, Length from) {
    Length grid = items.format().step();
    Length twice = grid.times(2);
    boolean isOdd = from.ticks() % twice.ticks() == grid.ticks();
    Length odd = isOdd ? grid : Length.ZERO;
    return twice.times(Math.ceilDiv(step.plus(odd).ticks(), twice.ticks())).minus(odd);
  }

  /** The contact's longer axis, along which fasteners are spread; the first of two equal ones. */
  public Axis longerAxis() {
    List<Axis> both =
        Stream.of(Face.RIGHT, Face.BACK, Face.TOP)
            .map(face -> entry.placed(face).axis())
            .filter(each -> each != axis())
            .toList();
    Axis one = both.getFirst();
    Axis two = both.getLast();
    return contact.size(one).isShorterThan(contact.size(two)) ? two : one;
  }

  /** Faults of a slot of some depth: it must be less deep than the part it is cut in. */
  public List<Diagnostic> depthFaults(String key, Length depth) {
    Length have = second.box().size(axis());
    if (depth.isShorterThan(have)) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "cut-too-deep",
                entry.at(key),
                "%s is %s deep, but %s is only %s there"
                    .formatted(entry.kind(), print(depth), second.name(), print(have)))
            .also(second.at(), second.name() + " is defined here")
            .hint("make it shallower; a third to a half of the thickness is common practice"));
  }
}
