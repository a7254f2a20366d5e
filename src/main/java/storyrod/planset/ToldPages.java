package storyrod.planset;

/** Pages of an edition to which steps point where it has them. */
record ToldPages(boolean finish, boolean templates) {
  static final ToldPages ALL = new ToldPages(true, true);

  static ToldPages in(Edition edition) {
    return new ToldPages(edition.has("finish"), edition.has("fullsize"));
  }
}
