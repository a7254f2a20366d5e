package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.piece.Extension;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * The end of one part, cut to half its thickness, lies in a housing of half the thickness of
 * another: at its end a corner, elsewhere a T. Parts on edge are halved in their width.
 */
public final class HalfLap implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "half-lap",
          "The end of one part, cut to half its thickness, lies in another cut as deep.",
          List.of(
              JointKeys.END,
              JointKeys.INTO,
              Key.optional(
                  "face",
                  new ValueType.FaceWord(),
                  "The face of the part that takes it on which the end lies; where both are flush"
                      + " if not said, the top, the front or the right where both faces are."),
              Halving.DEPTH,
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public List<Extension> extensions(Entry entry, Pair parts) {
    return List.of(JointKeys.rightAcross(entry, parts.second()));
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    List<Diagnostic> faults =
        new ArrayList<>(
            JointKeys.squareOnly(meeting, "join them with screws or a tenon, or lay them square"));
    if (faults.isEmpty()) {
      faults.addAll(faceFaults(meeting));
    }
    List<CutIn> cuts = new ArrayList<>();
    Face onto = meeting.touched();
    if (faults.isEmpty()) {
      onto = face(meeting).orElseThrow();
      Halving halving = new Halving(meeting, onto);
      faults.addAll(halving.faults());
      Box place = JointKeys.place(meeting);
      faults.addAll(JointKeys.outsideFaults(meeting, Axis.other(meeting.axis(), onto.axis())));
      cuts.addAll(faults.isEmpty() ? halving.cuts(place) : List.of());
    }
    return new JointEffect(
        cuts, JointKeys.entering(meeting, onto.opposite(), meeting.contact()), faults);
  }

  /** The face that is named, or the one at which the two parts are flush. */
  private static Optional<Face> face(Meeting meeting) {
    Optional<Face> named = meeting.entry().find("face", Face.class);
    return named.isPresent() ? named : flush(meeting);
  }

  private static Optional<Face> flush(Meeting meeting) {
    Axis along = meeting.second().length();
    if (along == meeting.axis()) {
      return Optional.empty();
    }
    Axis across = Axis.other(meeting.axis(), along);
    Face shown = meeting.onAxis(across, Face.TOP, Face.FRONT, Face.RIGHT);
    return Stream.of(shown, shown.opposite())
        .filter(
            face ->
                meeting.first().shoulder().at(face).equals(meeting.second().shoulder().at(face)))
        .findFirst();
  }

  private static List<Diagnostic> faceFaults(Meeting meeting) {
    Optional<Face> face = face(meeting);
    if (face.filter(each -> each.axis() != meeting.axis()).isPresent()) {
      return List.of();
    }
    String cause =
        face.isPresent()
            ? "the end of %s goes in along %s, so it cannot lie on the %s of %s"
                .formatted(
                    meeting.first().name(),
                    meeting.axis().word(),
                    face.get().word(),
                    meeting.second().name())
            : "%s is flush with no face of %s on which it could lie"
                .formatted(meeting.first().name(), meeting.second().name());
    return List.of(
        Diagnostic.error("lap-face", meeting.entry().at("face"), cause)
            .also(meeting.second().at(), meeting.second().name() + " is defined here")
            .hint("name the face on which it lies: " + choices(meeting)));
  }

  private static String choices(Meeting meeting) {
    List<String> faces =
        Arrays.stream(Face.values())
            .filter(face -> face.axis() != meeting.axis())
            .map(face -> "`face: " + face.word() + "`")
            .toList();
    return String.join(", ", faces.subList(0, 3)) + " or " + faces.getLast();
  }
}
