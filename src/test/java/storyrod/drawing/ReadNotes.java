package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Note;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;
import storyrod.words.Words;

/** Which note speaks of which cut: of the one its leader touches, and of as many like it. */
final class ReadNotes {
  private static final double TOUCHES = 1;
  private static final Pattern TIMES = Pattern.compile("^(\\d+)× (?=.*)");

  private final Tracing tracing;
  private final Map<Cut, String> said = new IdentityHashMap<>();
  private final Map<Cut, Cut> like = new IdentityHashMap<>();
  private final List<String> faults = new ArrayList<>();

  ReadNotes(Tracing tracing, List<Note> notes) {
    this.tracing = tracing;
    List<Pointed> pointed = notes.stream().flatMap(each -> touched(each).stream()).toList();
    pointed.forEach(each -> said.put(each.cut, each.text));
    pointed.forEach(this::addLike);
  }

  /** A note with the cut that its leader touches. */
  private record Pointed(Cut cut, String text, int count) {}

  private Optional<Pointed> touched(Note note) {
    String text = String.join(" ", note.lines());
    Matcher times = TIMES.matcher(text);
    int count = times.find() ? Integer.parseInt(times.group(1)) : 1;
    Face view = tracing.viewAt(note.tip()).orElse(Face.FRONT);
    Optional<Cut> cut =
        tracing.cuts().stream()
            .filter(each -> speaksOf(text, each) && isSeen(each, view))
            .filter(each -> away(view, note.tip(), each) < TOUCHES)
            .min(Comparator.comparingDouble(each -> away(view, note.tip(), each)));
    boolean curve = text.matches(".*\\bR .*");
    if (cut.isEmpty() && !curve) {
      faults.add("'" + text + "' points at nothing of its kind");
    }
    return cut.map(each -> new Pointed(each, text, count));
  }

  /** A view of one end or edge says nothing of what is cut into the other. */
  private static boolean isSeen(Cut cut, Face view) {
    if (cut instanceof Slanted.Slope slope) {
      boolean chamfer = slope.kind() == Slanted.Slope.Kind.CHAMFER;
      return view.axis() == slope.along() || chamfer && view == Face.FRONT;
    }
    boolean oneForBoth = cut instanceof Cut.Tenon || cut instanceof SplineSlot;
    return oneForBoth || view == Face.FRONT || cut.from() != view.opposite();
  }

  private void addLike(Pointed pointed) {
    int left = pointed.count - number(pointed.cut);
    for (Cut other : tracing.cuts()) {
      if (left > 0 && !said.containsKey(other) && isLike(pointed, other)) {
        said.put(other, pointed.text);
        like.put(other, pointed.cut);
        left -= number(other);
      }
    }
    if (left != 0) {
      faults.add("'" + pointed.text + "' speaks of " + left + " too many");
    }
  }

  private static boolean isLike(Pointed pointed, Cut other) {
    boolean sameFace =
        pointed.cut.from() == other.from()
            || other instanceof Cut.Tenon
            || other instanceof Comb
            || other instanceof Slanted;
    return sameFace && pointed.cut.term().equals(other.term()) && speaksOf(pointed.text, other);
  }

  private static int number(Cut cut) {
    return switch (cut) {
      case Cut.Holes holes -> holes.count();
      case Slots slots -> slots.count();
      case PocketHoles pockets -> pockets.centres().size();
      case InPlace inPlace -> inPlace.bores().size();
      default -> 1;
    };
  }

