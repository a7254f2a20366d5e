package storyrod.description;

import java.util.List;

/** What a key's value may be. Each kind is read, checked and worked out by the description reader. */
public sealed interface ValueType {
  /** Words for a person; Java type {@link String}. */
  record Text() implements ValueType {}

  /** A formula that gives a length; Java type {@link storyrod.measure.Length}. */
  record LengthValue(boolean mayBeNegative) implements ValueType {}

  /** A plain number that may have a fraction; Java type {@link storyrod.measure.Rational}. */
  record Number() implements ValueType {}

  /** A whole number from a least value up; Java type {@link Integer}. */
  record Count(int least) implements ValueType {}

  /** {@code yes} or {@code no}; Java type {@link Boolean}. */
  record YesNo() implements ValueType {}

  /** One of a few words; Java type {@link String}. */
  record Choice(List<String> words) implements ValueType {}

  /** {@code A to B}; Java type {@link storyrod.geometry.Range}, never empty or reversed. */
  record RangeValue() implements ValueType {}

  /** {@code x}, {@code y} or {@code z}; Java type {@link storyrod.geometry.Axis}. */
  record AxisName() implements ValueType {}

  /** {@code PART.FACE}; Java type {@link FaceRef}. */
  record FaceName() implements ValueType {}

  /** The name of a part; Java type {@link String}, the full name. */
  record PartName() implements ValueType {}

  /** The name of an item of hardware; Java type {@link String}. */
  record ItemName() implements ValueType {}

  /** The name of a stock; Java type {@link String}. */
  record StockName() implements ValueType {}

  /** {@code x:}, {@code y:}, {@code z:}, any of them; Java type {@link PointAt}. */
  record Point() implements ValueType {}

  /** One value or a list of them; Java type {@link List} of {@link Located} values. */
  record OneOrMore(ValueType each) implements ValueType {}
}
