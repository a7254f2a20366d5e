package storyrod.planset;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Seat;
import storyrod.build.Seat.How;
import storyrod.build.Seats;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What a fitting step says of the places of its parts; equal parts are spoken of together. */
record SeatData(Piece piece, PartPhrases phrases) {
  /** Parts that are set alike: their marks, the marks of what they are set by, and the faces. */
  private record Group(
      How how,
      Set<String> parts,
      Set<String> on,
      Set<Face> faces,
      Length distance,
      boolean isInner) {
    boolean isTurnedTwin(Group other) {
      return faces.size() == 1
          && other.faces.size() == 1
          && faces.iterator().next().opposite() == other.faces.iterator().next()
          && parts.size() == other.parts.size();
    }
  }

  /** What shares a group: the kind, the marks on both sides, the distance, and a face or axis. */
  private record Likeness(How how, String part, String on, Length distance, Object where) {}

  List<Map<String, Object>> of(Step step) {
    List<Seat> seats = seats(step);
    boolean isUnit = step.operations().stream().allMatch(each -> each.parts().size() > 1);
    List<Seat> marked = seats.stream().filter(SeatData::isMarked).toList();
    List<Group> groups = new ArrayList<>(groups(marked, isUnit));
    groups.addAll(flush(seats.stream().filter(seat -> seat.how() == How.FLUSH).toList()));
    groups.addAll(groups(seats.stream().filter(SeatData::isAgainst).toList(), false));
    List<String> moving =
        step.operations().stream().flatMap(each -> each.parts().stream()).toList();
    return groups.stream().map(group -> data(group, moving)).toList();
  }

  /** The parts of which a seat tells the place. */
  List<String> seated(Step step) {
    return seats(step).stream().flatMap(seat -> Stream.of(seat.part(), seat.on())).toList();
  }

  private List<Seat> seats(Step step) {
    Seats.Finder finder = Seats.in(piece);
    return step.operations().stream()
        .flatMap(each -> finder.of(each, standing(step)).stream())
        .toList();
  }

  private static List<String> standing(Step step) {
    return Stream.concat(step.standing().stream(), step.newParts().stream()).toList();
  }

  private static boolean isAgainst(Seat seat) {
    return seat.how() == How.AGAINST && seat.distance().isZero();
  }

  private static boolean isMarked(Seat seat) {
    return seat.how() != How.FLUSH && !isAgainst(seat);
  }

  /** What is one already is set at one line, whatever parts of it lie there. */
  private List<Group> groups(List<Seat> seats, boolean isUnit) {
    Map<Likeness, Group> groups = new LinkedHashMap<>();
    for (Seat seat : seats) {
      Likeness likeness =
          new Likeness(
              seat.how(),
              isUnit ? "" : mark(seat.part()),
              mark(seat.on()),
              seat.distance(),
              List.of(seat.face().axis(), seat.isOffInnerFace(piece)));
      add(groups, likeness, seat);
    }
    return List.copyOf(groups.values());
  }

  /** Flush faces: first all that each part is flush with, then parts alike, then opposite ones. */
  private List<Group> flush(List<Seat> seats) {
    Map<Likeness, Group> byPart = new LinkedHashMap<>();
    for (Seat seat : seats) {
      add(byPart, new Likeness(How.FLUSH, seat.part(), "", Length.ZERO, seat.face()), seat);
    }
    Map<List<Object>, Group> alike = new LinkedHashMap<>();
    for (Group group : byPart.values()) {
      alike.merge(
          List.of(marks(group.parts()), marks(group.on()), group.faces()), group, this::sum);
    }
    Map<List<Object>, Group> faces = new LinkedHashMap<>();
    for (Group group : alike.values()) {
      faces.merge(List.of(group.parts(), group.on()), group, this::sum);
    }
    return together(twins(List.copyOf(faces.values())));
  }

  /** Different parts that are flush with the same ones, at the same faces, are told in one. */
  private List<Group> together(List<Group> groups) {
    Map<List<Object>, Group> together = new LinkedHashMap<>();
    for (Group group : groups) {
      together.merge(List.of(group.on(), group.faces()), group, this::sum);
    }
    return List.copyOf(together.values());
  }

