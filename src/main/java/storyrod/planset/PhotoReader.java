package storyrod.planset;

import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Located;

/** Takes JPEG and PNG files, told by what they hold; everything else is reported. */
public final class PhotoReader {
  /** More than any usual camera takes (from memory), and what a page can be laid out with. */
  public static final long MOST_PIXELS = 40_000_000;

  private final Diagnostics diagnostics;

  public PhotoReader(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /**
   * The photo of a file; nothing if it is none, or too large, which is reported. Its size is read
   * from its head before anything is unpacked.
   */
  public Optional<Photo> read(Located<String> file, byte[] bytes) {
    boolean jpeg = JpegFile.is(bytes);
    if (!jpeg && !PngFile.is(bytes)) {
      return fault(
          Diagnostic.error("photo-kind", file.at(), "this file is neither JPEG nor PNG")
              .hint("save the photo as JPEG or PNG; what the file holds counts, not its name"));
    }
    Optional<Photo> head = jpeg ? new JpegFile(bytes).head() : new PngFile(bytes).head();
    if (head.filter(PhotoReader::isTooLarge).isPresent()) {
      return fault(
          Diagnostic.error(
                  "photo-too-large",
                  file.at(),
                  "this photo has %d x %d pixels"
                      .formatted(head.get().width(), head.get().height()))
              .hint("make it smaller: at most 40 million pixels; 2000 x 1500 print well"));
    }
    return head.flatMap(each -> jpeg ? new JpegFile(bytes).photo() : new PngFile(bytes).photo())
        .or(
            () ->
                fault(
                    Diagnostic.error(
                            "photo-broken", file.at(), "this photo is broken, or of a rare kind")
                        .hint("open it in a picture program and save it anew as JPEG or PNG")));
  }

  private static boolean isTooLarge(Photo head) {
    return (long) head.width() * head.height() > MOST_PIXELS;
  }

  private Optional<Photo> fault(Diagnostic fault) {
    diagnostics.add(fault);
    return Optional.empty();
  }
}
