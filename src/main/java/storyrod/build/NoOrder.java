package storyrod.build;

import java.util.List;
import java.util.stream.Collectors;
import storyrod.description.Diagnostic;
import storyrod.description.Span;
import storyrod.piece.Piece;

/**
 * Tells why no order of work is possible: the shortest circle of steps that wait for each other.
 */
record NoOrder(Piece piece, List<Task> tasks, OwnOrder own) {
  Diagnostic diagnostic(List<Link> circle) {
    String why = circle.stream().map(this::told).collect(Collectors.joining("; "));
    List<Span> places =
        circle.stream().flatMap(link -> own.placesOf(name(link.earlier())).stream()).toList();
    Diagnostic fault =
        Diagnostic.error(
            "no-order",
            places.isEmpty() ? Span.startOf(piece.description().source()) : places.getFirst(),
            "no order of work is possible, for these wait for each other: " + why);
    for (Link link : circle.subList(1, circle.size())) {
      for (Span place : own.placesOf(name(link.earlier()))) {
        fault = fault.also(place, "`" + name(link.earlier()) + "` stands here");
      }
    }
    return fault.hint(
        places.isEmpty()
            ? "join one of these parts another way, or leave a joint between them out"
            : "leave one of these steps out of the orders, and it finds its own place");
  }

  private String told(Link link) {
    String both = "`" + name(link.earlier()) + "` comes before `" + name(link.later()) + "`, ";
    return both
        + switch (link.cause()) {
          case Link.OWN -> "as the order says";
          case Link.GEOMETRY -> "by the way in which the parts go together";
          default -> "since " + Breaches.why(link.cause());
        };
  }

  private String name(int task) {
    return tasks.get(task).name();
  }
}
