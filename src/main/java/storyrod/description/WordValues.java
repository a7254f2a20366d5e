package storyrod.description;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.description.Node.Scalar;
import storyrod.description.Scope.ItemCells;
import storyrod.description.Scope.PartCells;
import storyrod.description.Value.Kind;
import storyrod.geometry.Axis;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.measure.Angle;
import storyrod.measure.Coverage;
import storyrod.measure.Rational;
import storyrod.measure.Volume;

/** Reads the values that are words, names or plain numbers. */
final class WordValues {
  private static final List<String> AXES = List.of("x", "y", "z");
  private static final Pattern PRICE = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,6})?) +per +(\\S+)");
  private static final List<String> PRICE_UNITS =
      List.of(ValueType.Choice.word(PriceUnit.BOARD_FOOT), ValueType.Choice.word(PriceUnit.SHEET));
  private static final Pattern FRACTION = Pattern.compile("1 ?/ ?(1|2|4|8|16|32|64|128)");
  private static final int FINEST = 128;
  private static final Pattern DEGREES = Pattern.compile("(.*\\S)\\s*(?:deg|°)");
  private static final Pattern MASS = Pattern.compile("(.*\\S)\\s*(kg|lb)");
  private static final Rational KG_PER_LB = Rational.of(45_359_237, 100_000_000);
  private static final Rational FULL_TURN = Rational.of(360, 1);
  private static final Rational MOST = Rational.of(1000, 1);

  private final Context context;

  WordValues(Context context) {
    this.context = context;
  }

  Optional<String> choice(Scalar text, List<String> words) {
    if (words.contains(text.text())) {
      return Optional.of(text.text());
    }
    String among = String.join(", ", words);
    Optional<String> otherCase = words.stream().filter(text.text()::equalsIgnoreCase).findFirst();
    return context.fail(
        Diagnostic.error(
                "unknown-word", text.at(), "expected one of " + among + ", found " + text.kind())
            .hint(
                otherCase
                    .or(() -> Nearest.to(text.text(), words))
                    .map(word -> "did you mean `" + word + "`?")
                    .orElse(
                        words.equals(AXES)
                            ? "x runs from left to right, y from front to back, z upwards"
                            : "write one of these words")));
  }

  Optional<Boolean> yesNo(Scalar text) {
    return switch (text.text()) {
      case "yes" -> Optional.of(true);
      case "no" -> Optional.of(false);
      default ->
          context.fail(
              Diagnostic.error("yes-no", text.at(), "expected yes or no, found " + text.kind())
                  .hint(yesNoHint(text.text())));
    };
  }

  private static String yesNoHint(String word) {
    return switch (word.toLowerCase(java.util.Locale.ROOT)) {
      case "true", "on", "y", "yes" -> "write `yes`";
      case "false", "off", "n", "no" -> "write `no`";
      default -> "write `yes` or `no`";
    };
  }

  Optional<Rational> amount(Scalar text) {
    return context
        .evaluate(text, Kind.NUMBER)
        .flatMap(
            found ->
                found.signum() > 0
                    ? Optional.of(found)
                    : context.fail(
                        Diagnostic.error(
                                "not-positive",
                                text.at(),
                                "expected a number above zero, found " + shown(text, found))
                            .hint("write a number above zero")));
  }

  /** In kg. */
  Optional<Rational> mass(Scalar text) {
    Matcher matcher = MASS.matcher(text.text());
    if (!matcher.matches()) {
      return context.fail(
          Diagnostic.error(
                  "weight", text.at(), "expected a weight with its unit, found " + text.kind())
              .hint("write kg or lb behind the number, such as `25 kg` or `50 lb`"));
    }
    Scalar formula = new Scalar(matcher.group(1), false, text.part(0, matcher.end(1)));
    return amount(formula)
        .map(found -> matcher.group(2).equals("lb") ? found.times(KG_PER_LB) : found);
  }

  Optional<Angle> angle(Scalar text) {
    Matcher matcher = DEGREES.matcher(text.text());
    String figures = matcher.matches() ? matcher.group(1) : text.text();
    Scalar formula = new Scalar(figures, false, text.part(0, figures.length()));
    return context
        .evaluate(formula, Kind.NUMBER)
        .flatMap(
            found ->
                found.compareTo(FULL_TURN) <= 0 && found.compareTo(FULL_TURN.negated()) >= 0
                    ? Optional.of(Angle.degrees(found))
                    : context.fail(
                        Diagnostic.error(
                                "angle",
                                text.at(),
                                "expected degrees of a turn, found " + shown(text, found))
                            .hint("write degrees, such as `8` or `7 1/2`")));
  }

  Optional<Integer> count(Scalar text, int least) {
    return context
        .evaluate(text, Kind.NUMBER)
        .flatMap(
            found ->
                isCount(found, least)
                    ? Optional.of(found.numerator().intValueExact())
                    : context.fail(noCount(text, found, least)));
  }

  private static Diagnostic noCount(Scalar text, Rational found, int least) {
    boolean tooMany = found.compareTo(MOST) > 0;
    String range = tooMany ? "of at most " + MOST : "from " + least + " up";
    return Diagnostic.error(
            "count",
            text.at(),
            "expected a whole number " + range + ", found " + shown(text, found))
        .hint("write a number such as " + Math.max(least, 2));
  }

  private static String shown(Scalar text, Rational number) {
    String value = Quote.of(number.toString());
    boolean plain = text.text().matches("[-\\d./ ]*");
    return plain ? text.kind() : text.kind() + ", which is " + value;
  }

  private static boolean isCount(Rational number, int least) {
    return number.isWhole()
        && number.compareTo(Rational.of(least, 1)) >= 0
        && number.compareTo(MOST) <= 0;
  }

  Optional<Axis> axis(Scalar text) {
    return choice(text, AXES).map(word -> Axis.valueOf(word.toUpperCase(java.util.Locale.ROOT)));
  }

  Optional<FaceRef> face(Scalar text) {
    return found(context.names().face(text.text()), text)
        .map(found -> new FaceRef(found.part().name(), found.face()));
  }

  Optional<Face> faceWord(Scalar text) {
    return choice(text, Arrays.stream(Face.values()).map(Face::word).toList()).flatMap(Face::named);
  }

  Optional<Edge> edge(Scalar text) {
    return Edge.named(text.text())
        .or(
            () ->
                context.fail(
                    Diagnostic.error(
                            "edge",
                            text.at(),
                            "expected the two faces of an edge, found " + text.kind())
                        .hint("name two faces that meet, joined by a hyphen: `front-top`")));
  }

  Optional<String> part(Scalar text) {
    int dot = text.text().lastIndexOf('.');
    if (dot > 0 && context.names().face(text.text()).found().isPresent()) {
      return context.fail(
          Diagnostic.error(
                  "face-for-part", text.at(), "expected a part, found its face " + text.kind())
              .hint("leave the face away: `" + text.text().substring(0, dot) + "`"));
    }
    return found(context.names().part(text.text()), text).map(PartCells::name);
  }

  Optional<String> item(Scalar text) {
    return found(context.names().item(text.text()), text).map(ItemCells::name);
  }

  Optional<String> stock(Scalar text) {
    return found(context.names().stock(text.text()), text);
  }

  private <T> Optional<T> found(Lookup<T> lookup, Scalar text) {
    return lookup.found().isPresent() ? lookup.found() : context.fail(lookup.at(text.at()));
  }

  Optional<Price> price(Scalar text) {
    Matcher matcher = PRICE.matcher(text.text());
    if (!matcher.matches() || !PRICE_UNITS.contains(matcher.group(2))) {
      return context.fail(
          Diagnostic.error("price", text.at(), "expected a price, found " + text.kind())
              .hint("write an amount and for what: `7.80 per board-foot` or `92 per sheet`"));
    }
    PriceUnit unit = PriceUnit.values()[PRICE_UNITS.indexOf(matcher.group(2))];
    return Optional.of(new Price(Rational.of(new BigDecimal(matcher.group(1))), unit));
  }

  Optional<Volume> volume(Scalar text) {
    Optional<Volume> found = Volume.parse(text.text());
    return found.isPresent()
        ? found
        : context.fail(
            Diagnostic.error("volume", text.at(), "expected a volume, found " + text.kind())
                .hint("write a number above zero and ml, l, fl-oz, pt, qt or gal: `1 qt`"));
  }

  Optional<Coverage> coverage(Scalar text) {
    Optional<Coverage> found = Coverage.parse(text.text());
    return found.isPresent()
        ? found
        : context.fail(
            Diagnostic.error("coverage", text.at(), "expected a coverage, found " + text.kind())
                .hint(
                    "write what the label says, in m2/l, ft2/gal or ft2/qt: `12 m2/l` or"
                        + " `500 ft2/gal`"));
  }

  Optional<LocalDate> date(Scalar text) {
    try {
      return Optional.of(LocalDate.parse(text.text()));
    } catch (DateTimeException fault) {
      return context.fail(
          Diagnostic.error("date", text.at(), "expected a day, found " + text.kind())
              .hint("write year, month and day: `2026-11-25`"));
    }
  }

  Optional<String> currency(Scalar text) {
    return text.text().matches(ValueType.CurrencyValue.PATTERN)
        ? Optional.of(text.text())
        : context.fail(
            Diagnostic.error("currency", text.at(), "expected a currency, found " + text.kind())
                .hint("write its three capital letters or its symbol: `EUR` or `€`"));
  }

  /** What stands below the line. */
  Optional<Integer> fraction(Scalar text) {
    return denominator(text.text())
        .or(
            () ->
                context.fail(
                    Diagnostic.error(
                            "fraction",
                            text.at(),
                            "expected a fraction of an inch, found " + text.kind())
                        .hint("write one of 1/2, 1/4, 1/8, 1/16, 1/32, 1/64 and 1/" + FINEST)));
  }

  static Optional<Integer> denominator(String fraction) {
    return Optional.of(FRACTION.matcher(fraction))
        .filter(Matcher::matches)
        .map(found -> Integer.valueOf(found.group(1)));
  }
}
