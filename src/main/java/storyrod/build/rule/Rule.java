package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;

/** A rule of the trade about the order of work. */
public interface Rule {
  /** The stable name, under which a need says where it comes from. */
  String key();

  /** Why, as the end of a sentence for the user: lower case, no full stop. */
  String reason();

  /** What has to come before what in a job. */
  List<Need> needs(Job job);

  default Need need(String before, String after) {
    return new Need(before, after, key());
  }
}
