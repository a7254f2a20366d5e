package storyrod.description;

import java.util.List;

/**
 * Parts that are built as a unit before they are fitted.
 *
 * @param name the full name; the name up to its last dot is that of the sub-assembly it is built
 *     into, if there is one
 * @param loose whether nothing holds it: it lies in or on the rest and is lifted off
 * @param parts the full names of its own parts, without those of sub-assemblies built into it
 */
public record AssemblyEntry(String name, String title, Span at, boolean loose, List<String> parts) {
  public AssemblyEntry {
    parts = List.copyOf(parts);
  }
}
