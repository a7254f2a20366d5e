package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.piece.Cut;
import storyrod.piece.Piece;

/** What is special about fixing the front of a drawer: what holds it until its own screws do. */
record FrontTraits(Piece piece, FrontHoles holes) {
  FrontTraits(Piece piece) {
    this(piece, new FrontHoles(piece));
  }

  /** Screws through its pull's holes hold it if they bite in the box; one lets it turn. */
  List<String> of(Operation operation) {
    boolean isScrewed = bored(operation) > 0 && isBoxWhole(operation);
    boolean isDrilled = operation.cuts().stream().anyMatch(holes::isForHandle);
    return Stream.of(
            Optional.of("fit-front"),
            Optional.of(isScrewed ? "fit-front-screwed" : "fit-front-taped"),
            Optional.of("fit-front-turning").filter(each -> isScrewed && bored(operation) == 1),
            Optional.of("fit-front-drilled").filter(each -> isDrilled))
        .flatMap(Optional::stream)
        .toList();
  }

  private int bored(Operation operation) {
    return operation.parts().stream()
        .flatMap(part -> piece.part(part).cuts(Cut.Holes.class).stream())
        .filter(holes::isForHandle)
        .mapToInt(Cut.Holes::count)
        .sum();
  }

  /** Whether nothing behind the front is bored for its pull before it is fixed. */
  private boolean isBoxWhole(Operation operation) {
    return operation.joints().stream()
        .flatMap(joint -> Stream.of(joint.first(), joint.second()))
        .filter(part -> !operation.parts().contains(part))
        .map(piece::part)
        .flatMap(part -> part.cuts().stream().filter(cut -> holes.guide(part, cut).isEmpty()))
        .noneMatch(holes::isForHandle);
  }
}
