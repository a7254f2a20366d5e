package storyrod.planset;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.measure.LengthFormat;
import storyrod.piece.Piece;

/** The words of a piece's pages, the paper that they stand on, and which of them there are. */
record Print(Texts texts, Paper paper, Edition edition, Chosen chosen) {
  private static final int READING = 6;

  static Print of(Piece piece, BuildPlan build, Printing printing) {
    Texts texts = new Texts(piece.description().printed(), printing.words());
    Paper usual = Paper.usualFor(texts.format().unit());
    return new Print(
        texts,
        printing.paper().orElse(usual),
        printing.edition(),
        printing.choice().in(piece, build, texts));
  }

  /** The unit of length in words, for all sizes. */
  String units() {
    return texts.units();
  }

  /** How to read the plan, sentence by sentence. */
  List<String> reading() {
    Stream<String> always =
        IntStream.rangeClosed(1, READING)
            .mapToObj(i -> texts.say("before.reading." + i, texts.units()));
    return Stream.concat(always, converted().stream()).toList();
  }

  /** What a reader has to know of sizes that were made from those in another unit. */
  private Optional<String> converted() {
    LengthFormat format = texts.format();
    LengthFormat other = format.other();
    String otherUnits = texts.say("units." + other.unit().word());
    return switch (format.second()) {
      case NEVER -> Optional.empty();
      case BITS, NAMED ->
          Optional.of(texts.say("before.reading.converted", otherUnits, step(format.alone())));
      case ALWAYS -> Optional.of(texts.say("before.reading.both", otherUnits, step(other)));
    };
  }

  private static String step(LengthFormat format) {
    return format.formatWithUnit(format.step());
  }
}
