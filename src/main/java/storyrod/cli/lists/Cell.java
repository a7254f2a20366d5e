package storyrod.cli.lists;

import storyrod.description.Span;

/** What stands in one place of a list, without the spaces round it. */
record Cell(String text, Span at) {
  boolean isEmpty() {
    return text.isEmpty();
  }
}
