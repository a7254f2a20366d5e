package storyrod.planset;

import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;

/** The templates that come with the tool, escaped as HTML, with no way out to Java classes. */
final class Templates {
  /** Parses each template once. */
  static final Templates SHARED = new Templates();

  private final Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);

  Templates() {
    configuration.setClassLoaderForTemplateLoading(
        Templates.class.getClassLoader(), "storyrod/templates");
    configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    configuration.setLocalizedLookup(false);
    configuration.setDefaultEncoding("UTF-8");
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setLogTemplateExceptions(false);
    configuration.setWrapUncheckedExceptions(true);
    configuration.setFallbackOnNullLoopVariable(false);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
  }

  /** The text that a template makes of data. */
  String render(String template, Map<String, ?> data) {
    try {
      StringWriter out = new StringWriter();
      configuration.getTemplate(template).process(data, out);
      return out.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("bug: template " + template + ": " + e.getMessage(), e);
    }
  }
}
