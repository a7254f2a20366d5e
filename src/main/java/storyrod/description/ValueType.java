package storyrod.description;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What a key's value may be. Each kind is read, checked and worked out by the description reader.
 */
public sealed interface ValueType {
  /** Words for a person; Java type {@link String}. */
  record Text() implements ValueType {}

  /**
   * A formula that gives a length, above zero unless it may be negative; Java type {@link
   * storyrod.measure.Length}.
   */
  record LengthValue(boolean mayBeNegative) implements ValueType {}

  /**
   * A formula that gives degrees, with or without {@code deg} behind it; Java type {@link
   * storyrod.measure.Angle}.
   */
  record AngleValue() implements ValueType {}

  /** A plain number that may have a fraction; Java type {@link storyrod.measure.Rational}. */
  record Number() implements ValueType {}

  /** A whole number from a least value up; Java type {@link Integer}. */
  record Count(int least) implements ValueType {}

  /** {@code yes} or {@code no}; Java type {@link Boolean}. */
  record YesNo() implements ValueType {}

  /** One of a few words; Java type {@link String}. */
  record Choice(List<String> words) implements ValueType {
    static Choice of(Enum<?>[] values) {
      return new Choice(Arrays.stream(values).map(Choice::word).toList());
    }

    /** How a description writes one of a closed set of words. */
    static String word(Enum<?> value) {
      return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

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

  /** {@code FACE-FACE}, in either order; Java type {@link storyrod.geometry.Edge}. */
  record EdgeName() implements ValueType {}

  /** {@code x:}, {@code y:}, {@code z:}, any of them; Java type {@link PointAt}. */
  record Point() implements ValueType {}

  /** One value or a list of them; Java type {@link List} of {@link Located} values. */
  record OneOrMore(ValueType each) implements ValueType {}

  /** A formula that gives a length of zero or more; Java type {@link storyrod.measure.Length}. */
  record Allowance() implements ValueType {}

  /** A plain number above zero; Java type {@link storyrod.measure.Rational}. */
  record Amount() implements ValueType {}

  /** {@code 25 kg} or {@code 50 lb}; Java type {@link storyrod.measure.Rational}, in kg. */
  record MassValue() implements ValueType {}

  /** {@code 7.80 per board-foot}; Java type {@link Price}. */
  record PriceValue() implements ValueType {}

  /** {@code 500 ml} or {@code 1 qt}; Java type {@link storyrod.measure.Volume}. */
  record VolumeValue() implements ValueType {}

  /** {@code 12 m2/l} or {@code 500 ft2/gal}; Java type {@link storyrod.measure.Coverage}. */
  record CoverageValue() implements ValueType {}

  /** {@code 96 x 48}; Java type {@link SheetSize}. */
  record SheetSizeValue() implements ValueType {}

  /** A day as {@code 2026-11-25} (ISO 8601); Java type {@link java.time.LocalDate}. */
  record DateValue() implements ValueType {}

  /** A code of ISO 4217 or a symbol; Java type {@link String}. */
  record CurrencyValue() implements ValueType {
    /** Three capital letters, or a sign from the blocks of Unicode where those of money stand. */
    static final String PATTERN = "[A-Z]{3}|[$\\u00a2-\\u00a5\\u20a0-\\u20c0]";
  }

  /** {@code 1/32}: one over a power of two up to 128; Java type {@link Integer}, what is below. */
  record Fraction() implements ValueType {}

  /** Names with formulas that give lengths; Java type map of {@link storyrod.measure.Length}. */
  record Lengths() implements ValueType {}

  /** Names with formulas that give numbers; Java type map of {@link storyrod.measure.Rational}. */
  record Numbers() implements ValueType {}

  /** Keys with values; Java type {@link Entry}. */
  record Section(EntryType type) implements ValueType {}

  /**
   * Keys with values, or the name of a file that has them, which {@link Shared} puts in before
   * anything is read; Java type {@link Entry}.
   */
  record SharedSection(EntryType type) implements ValueType {}

  /** Names, each with keys and values; Java type map of {@link Entry}. */
  record Named(EntryType type) implements ValueType {}

  /** Sub-assemblies by name, each of the kind {@link Sections#ASSEMBLY}; map of {@link Entry}. */
  record Assemblies() implements ValueType {}

  /** A list of keys with values; Java type {@link List} of {@link Entry}. */
  record Listed(EntryType type) implements ValueType {}

  /**
   * A list of {@code - KIND: {...}}, the kinds being the vocabulary's; {@link List} of {@link
   * Entry}.
   */
  record Joints() implements ValueType {}

  /**
   * A list of {@code - KIND: {...}}, the kinds being the vocabulary's; {@link List} of {@link
   * Entry}.
   */
  record Cuts() implements ValueType {}

  /** A list of {@code - KIND: {...}} of a closed set of kinds; {@link List} of {@link Entry}. */
  record Kinds(String what, List<EntryType> types) implements ValueType {}

  /** A list of {@code VERB TARGET}; Java type {@link List} of {@link OrderEntry}. */
  record Orders() implements ValueType {}

  /** Words for a target or for {@code VERB TARGET}; Java type map of {@link String}. */
  record Notes() implements ValueType {}

  /** A condition, such as {@code shelves > 0}; Java type {@link Boolean}. */
  record Condition() implements ValueType {}

  /** A face by its word alone; Java type {@link storyrod.geometry.Face}. */
  record FaceWord() implements ValueType {}

  /** Names, each with a list of words of which the first is usual; map of {@link String} lists. */
  record Words() implements ValueType {}

  /** Names with values that something else gives their meaning; no Java type of their own. */
  record Gifts() implements ValueType {}

  /** {@code x:}, {@code y:}, {@code z:}, each a start or a range; no Java type of their own. */
  record Place() implements ValueType {}

  /** Other values for names of a section; read as part of that section when they are chosen. */
  record Others(String section) implements ValueType {}

  /** Names, each for one of a list of parts; no Java type of its own. */
  record PartLists() implements ValueType {}
}
