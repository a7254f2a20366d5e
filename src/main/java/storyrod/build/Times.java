package storyrod.build;

/**
 * When a step can be done, in minutes on the clock from the start of work.
 *
 * @param earliestStart as soon as all that it needs is done and dry
 * @param latestStart the last start that does not move the end
 * @param floatMinutes the working time between the two
 * @param critical whether it is on a chain of steps and waits that decides the end
 */
public record Times(
    int earliestStart,
    int earliestFinish,
    int latestStart,
    int latestFinish,
    int floatMinutes,
    boolean critical) {}
