package storyrod.build;

/** What is known of a piece's parts by where they stand, before any order of work. */
record Surroundings(Insides insides, Late late, MountLines mounts, Coats coats) {}
