package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.StockKind;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Blank;
import storyrod.piece.Dovetails;
import storyrod.piece.Extension;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * Two boards dovetailed at a corner. The first has the tails and comes in across its own face; the
 * second has the pins and runs to the outer corner. Half-blind, the tails end inside it.
 */
public final class Dovetail implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "dovetail",
          "Tails on the end of one board lie between pins on the end of another.",
          List.of(
              JointKeys.END,
              JointKeys.INTO,
              TailLayout.TAILS,
              TailLayout.SLOPE,
              TailLayout.PIN,
              TailLayout.HALF_PIN,
              Key.optional(
                  "lap",
                  new ValueType.LengthValue(false),
                  "What is left in front of half-blind tails; they go right through if not said."),
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public List<Extension> extensions(Entry entry, Pair parts) {
    return List.of(
        new Extension(entry.face("end"), length(entry, parts.second()).max(Length.ZERO)));
  }

  private static Length length(Entry entry, Blank second) {
    return second
        .shoulder()
        .size(entry.face("end").face().axis())
        .minus(entry.findLength("lap").orElse(Length.ZERO));
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    List<Diagnostic> faults =
        new ArrayList<>(
            JointKeys.squareOnly(
                meeting, "let the boards meet squarely, or join them with screws"));
    if (faults.isEmpty()) {
      faults.addAll(boardFaults(meeting));
    }
    Optional<Face> outside = faults.isEmpty() ? outside(meeting) : Optional.empty();
    if (faults.isEmpty() && outside.isEmpty()) {
      faults.add(noCorner(meeting));
    }
    List<CutIn> cuts = new ArrayList<>();
    if (faults.isEmpty()) {
      TailLayout layout = layout(meeting);
      faults.addAll(lapFaults(meeting));
      faults.addAll(JointKeys.outsideFaults(meeting, across(meeting)));
      faults.addAll(faults.isEmpty() ? layout.faults() : List.of());
      cuts.addAll(faults.isEmpty() ? cuts(meeting, outside.orElseThrow(), layout) : List.of());
    }
    Face towards = outside.map(Face::opposite).orElse(meeting.face());
    return new JointEffect(cuts, JointKeys.entering(meeting, towards, meeting.contact()), faults);
  }

  private static Axis across(Meeting meeting) {
    return Axis.other(meeting.axis(), meeting.first().thickness());
  }

  /** The face of the first part that is flush with the end of the second. */
  private static Optional<Face> outside(Meeting meeting) {
    Axis through = meeting.first().thickness();
    return Stream.of(Face.of(through, -1), Face.of(through, 1))
        .filter(face -> meeting.first().box().at(face).equals(meeting.second().box().at(face)))
        .findFirst();
  }

  private static TailLayout layout(Meeting meeting) {
    return new TailLayout(meeting, length(meeting.entry(), meeting.second()), across(meeting));
  }

  private static List<CutIn> cuts(Meeting meeting, Face outside, TailLayout layout) {
    Range reach = meeting.contact().on(meeting.axis());
    Range run = reach.extended(meeting.face().sign(), layout.length());
    Box tailEnd = meeting.first().box().with(meeting.axis(), run);
    Box pinEnd =
        meeting
            .second()
            .box()
            .with(meeting.axis(), run)
            .with(outside.axis(), meeting.first().box().on(outside.axis()));
    String pins = meeting.entry().has("lap") ? Dovetails.HALF_BLIND : Dovetails.PINS;
    return List.of(
        new CutIn(
            meeting.first().name(),
            row(meeting, layout, new End(Dovetails.TAILS, meeting.face(), tailEnd, true))),
        new CutIn(
            meeting.second().name(), row(meeting, layout, new End(pins, outside, pinEnd, false))));
  }

  /** The end of one of the two parts. */
  private record End(String term, Face from, Box box, boolean isFirst) {}

  private static Dovetails row(Meeting meeting, TailLayout layout, End end) {
    return new Dovetails(
        end.term,
        end.from,
        meeting.face(),
        across(meeting),
        end.box,
        layout.tails(),
        layout.slope(),
        Optional.of((end.isFirst ? meeting.second() : meeting.first()).name()),
        meeting.entry().at());
  }

  private static List<Diagnostic> boardFaults(Meeting meeting) {
    return Stream.of(tailBoardFault(meeting).stream(), pinBoardFault(meeting).stream())
        .flatMap(each -> each)
        .toList();
  }

  private static Optional<Diagnostic> tailBoardFault(Meeting meeting) {
    Blank first = meeting.first();
    boolean isEnd =
        meeting.axis() != first.thickness()
            && (first.stock().kind() == StockKind.SHEET || meeting.axis() == first.length());
    return isEnd
        ? Optional.empty()
        : Optional.of(
            Diagnostic.error(
                    "dovetail-end",
                    meeting.entry().at("end"),
                    "tails are cut on an end, and %s is the %s of %s"
                        .formatted(
                            meeting.entry().face("end"),
                            meeting.axis() == first.thickness() ? "wide face" : "long edge",
                            first.name()))
                .also(first.at(), first.name() + " is defined here")
                .hint("name one of its ends; with the grain along the joint, tails and pins snap"));
  }

  private static Optional<Diagnostic> pinBoardFault(Meeting meeting) {
    Blank second = meeting.second();
    Axis through = meeting.first().thickness();
    boolean isEnd =
        meeting.axis() == second.thickness()
            && (second.stock().kind() == StockKind.SHEET || through == second.length());
    return isEnd
        ? Optional.empty()
        : Optional.of(
            Diagnostic.error(
                    "dovetail-end",
                    meeting.entry().at("into"),
                    "pins are cut on an end of %s, which must lie along %s with its wide face"
                            .formatted(second.name(), through.word())
                        + " towards %s".formatted(meeting.first().name()))
                .also(second.at(), second.name() + " is defined here")
                .hint("turn the board or its grain, or join the two with a tenon or screws"));
  }

  private static Diagnostic noCorner(Meeting meeting) {
    Axis through = meeting.first().thickness();
    return Diagnostic.error(
            "dovetail-corner",
            meeting.entry().at("into"),
            "%s lies at no end of %s: it runs from %s = %s to %s, %s from %s to %s"
                .formatted(
                    meeting.first().name(),
                    meeting.second().name(),
                    through.word(),
                    meeting.print(meeting.first().box().on(through).from()),
                    meeting.print(meeting.first().box().on(through).to()),
                    meeting.second().name(),
                    meeting.print(meeting.second().box().on(through).from()),
                    meeting.print(meeting.second().box().on(through).to())))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint(
            "let the board with the pins run to the outer corner, flush with the face of the one"
                + " with the tails");
  }

  private static List<Diagnostic> lapFaults(Meeting meeting) {
    Length length = length(meeting.entry(), meeting.second());
    if (length.isPositive()) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "dovetail-depth",
                meeting.entry().at("lap"),
                "a lap of %s leaves nothing of %s for the tails: it is %s thick"
                    .formatted(
                        meeting.print(meeting.entry().length("lap")),
                        meeting.second().name(),
                        meeting.print(meeting.second().shoulder().size(meeting.axis()))))
            .also(meeting.second().at(), meeting.second().name() + " is defined here")
            .hint("a quarter to a third of the thickness is common practice"));
  }
}
