package storyrod.planset;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.validation.profiles.RuleId;

/** The rules of PDF/A (ISO 19005) that a PDF breaks, as an independent validator finds them. */
final class ArchivalRules {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private ArchivalRules() {}

  /**
   * What is broken: clause and test of each rule, such as {@code 6.2.4.3-2}, with what is said of
   * its first place.
   */
  static Map<String, String> broken(byte[] pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(flavour, 1, false, true, false)) {
      List<TestAssertion> all = validator.validate(parser).getTestAssertions();
      Map<String, String> broken = new TreeMap<>();
      all.forEach(each -> broken.putIfAbsent(name(each.getRuleId()), said(each)));
      return broken;
    }
  }

  private static String name(RuleId rule) {
    return rule.getClause() + "-" + rule.getTestNumber();
  }

  private static String said(TestAssertion broken) {
    return broken.getErrorMessage() + " at " + broken.getLocation().getContext();
  }
}
