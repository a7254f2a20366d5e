package storyrod.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** One description gives one plan set, to the byte, wherever and whenever it is built. */
@Isolated("It sets the default locale.")
class SameBytesTest {
  private final Locale locale = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @AfterEach
  void restore() {
    Locale.setDefault(locale);
    TimeZone.setDefault(zone);
  }

  // Turkish lower-cases I to a dotless i, and writes a comma for the decimal point.
  @Test
  void placeAndTongueOfTheMachineChangeNothing(@TempDir Path folder) {
    Map<String, byte[]> first = Shell.built(Shell.BENCH, folder.resolve("first"));
    Locale.setDefault(Locale.of("tr", "TR"));
    TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
    Same.assertSame(first, Shell.built(Shell.BENCH, folder.resolve("second")));
  }

  // Arabic as spoken in Egypt counts with digits of its own.
  @Test
  void millimetrePlanKeepsItsDigitsToo(@TempDir Path folder) {
    Path shelf = Shell.PROJECTS.resolve("wall-shelf");
    Map<String, byte[]> first = Shell.built(shelf, folder.resolve("first"));
    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
    TimeZone.setDefault(TimeZone.getTimeZone("America/Anchorage"));
    Same.assertSame(first, Shell.built(shelf, folder.resolve("second")));
  }
}
