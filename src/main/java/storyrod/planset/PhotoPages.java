package storyrod.planset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.RecordEntry;
import storyrod.piece.Piece;

/**
 * The photos of a record, set on pages by their measured heights.
 *
 * @param columns how many stand side by side
 * @param pages rows of pictures, page by page
 */
public record PhotoPages(int columns, List<List<List<Picture>>> pages) {
  private static final TextMeasure CAPTION = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.3);
  private static final double BESIDE_MM = 5;
  private static final double BELOW_MM = 6.5;
  private static final double HIGHEST_OF_TWO_MM = 95;
  private static final double HIGHEST_MM = 150;

  public PhotoPages {
    pages = List.copyOf(pages);
  }

  /**
   * A photo in its place.
   *
   * @param name by which it is painted
   * @param shows what can be seen, for who cannot
   * @param about the part, the step and the day in words, or empty
   */
  public record Picture(
      String name, double widthMm, double heightMm, String shows, String caption, String about) {}

  static PhotoPages of(PlanSet set, Print print) {
    List<RecordEntry.Photo> photos = set.piece().description().record().photos();
    int columns = photos.size() == 1 ? 1 : 2;
    double width = print.paper().textWidthMm() / columns - BESIDE_MM;
    List<List<Picture>> rows = new ArrayList<>();
    for (int at = 0; at < photos.size(); at += columns) {
      rows.add(
          photos.subList(at, Math.min(at + columns, photos.size())).stream()
              .map(photo -> picture(set, photo, width, print.texts()))
              .toList());
    }
    double room = print.paper().roomMm() - 1;
    return new PhotoPages(
        columns, rows.isEmpty() ? List.of() : pages(rows, room, row -> rowMm(row, width)));
  }

  private static List<List<List<Picture>>> pages(
      List<List<Picture>> rows,
      double room,
      java.util.function.ToDoubleFunction<List<Picture>> heightMm) {
    return new RowPages(room - TableHeights.H1_MM, room, 1).of(rows, heightMm);
  }

  private static Picture picture(PlanSet set, RecordEntry.Photo entry, double width, Texts texts) {
    String file = entry.file().value();
    double ratio = set.kept().photo(file).ratio();
    double highest =
        set.piece().description().record().photos().size() == 1 ? HIGHEST_MM : HIGHEST_OF_TWO_MM;
    double height = Math.min(width / ratio, highest);
    return new Picture(
        file,
        height * ratio,
        height,
        entry.shows(),
        entry.caption(),
        about(set.piece(), entry, texts));
  }

  private static String about(Piece piece, RecordEntry.Photo entry, Texts texts) {
    Optional<String> mark =
        entry.part().map(part -> texts.say("record.photo.mark", piece.part(part).mark()));
    Optional<String> step =
        entry.step().map(number -> texts.say("record.photo.step", number.value()));
    return Stream.of(mark, step, entry.date().map(LocalDate::toString))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(" "));
  }

  private static double rowMm(List<Picture> row, double width) {
    return row.stream()
            .mapToDouble(
                each ->
                    each.heightMm() + CAPTION.heightMm(each.caption() + " " + each.about(), width))
            .max()
            .orElse(0)
        + BELOW_MM;
  }
}
