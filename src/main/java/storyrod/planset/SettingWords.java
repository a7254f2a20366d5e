package storyrod.planset;

import storyrod.build.BuildPlan.Setting;
import storyrod.build.Guides;
import storyrod.geometry.Face;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.planset.StepText.SettingText;
import storyrod.words.Words;

/** A setting in words: what it is, for which part, and its value. */
record SettingWords(Piece piece, Words words) {
  /** What is measured on the mitre, as a note of the part's drawing tells it. */
  private static final String ON_MITRE = "spline-inset";

  SettingText text(Setting setting) {
    return new SettingText(
        Guides.isOne(setting) ? guide(setting) : name(setting),
        setting.part().map(part -> piece.part(part).mark()).orElse(""),
        value(setting));
  }

  /** What stands behind a point in a setting's key is the mark that its words name. */
  private String name(Setting setting) {
    String[] key = setting.key().split("\\.", 2);
    return key.length == 1
        ? words.say("setting." + key[0])
        : words.say("setting." + key[0], key[1]);
  }

  /** Where a fence, a stop or a line lies, by the side of the part from which it is measured. */
  private String guide(Setting setting) {
    String[] key = setting.key().split("-");
    Part part = piece.part(setting.part().orElseThrow());
    Face face = Face.named(key[1]).orElseThrow();
    String side = SeatData.side(part, face.axis());
    return words.say("setting." + key[0] + "." + side, words.say("edge." + face.word()));
  }

  private String value(Setting setting) {
    return setting
        .angle()
        .map(angle -> words.figures(angle.toString()))
        .orElseGet(() -> length(setting));
  }

  private String length(Setting setting) {
    LengthFormat format = piece.description().printed();
    if (Guides.isOne(setting) || setting.key().equals(ON_MITRE)) {
      return format.toldWithUnit(setting.value());
    }
    LengthFormat figures = isFine(setting.key()) ? format.forBits() : format;
    return figures.formatWithUnit(setting.value());
  }

  /** What comes in steps of drills, or is a little wider than the part that goes in. */
  private static boolean isFine(String key) {
    return key.endsWith("-diameter") || key.endsWith("-along-face");
  }
}
