package storyrod.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import storyrod.planset.Stamp;
import storyrod.planset.StampedCopies;
import storyrod.words.Words;

/** Where stamped copies go: a file for each, by its number and its buyer's name. */
record CopyFolder(Path folder, Words words) {
  private static final int LONGEST = 40;

  /** Writes a copy for each stamp, each whole before it gets its name; returns the last file. */
  Path write(byte[] pdf, List<Stamp> stamps) throws IOException {
    new OutputFolder(folder).requireFolders();
    Files.createDirectories(folder);
    StampedCopies copies = new StampedCopies(pdf, words);
    int digits = Math.max(4, Integer.toString(highest(stamps)).length());
    Path last = folder;
    for (Stamp stamp : stamps) {
      last = folder.resolve(fileName(stamp, digits));
      Path fresh = Files.createTempFile(folder, ".storyrod-", ".pdf");
      try {
        Files.write(fresh, copies.copy(stamp));
        Files.move(fresh, last, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(fresh);
      }
    }
    return last;
  }

  private static int highest(List<Stamp> stamps) {
    return stamps.stream().mapToInt(Stamp::number).max().orElse(0);
  }

  /** The number, and what the name leaves when only plain letters and digits are kept. */
  static String fileName(Stamp stamp, int digits) {
    String plain =
        Normalizer.normalize(stamp.name(), Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    String number = "0".repeat(digits - Integer.toString(stamp.number()).length()) + stamp.number();
    String name = plain.substring(0, Math.min(LONGEST, plain.length()));
    return number + (name.isEmpty() ? "" : "-" + name) + ".pdf";
  }
}
