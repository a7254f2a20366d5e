package storyrod.build;

import java.util.Locale;

/** The stages of work in their usual order. */
enum StageKey {
  MILLING,
  SIZING,
  JOINTS,
  SUB_ASSEMBLIES,
  ASSEMBLY,
  FINISHING,
  HARDWARE;

  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
