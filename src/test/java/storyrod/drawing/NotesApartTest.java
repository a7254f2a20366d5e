package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Note;
import storyrod.planset.PrintedDrawings;

/** Notes one below the other with hardly more between them than between lines read as one. */
class NotesApartTest {
  /** As much as a line of a note takes: with less of it the gap is no paragraph's. */
  private static final double APART_MM = 3.5;

  private static final int MOST_WITHOUT_ROOM = 1;

  private static Bounds texts(Note note) {
    return Lowering.texts(note)
        .map(PlacedText::of)
        .map(Bounds::of)
        .reduce(Bounds.NONE, Bounds::with);
  }

  private static boolean areCrowded(Note one, Note other) {
    Bounds shared = texts(one).widened(APART_MM - 1e-6).within(texts(other));
    return shared.width() > 0 && shared.height() > 0;
  }

  private static List<String> crowded(Drawing drawing) {
    List<Note> notes =
        Clean.flat(drawing.elements()).stream()
            .filter(Note.class::isInstance)
            .map(Note.class::cast)
            .toList();
    List<String> found = new ArrayList<>();
    for (int i = 0; i < notes.size(); i++) {
      for (Note other : notes.subList(i + 1, notes.size())) {
        if (areCrowded(notes.get(i), other)) {
          found.add(notes.get(i).lines() + " | " + other.lines());
        }
      }
    }
    return found;
  }

  /** Of all notes of all projects one pair has no other room. */
  @Test
  void aLineStaysClearBetweenNotesOfDifferentLeaders() {
    List<String> found =
        AllProjects.all().parallelStream()
            .flatMap(sample -> PrintedDrawings.of(sample.set()).values().stream())
            .flatMap(each -> crowded(each).stream())
            .toList();
    assertTrue(found.size() <= MOST_WITHOUT_ROOM, found.toString());
  }
}
