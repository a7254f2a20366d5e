package storyrod.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Directed stretches that are joined, end to start, to rings with the area to their left. */
final class RingPieces {
  private static final int Y_BITS = 32;
  private static final long Y_MASK = (1L << Y_BITS) - 1;

  private final Map<Long, List<Piece>> byStart = new HashMap<>();
  private final List<Piece> pieces = new ArrayList<>();

  private static final class Piece {
    private final long fromX;
    private final long fromY;
    private final long toX;
    private final long toY;
    private boolean isUsed;

    private Piece(long fromX, long fromY, long toX, long toY) {
      this.fromX = fromX;
      this.fromY = fromY;
      this.toX = toX;
      this.toY = toY;
    }

    /**
     * How far another piece turns to the left of this one; straight back counts as a right turn.
     */
    private double turn(Piece next) {
      double dx = toX - fromX;
      double dy = toY - fromY;
      double nextX = next.toX - next.fromX;
      double nextY = next.toY - next.fromY;
      double turn = Math.atan2(dx * nextY - dy * nextX, dx * nextX + dy * nextY);
      return turn == Math.PI ? -Math.PI : turn;
    }
  }

  /** Adds a stretch, unless the grid has made a point of it. */
  void add(long fromX, long fromY, long toX, long toY) {
    if (fromX != toX || fromY != toY) {
      Piece piece = new Piece(fromX, fromY, toX, toY);
      pieces.add(piece);
      byStart.computeIfAbsent(key(fromX, fromY), key -> new ArrayList<>(2)).add(piece);
    }
  }

  private static long key(long x, long y) {
    return x << Y_BITS | y & Y_MASK;
  }

  /** The rings, without slivers; none if a piece has nothing to go on with. */
  Optional<List<ExactRing>> rings() {
    List<ExactRing> rings = new ArrayList<>();
    for (Piece piece : pieces) {
      if (!piece.isUsed) {
        Optional<ExactRing> ring = from(piece);
        if (ring.isEmpty()) {
          return Optional.empty();
        }
        ring.filter(each -> !each.isSliver()).ifPresent(rings::add);
      }
    }
    return Optional.of(rings);
  }

  /** Goes on with the sharpest turn to the left, so that areas which only touch stay apart. */
  private Optional<ExactRing> from(Piece first) {
    RingPath path = new RingPath();
    Piece at = first;
    while (at != null) {
      path.add(at.fromX, at.fromY);
      Piece next = after(at, first);
      if (next != null) {
        next.isUsed = true;
      }
      if (next == first) {
        return Optional.of(path.ring());
      }
      at = next;
    }
    return Optional.empty();
  }

  private Piece after(Piece piece, Piece first) {
    Piece best = null;
    for (Piece next : byStart.getOrDefault(key(piece.toX, piece.toY), List.of())) {
      if (!next.isUsed && (best == null || piece.turn(next) > piece.turn(best))) {
        best = next;
      }
    }
    return best;
  }
}
