package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import storyrod.description.FinishEntry;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.Surfaces;

/**
 * The coats of a finish as sessions: each takes the time that its area takes, by the table of
 * rates, and dries before the next.
 */
final class Coats {
  private static final Map<String, List<List<String>>> RATES = Figures.read("rates.csv");
  private static final double MM2_PER_SQUARE_METRE = 1e6;

  /** One of an offcut's coats, once it is sanded (common practice). */
  private static final int OFFCUT_MINUTES = 5;

  private final Piece piece;
  private final PreFinished early;
  private final double openMm2;

  Coats(Piece piece) {
    this.piece = piece;
    this.early = new PreFinished(piece);
    this.openMm2 = piece.description().finish().isPresent() ? Surfaces.of(piece).openMm2() : 0;
  }

  /** On what is not finished early; first it is made ready, for so many minutes, and sanded. */
  List<Session> onPiece(FinishEntry finish, int minutes) {
    double left =
        openMm2 - early.parts().stream().map(piece::part).mapToDouble(this::earlyMm2).sum();
    double squareMetres = Math.max(0, left) / MM2_PER_SQUARE_METRE;
    return sessions(finish.products(), squareMetres, minutes + workedFor("sanded", squareMetres));
  }

  /**
   * On the faces of a part that are finished before it is built in; it is sanded already. What goes
   * on over the coats, such as wax, waits until all glue is dry.
   */
  List<Session> before(FinishEntry finish, Part part, int minutes) {
    return sessions(List.of(finish), earlyMm2(part) / MM2_PER_SQUARE_METRE, minutes);
  }

  /** On an offcut; the first takes so many minutes. */
  List<Session> onOffcut(FinishEntry finish, int minutes) {
    List<Session> sessions = new ArrayList<>();
    for (FinishEntry product : finish.products()) {
      for (int coat = 0; coat < product.coats(); coat++) {
        int work = sessions.isEmpty() ? minutes : OFFCUT_MINUTES;
        sessions.add(new Session(work, dryMinutes(product)));
      }
    }
    return List.copyOf(sessions);
  }

  private static List<Session> sessions(
      List<FinishEntry> products, double squareMetres, int readyMinutes) {
    List<Session> sessions = new ArrayList<>();
    for (FinishEntry product : products) {
      int coat = workedFor(product.how().orElse("any"), squareMetres);
      for (int at = 0; at < product.coats(); at++) {
        int before = sessions.isEmpty() ? readyMinutes : workedFor("rubbed", squareMetres);
        sessions.add(new Session(before + coat, dryMinutes(product)));
      }
    }
    return List.copyOf(sessions);
  }

  private double earlyMm2(Part part) {
    double face = part.finishedLength().toMm() * part.finishedWidth().toMm();
    return early.faces(part.name()).size() * face;
  }

  private static int dryMinutes(FinishEntry product) {
    return 60 * product.dryHours();
  }

  /** Minutes to make ready and to work so many square metres, to the next whole minute. */
  private static int workedFor(String work, double squareMetres) {
    List<String> row = RATES.get(work).getFirst();
    double perHour = Double.parseDouble(row.get(2));
    return Integer.parseInt(row.get(1)) + (int) Math.ceil(60 * squareMetres / perHour);
  }
}
