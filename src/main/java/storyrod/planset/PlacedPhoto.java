package storyrod.planset;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.openpdf.text.Image;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfString;

/** A photo in its place, upright, with words for who cannot see it (ISO 32000-1, 14.9.3). */
final class PlacedPhoto extends PlacedPicture {
  private final Photo photo;
  private final String shows;

  PlacedPhoto(Photo photo, String shows, Size size) {
    super(size);
    this.photo = photo;
    this.shows = shows;
  }

  @Override
  void paint(PdfContentByte page, Place place) {
    try {
      float[] at = photo.matrix(place.x(), place.y(), place.width(), place.height());
      PdfDictionary words = new PdfDictionary();
      words.put(PdfName.ALT, new PdfString(shows, PdfObject.TEXT_UNICODE));
      page.beginMarkedContentSequence(PdfName.SPAN, words, true);
      byte[] printed = new PrintedPhoto(photo).bytes(place.width(), place.height());
      page.addImage(Image.getInstance(printed), at[0], at[1], at[2], at[3], at[4], at[5]);
      page.endMarkedContentSequence();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