  private List<Group> twins(List<Group> groups) {
    List<Group> joined = new ArrayList<>();
    for (Group group : groups) {
      joined.stream()
          .filter(other -> other.isTurnedTwin(group) && sameMarks(other, group))
          .findFirst()
          .ifPresentOrElse(
              other -> joined.set(joined.indexOf(other), sum(other, group)),
              () -> joined.add(group));
    }
    return joined;
  }

  private boolean sameMarks(Group one, Group other) {
    return marks(one.parts()).equals(marks(other.parts()))
        && marks(one.on()).equals(marks(other.on()));
  }

  private void add(Map<Likeness, Group> groups, Likeness likeness, Seat seat) {
    groups.merge(
        likeness,
        new Group(
            seat.how(),
            Set.of(seat.part()),
            Set.of(seat.on()),
            Set.of(seat.face()),
            seat.distance(),
            seat.isOffInnerFace(piece)),
        this::sum);
  }

  private Group sum(Group one, Group other) {
    return new Group(
        one.how(),
        union(one.parts(), other.parts()),
        union(one.on(), other.on()),
        union(one.faces(), other.faces()),
        one.distance(),
        one.isInner());
  }

  private static <T> Set<T> union(Set<T> one, Set<T> other) {
    Set<T> both = new LinkedHashSet<>(one);
    both.addAll(other);
    return both;
  }

  private Set<String> marks(Collection<String> parts) {
    Set<String> marks = new TreeSet<>();
    parts.forEach(part -> marks.add(mark(part)));
    return marks;
  }

  /** Whether a part is held from below, so that what is marked on its underside is hidden. */
  private boolean isLaid(String part) {
    return piece.part(part).thickness() == Axis.Z
        && piece.joints().stream()
            .filter(joint -> joint.first().equals(part) || joint.second().equals(part))
            .flatMap(joint -> joint.driven().stream())
            .allMatch(driven -> driven.face() == Face.BOTTOM);
  }

  private String mark(String part) {
    return piece.part(part).mark();
  }

  private Map<String, Object> data(Group group, List<String> moving) {
    Map<String, Object> data = new LinkedHashMap<>();
    Face face = group.faces().iterator().next();
    boolean isBoth =
        group.faces().stream().map(Face::axis).distinct().count() < group.faces().size();
    data.put("how", group.how().name().toLowerCase(java.util.Locale.ROOT));
    data.put("parts", phrases.parts(group.parts()));
    data.put("on", phrases.parts(group.on()));
    data.put("onMarks", phrases.marks(group.on()));
    data.put("faces", group.faces().stream().map(Face::word).toList());
    data.put("each", isBoth ? group.parts().size() / 2 : 0);
    data.put("twins", isBoth ? twinSides(group) : List.of());
    data.put("side", side(piece.part(group.on().iterator().next()), face.axis()));
    data.put("nearSide", side(piece.part(group.parts().iterator().next()), face.axis()));
    data.put(
        "laidOver", moving.containsAll(group.on()) && group.on().stream().allMatch(this::isLaid));
    data.put("inner", group.isInner());
    data.put("touches", group.distance().isZero());
    data.put("distance", piece.description().printed().formatWithUnit(group.distance()));
    return data;
  }

  /** Of two parts that are not each flush on its own side, the face at which it is; else none. */
  private List<Map<String, String>> twinSides(Group group) {
    List<Face> faces = List.copyOf(group.faces());
    List<String> places =
        group.parts().stream()
            .map(each -> phrases.places(piece.part(each)))
            .map(SeatData::only)
            .toList();
    boolean isTold =
        places.size() == 2
            && faces.size() == 2
            && !places.contains("")
            && !places.getFirst().equals(faces.getFirst().word());
    return isTold
        ? List.of(
            Map.of("place", places.getFirst(), "face", faces.getFirst().word()),
            Map.of("place", places.getLast(), "face", faces.getLast().word()))
        : List.of();
  }

  private static String only(List<String> places) {
    return places.size() == 1 ? places.getFirst() : "";
  }

  /** Whether a part's end, edge or face lies across an axis. */
  static String side(Part part, Axis axis) {
    return axis == part.length() ? "end" : axis == part.width() ? "edge" : "face";
  }
}
