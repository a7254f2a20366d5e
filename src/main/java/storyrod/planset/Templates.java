package storyrod.planset;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import storyrod.words.Words;

/**
 * The templates that come with the tool, and those that a project or a user lays over them; escaped
 * as HTML, with no way out to Java classes.
 */
public final class Templates {
  private static final String OWN = "storyrod/templates";
  private static final Pattern WORDS = Pattern.compile("words/([A-Za-z0-9-]+)\\.properties");

  /** Parses each template once. */
  public static final Templates SHARED = new Templates();

  private final Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);

  private final Map<String, String> overlay;

  Templates() {
    this(Map.of());
  }

  /**
   * The tool's templates with others over them.
   *
   * @param overlay texts by their path in {@code templates}, such as {@code cover/page.ftl}
   */
  public Templates(Map<String, String> overlay) {
    this.overlay = Map.copyOf(overlay);
    StringTemplateLoader over = new StringTemplateLoader();
    overlay.forEach(over::putTemplate);
    configuration.setTemplateLoader(
        new MultiTemplateLoader(
            new TemplateLoader[] {
              over, new ClassTemplateLoader(Templates.class.getClassLoader(), OWN)
            }));
    configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
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

  /**
   * The text that a template makes of data. {@code text_de.ftl} goes before {@code text.ftl} for
   * German words, also where other templates take it in.
   *
   * @throws TemplateFault if a template that lies over the tool's own is at fault
   */
  String render(String template, Words words, Map<String, ?> data) {
    Locale language = Locale.forLanguageTag(words.language());
    try {
      StringWriter out = new StringWriter();
      configuration.getTemplate(template, language).process(data, out);
      return out.toString();
    } catch (ParseException e) {
      throw isLaidOver(e.getTemplateName()) ? TemplateFault.in(e) : bug(template, e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      if (e.getCause() instanceof ParseException inner && isLaidOver(inner.getTemplateName())) {
        throw TemplateFault.in(inner);
      }
      throw isLaidOver(e.getTemplateSourceName()) ? TemplateFault.in(e) : bug(template, e);
    }
  }

  /** The tree of a text that templates made. */
  Document tree(String xhtml) {
    try {
      return Xhtml.parse(xhtml);
    } catch (IllegalStateException e) {
      throw overlay.isEmpty()
          ? e
          : new TemplateFault(
              "the templates %s: %s".formatted(overlay.keySet(), Xhtml.fault(e.getMessage())));
    }
  }

  private boolean isLaidOver(String template) {
    return overlay.containsKey(String.valueOf(template));
  }

  private static IllegalStateException bug(String template, Exception e) {
    return new IllegalStateException("bug: template " + template + ": " + e.getMessage(), e);
  }

  /** Whether there is a template of this path. */
  boolean has(String path) {
    return overlay.containsKey(path) || own(path).isPresent();
  }

  /**
   * The words of a language, with those laid over them; none if there is no such language. What a
   * language laid over has no words for is said in English.
   *
   * @param language by its tag in BCP 47
   */
  public Optional<Words> words(String language) {
    return languages().contains(language)
        ? properties("words/" + language + ".properties").map(own -> words(language, own))
        : Optional.empty();
  }

  private static Words words(String language, Map<String, String> own) {
    Map<String, String> all = new TreeMap<>(Words.ENGLISH.byKey());
    all.putAll(own);
    return new Words(language, all);
  }

  /** The tags of all languages that there are words for. */
  public Set<String> languages() {
    Set<String> languages = new TreeSet<>(Words.LANGUAGES);
    overlay.keySet().stream()
        .map(WORDS::matcher)
        .filter(Matcher::matches)
        .forEach(path -> languages.add(path.group(1)));
    return languages;
  }

  /**
   * Keys and values of a file among the templates; where it is laid over, both, the upper first.
   */
  Optional<Map<String, String>> properties(String path) {
    Map<String, String> values = new TreeMap<>();
    Optional<String> own = own(path);
    own.ifPresent(text -> values.putAll(read(text)));
    Optional.ofNullable(overlay.get(path)).ifPresent(text -> values.putAll(read(text)));
    return own.isPresent() || overlay.containsKey(path) ? Optional.of(values) : Optional.empty();
  }

  private static Map<String, String> read(String text) {
    Properties properties = new Properties();
    try {
      properties.load(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> values = new TreeMap<>();
    properties.stringPropertyNames().forEach(key -> values.put(key, properties.getProperty(key)));
    return values;
  }

  private static Optional<String> own(String path) {
    try (InputStream in = Templates.class.getResourceAsStream("/" + OWN + "/" + path)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
