package storyrod.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Located;
import storyrod.description.RecordEntry;
import storyrod.planset.Photo;
import storyrod.planset.PhotoReader;

/** The photos of a record, from a folder that no path and no link leads out of. */
record ProjectPhotos(Path folder) {
  private static final long MOST_BYTES = 16L << 20;

  /** Those of the folder in which a description lies. */
  static ProjectPhotos beside(String description) {
    Path folder = Path.of(description).toAbsolutePath().getParent();
    return new ProjectPhotos(folder == null ? Path.of("").toAbsolutePath() : folder);
  }

  /** The photos by their paths as written; what cannot be taken is reported. */
  Map<String, Photo> read(RecordEntry record, Diagnostics diagnostics) {
    Map<String, Photo> photos = new LinkedHashMap<>();
    record.photos().stream()
        .map(RecordEntry.Photo::file)
        .filter(file -> !photos.containsKey(file.value()))
        .forEach(
            file ->
                bytes(file, diagnostics)
                    .flatMap(bytes -> new PhotoReader(diagnostics).read(file, bytes))
                    .ifPresent(photo -> photos.put(file.value(), photo)));
    return photos;
  }

  private Optional<byte[]> bytes(Located<String> file, Diagnostics diagnostics) {
    try {
      Optional<Diagnostic> fault = fault(file);
      fault.ifPresent(diagnostics::add);
      return fault.isPresent()
          ? Optional.empty()
          : Optional.of(Files.readAllBytes(folder.resolve(file.value())));
    } catch (IOException | InvalidPathException e) {
      diagnostics.add(
          Diagnostic.error("photo-missing", file.at(), "this file cannot be read")
              .hint("see that it is there and allowed"));
      return Optional.empty();
    }
  }

  private Optional<Diagnostic> fault(Located<String> file) throws IOException {
    String written = file.value();
    if (leadsOut(written)) {
      return Optional.of(
          Diagnostic.error(
                  "photo-outside", file.at(), "this is no path inside the project's folder")
              .hint("copy it there and write its path from there, such as `pictures/bench.jpg`"));
    }
    Path path = folder.resolve(written);
    if (!Files.isRegularFile(path)) {
      return Optional.of(
          Diagnostic.error("photo-missing", file.at(), "there is no such file")
              .hint("it is looked for from the folder of the description"));
    }
    if (RealPlace.isOutside(path, folder)) {
      return Optional.of(
          Diagnostic.error("photo-outside", file.at(), "a link leads out of the project's folder")
              .hint("copy the photo itself into the folder"));
    }
    return Files.size(path) > MOST_BYTES
        ? Optional.of(
            Diagnostic.error("photo-too-large", file.at(), "this file is larger than 16 MiB")
                .hint("make the photo smaller; 2000 x 1500 pixels print well"))
        : Optional.empty();
  }

  /** An absolute path of any system, an address, or a path with a step upwards. */
  private static boolean leadsOut(String path) {
    return path.matches("[/\\\\].*|[A-Za-z][A-Za-z0-9+.-]*:.*")
        || java.util.Arrays.asList(path.split("[/\\\\]")).contains("..");
  }
}
