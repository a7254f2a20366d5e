package storyrod.planset;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.util.List;

/**
 * What templates say words by: the key, then values for its places. A value that the data has not
 * is a fault of the template, as it is where it stands by itself: else "null" would be printed.
 */
record Said(Texts texts) implements TemplateMethodModelEx {
  @Override
  @SuppressWarnings("rawtypes")
  public Object exec(List arguments) throws TemplateModelException {
    String key = String.valueOf(arguments.getFirst());
    Object[] values = arguments.subList(1, arguments.size()).toArray();
    for (Object value : values) {
      if (value == null) {
        throw new TemplateModelException("a value for the words '" + key + "' is missing");
      }
    }
    return texts.say(key, values);
  }
}
