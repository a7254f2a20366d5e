package storyrod.check;

/**
 * What a check is about, for a maker who wonders why it speaks.
 *
 * @param rule what it checks and when it finds something
 * @param source where the rule is from: a published one by its name, "common practice", or "from
 *     memory" where no text was seen
 * @param limits what it does not look at, or takes to be so
 */
public record Explanation(String rule, String source, String limits) {}
