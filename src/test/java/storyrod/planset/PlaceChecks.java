package storyrod.planset;

import java.util.List;
import java.util.stream.IntStream;
import storyrod.planset.FinishedPdf.Link;

/** Page numbers, links, bookmarks and contents lead where they say. */
final class PlaceChecks {
  private PlaceChecks() {}

  static List<String> numbers(FinishedPdf pdf) {
    String of = FinishedPdf.squeezed(pdf.words().say("foot.of"));
    return IntStream.rangeClosed(2, pdf.count())
        .filter(page -> !pdf.text(page).contains(page + of + pdf.count()))
        .mapToObj(page -> "page " + page + " of " + pdf.count() + ": " + pdf.text(page))
        .toList();
  }

  static List<String> links(FinishedPdf pdf) {
    List<Link> links = pdf.links();
    return links.isEmpty() && !pdf.isPreview()
        ? List.of("no links at all")
        : links.stream().filter(each -> !leads(pdf, each)).map(Link::toString).toList();
  }

  /**
   * A figure is a page in the contents and beside an exploded view, and a step elsewhere; a mark
   * may have its count.
   */
  private static boolean leads(FinishedPdf pdf, Link link) {
    if (link.text().matches("\\d+")) {
      return link.page() < listsFrom(pdf) || link.page() == begins(pdf, "exploded.title")
          ? Integer.parseInt(link.text()) == link.target()
          : isStep(pdf, link);
    }
    return !link.text().isEmpty()
        && pdf.text(link.target()).contains(link.text().replaceFirst("(×\\d+)?,?$", ""));
  }

  /** The page on which the lists begin, behind the contents. */
  private static int listsFrom(FinishedPdf pdf) {
    return begins(pdf, "cutlist.title");
  }

  private static int begins(FinishedPdf pdf, String section) {
    String title = FinishedPdf.squeezed(pdf.words().say(section));
    return pdf.bookmarks().stream()
        .filter(each -> each.text().equals(title))
        .findFirst()
        .orElseThrow()
        .target();
  }

  private static boolean isStep(FinishedPdf pdf, Link link) {
    return pdf.bookmarks().stream()
        .filter(each -> each.text().matches(link.text() + "\\D.*"))
        .anyMatch(each -> each.level() == 1 && each.target() == link.target());
  }

  static List<String> bookmarks(FinishedPdf pdf) {
    List<Link> bookmarks = pdf.bookmarks();
    if (bookmarks.isEmpty()) {
      return List.of("no bookmarks at all");
    }
    String cover = FinishedPdf.squeezed(pdf.words().say("cover.title"));
    return bookmarks.stream()
        .filter(
            each ->
                each.text().equals(cover)
                    ? each.target() != 1
                    : !pdf.text(each.target()).contains(each.text()))
        .map(Link::toString)
        .toList();
  }

  /** Each section that comes after the contents is named there with its page. */
  static List<String> contents(FinishedPdf pdf) {
    if (pdf.isPreview()) {
      return List.of();
    }
    return pdf.bookmarks().stream()
        .filter(each -> each.level() == 0 && each.target() >= listsFrom(pdf))
        .filter(each -> pdf.links().stream().noneMatch(line -> isSame(line, each)))
        .map(each -> each + " is not in the contents")
        .toList();
  }

  private static boolean isSame(Link line, Link bookmark) {
    return line.text().equals(bookmark.text()) && line.target() == bookmark.target();
  }
}
