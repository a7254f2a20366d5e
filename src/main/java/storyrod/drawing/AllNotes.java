package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BooleanSupplier;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.NotePlacer.Terms;
import storyrod.drawing.NotePlaces.Aim;
import storyrod.geometry.Face;

/**
 * Finds places for all notes of a drawing together: a note that stands already may leave the next
 * one only a way across a dimension, or a long one, so then other orders are tried.
 */
final class AllNotes {
  /**
   * What a crossed dimension costs, in mm of leader. First more than any way round is worth; where
   * the notes then find no room, less and less, since a drawing to a smaller scale would be worse.
   */
  private static final double[] PER_DIMENSION = {1000, 100, 7};

  /** With no note dearer than this, other orders are not worth the time. */
  private static final double DEAR = 80;

  /** The widths of a note in mm, the wider where no other keeps clear of a dimension. */
  private static final double USUAL = 46;

  private static final double WIDE = 70;

  private final Paper paper;
  private final NotePlacer placer;
  private final Map<Face, ? extends ViewOnPaper> views;
  private final Map<CutNote, NotePlaces> places = new LinkedHashMap<>();

  AllNotes(Paper paper, NotePlacer placer, Map<Face, ? extends ViewOnPaper> views) {
    this.paper = paper;
    this.placer = placer;
    this.views = views;
  }

  /** Notes and what comes after them, with what they cost in all, and the dearest note. */
  private record Way(List<Element> placed, Terms terms, double cost, double dearest) {
    boolean crosses() {
      return dearest >= terms.crossed();
    }
  }

  /** How notes are placed, and what has to find room after them. */
  private record Ask(Terms terms, BooleanSupplier rest) {
    Ask wide() {
      return new Ask(new Terms(terms.crossed(), WIDE), rest);
    }
  }

  /**
   * Puts the notes on the paper; false if there is no room.
   *
   * @param rest puts on the paper what comes after the notes; false if that finds no room
   */
  boolean place(List<CutNote> notes, BooleanSupplier rest) {
    NoteGround ground = placer.ground();
    notes.forEach(note -> places.put(note, places(note, ground)));
    if (!notes.stream().allMatch(this::hasRoomAlone)) {
      return false;
    }
    for (double crossed : PER_DIMENSION) {
      Optional<Way> best = best(notes, new Ask(new Terms(crossed, USUAL), rest));
      if (best.isPresent()) {
        best.get().placed.forEach(paper::add);
        return true;
      }
    }
    return false;
  }

  /** Whether a note finds room where no other stands yet; else no order helps. */
  private boolean hasRoomAlone(CutNote note) {
    return placer.hasRoom(places.get(note), WIDE);
  }

  private NotePlaces places(CutNote note, NoteGround ground) {
    Aim aim = NotePlacer.aim(note, views.get(note.view()));
    return new NotePlaces(ground, aim, note.words(), WIDE);
  }

  private Optional<Way> best(List<CutNote> notes, Ask ask) {
    Optional<Way> first = tried(notes, ask, Double.POSITIVE_INFINITY);
    if (first.filter(way -> way.dearest <= DEAR).isPresent()) {
      return first;
    }
    Optional<Way> best = cheaper(first, notes, ask);
    return best.filter(way -> !way.crosses()).isPresent() ? best : cheaper(best, notes, ask.wide());
  }

  /** The cheapest order of all, if one is cheaper than the best so far. */
  private Optional<Way> cheaper(Optional<Way> soFar, List<CutNote> notes, Ask ask) {
    Optional<Way> best = soFar;
    for (List<CutNote> order : orders(notes)) {
      Optional<Way> now = best;
      best = tried(order, ask, best.map(Way::cost).orElse(Double.POSITIVE_INFINITY)).or(() -> now);
    }
    return best;
  }

  /** As they are, the other way round, and each in turn before all others. */
  private static Set<List<CutNote>> orders(List<CutNote> notes) {
    Set<List<CutNote>> orders = new LinkedHashSet<>(List.of(notes, notes.reversed()));
    for (CutNote note : notes) {
      List<CutNote> order = new ArrayList<>(notes);
      order.remove(note);
      order.addFirst(note);
      orders.add(order);
    }
    return orders;
  }

  /** What an order comes to, the paper as it was before; nothing where it costs that or more. */
  private Optional<Way> tried(List<CutNote> order, Ask ask, double most) {
    Paper.State before = paper.state();
    int leaders = placer.state();
    double cost = 0;
    double dearest = 0;
    boolean fits = true;
    for (int i = 0; i < order.size() && fits; i++) {
      OptionalDouble each = placed(order.get(i), ask.terms.below(most - cost));
      fits = each.isPresent();
      cost += each.orElse(0);
      dearest = Math.max(dearest, each.orElse(0));
    }
    fits = fits && ask.rest.getAsBoolean();
    List<Element> placed = paper.elementsSince(before);
    paper.backTo(before);
    placer.backTo(leaders);
    return fits ? Optional.of(new Way(placed, ask.terms, cost, dearest)) : Optional.empty();
  }

  private OptionalDouble placed(CutNote note, Terms terms) {
    return placer.place(places.get(note), terms);
  }
}
