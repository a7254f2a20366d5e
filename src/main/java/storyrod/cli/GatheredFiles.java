package storyrod.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import storyrod.description.Library;
import storyrod.description.SourceText;

/**
 * A library that remembers what was taken from it, by paths from the description's folder, so that
 * the same files in one folder make the same plan.
 */
final class GatheredFiles implements Library {
  private final Library from;
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<String, String> names = new LinkedHashMap<>();

  GatheredFiles(Library from, SourceText description) {
    this.from = from;
    remember(Path.of(description.file()).getFileName().toString(), description);
  }

  @Override
  public Found find(String path, SourceText user) {
    Found found = from.find(path, user);
    found.text().ifPresent(text -> remember(beside(user, path), text));
    return found;
  }

  private String beside(SourceText user, String path) {
    try {
      Path at = Path.of(names.getOrDefault(user.file(), "")).resolveSibling(path).normalize();
      return at.toString().replace('\\', '/');
    } catch (InvalidPathException e) {
      return path;
    }
  }

  private void remember(String name, SourceText text) {
    names.putIfAbsent(text.file(), name);
    texts.putIfAbsent(name, text.text());
  }

  /** The texts by their paths, the description first. */
  Map<String, String> texts() {
    return texts;
  }
}