  private static boolean speaksOf(String text, Cut cut) {
    boolean named =
        text.contains(Words.ENGLISH.say("cut." + cut.term().replace(' ', '-')))
            || text.contains(many(cut));
    boolean inPlace = text.contains("bored in place");
    return switch (cut) {
      case Cut.Shaped shaped -> false;
      case Cut.Roundover roundover -> false;
      case Slanted.Housing housing -> named && text.contains("walls lean");
      case Cut.Trench trench ->
          named
              && !text.contains("walls lean")
              && (isFar(text) == (trench.from() == Face.BACK) || text.contains(", through"));
      case Cut.Tenon tenon -> named;
      case Comb comb -> named && text.contains("sockets");
      case Cut.Holes holes ->
          text.contains("Ø") && !text.contains("°") && (named || holes.term().equals("hole"));
      case PocketHoles pockets ->
          named && text.contains("°") && isFar(text) == (pockets.from() == Face.BACK);
      case Slanted.Slope slope -> slope(text, slope);
      case Slots slots -> named && text.matches(".*(round ends|plunged).*");
      case Dovetails dovetails -> text.contains(dovetails.isTails() ? " tails for " : "pins for ");
      case SplineSlot slot -> named;
      case InPlace each -> inPlace;
    };
  }

  private static boolean isFar(String text) {
    return text.contains("in the far face");
  }

  private static String many(Cut cut) {
    String key = "cut." + cut.term().replace(' ', '-');
    return Words.ENGLISH.say(Words.ENGLISH.has(key + ".many") ? key + ".many" : key);
  }

  private static boolean slope(String text, Slanted.Slope slope) {
    return switch (slope.kind()) {
      case BEVEL -> text.contains("bevelled");
      case MITRE -> text.contains("mitred");
      case CHAMFER -> text.contains("chamfer");
      case TAPER -> text.contains("taper,");
    };
  }

  private double away(Face view, At tip, Cut cut) {
    return regions(cut).stream()
        .mapToDouble(each -> tracing.away(view, tip, each))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** What a cut covers, so that it can be told at which one an arrow points. */
  private List<Box> regions(Cut cut) {
    return switch (cut) {
      case Cut.Tenon tenon -> List.of(tenon.tenon());
      case Comb comb -> comb.boxes();
      case Dovetails row -> List.of(row.end());
      case Cut.Holes holes ->
          holes.centres().stream().map(at -> around(at, holes.mouth())).toList();
      case Slots slots -> slots.centres().stream().map(slots::around).toList();
      case PocketHoles pockets ->
          pockets.centres().stream()
              .map(at -> around(Bores.mouth(tracing.flat(), pockets, at), pockets.diameter()))
              .toList();
      case Slanted.Slope slope -> List.of(sloping(slope));
      case SplineSlot slot -> List.of(slotted(slot));
      case Slanted.Housing housing -> List.of(housing.removed());
      case InPlace each ->
          each.bores().stream().map(bore -> around(bore.mouth(), each.diameter())).toList();
      case Cut.Trench trench -> trench.boxes();
      case Cut.Shaped shaped -> List.of();
      case Cut.Roundover roundover -> List.of();
    };
  }

  private Box sloping(Slanted.Slope slope) {
    return between(slope.first(), slope.second())
        .with(slope.along(), tracing.flat().box().on(slope.along()));
  }

  private static Box slotted(SplineSlot slot) {
    Box box = new Box(slot.run(), slot.run(), slot.run());
    for (Axis axis : slot.profile().axes()) {
      box = box.with(axis, slot.profile().extent(axis));
    }
    return box;
  }

  private static Box between(Point one, Point other) {
    Box box = around(one, Length.ZERO);
    return box.around(around(other, Length.ZERO));
  }

  private static Box around(Point at, Length wide) {
    Box box = new Box(range(at.x(), wide), range(at.y(), wide), range(at.z(), wide));
    return box;
  }

  private static Range range(Length at, Length wide) {
    Length half = wide.dividedBy(2, java.math.RoundingMode.FLOOR);
    return new Range(at.minus(half), at.plus(half));
  }

  /** What a note says of a cut. */
  Optional<String> of(Cut cut) {
    return Optional.ofNullable(said.get(cut));
  }

  /** The cut at which the note points that speaks of this one too, if it is another. */
  Optional<Cut> likeness(Cut cut) {
    return Optional.ofNullable(like.get(cut));
  }

  List<String> faults() {
    return List.copyOf(faults);
  }
}
