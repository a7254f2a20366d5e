package storyrod.build;

/**
 * Work that is done in one go, and what dries after it: one coat of a finish, or the whole of any
 * other operation.
 *
 * @param minutes of work
 * @param waitMinutes that must pass before the next session, or anything that needs it, may start
 */
public record Session(int minutes, int waitMinutes) {}
