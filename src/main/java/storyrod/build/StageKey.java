package storyrod.build;

import storyrod.words.Words;

/** The stages of work in their usual order. */
enum StageKey {
  MILLING,
  SIZING,
  TRIAL,
  JOINTS,
  SUB_ASSEMBLIES,
  ASSEMBLY,
  FINISHING,
  HARDWARE;

  String word() {
    return Words.hyphenated(this);
  }
}
