package storyrod.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The codes of all diagnostics, found in the sources: a text or a constant where a diagnostic, a
 * formula's fault or a failed look-up is made, and what each check calls itself.
 */
final class DiagnosticCodes {
  private static final Pattern MADE =
      Pattern.compile(
          "(?:Diagnostic\\s*\\.\\s*(?:error|warning|advice)|Lookup\\.none|new FormulaFault"
              + "|Names\\.word|\\bword)\\(\\s*"
              + "(\"[a-z0-9-]+\"(?:\\s*\\+\\s*\\w+)?|(?:\\w+\\.)?[A-Z][A-Z_0-9]*|code\\(\\))[,\\s]");
  private static final Pattern CONSTANT =
      Pattern.compile("static final String ([A-Z][A-Z_0-9]*) =\\s*\"([^\"]*)\"");
  private static final Pattern OWN =
      Pattern.compile("String code\\(\\) \\{\\s*return \"([a-z0-9-]+)\"");

  private DiagnosticCodes() {}

  /** All codes, in the order of their letters. */
  static Set<String> inSources() throws IOException {
    Map<Path, String> sources = sources();
    Map<String, String> constants = new TreeMap<>();
    sources.forEach((file, text) -> constants(file, text, constants));
    Set<String> codes = new TreeSet<>();
    sources.forEach((file, text) -> codes(file, text, constants, codes));
    return codes;
  }

  private static Map<Path, String> sources() throws IOException {
    Map<Path, String> sources = new TreeMap<>();
    try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
      for (Path file : all.filter(each -> each.toString().endsWith(".java")).toList()) {
        sources.put(file, Files.readString(file));
      }
    }
    return sources;
  }

  private static void constants(Path file, String text, Map<String, String> constants) {
    Matcher constant = CONSTANT.matcher(text);
    while (constant.find()) {
      constants.put(className(file) + "." + constant.group(1), constant.group(2));
    }
  }

  private static String className(Path file) {
    return file.getFileName().toString().replace(".java", "");
  }

  private static void codes(
      Path file, String text, Map<String, String> constants, Set<String> codes) {
    Matcher own = OWN.matcher(text);
    while (own.find()) {
      codes.add(own.group(1));
    }
    Matcher made = MADE.matcher(text);
    while (made.find()) {
      String code = made.group(1);
      if (code.contains("+")) {
        open(code.substring(1, code.lastIndexOf('"')), codes);
      } else if (code.startsWith("\"")) {
        codes.add(code.substring(1, code.length() - 1));
      } else if (!code.equals("code()")) {
        codes.add(constant(file, code, constants));
      }
    }
  }

  /** {@code "unknown-" + what}: the reader says it of joints, cuts and shapes. */
  private static void open(String start, Set<String> codes) {
    codes.add(start + "joint");
    codes.add(start + "cut");
    codes.add(start + "shape");
  }

  private static String constant(Path file, String name, Map<String, String> constants) {
    String full = name.contains(".") ? name : className(file) + "." + name;
    String code = constants.get(full);
    if (code == null) {
      throw new AssertionError("no text for the constant " + name + " in " + file);
    }
    return code;
  }
}
