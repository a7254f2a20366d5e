package storyrod.drawing;

/**
 * What is said of a cut that helps to make a joint.
 *
 * @param mark of the part that is cut
 * @param words the trade's name and the figures
 */
public record JointLine(String mark, String words) {}
