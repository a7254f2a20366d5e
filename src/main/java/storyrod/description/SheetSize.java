package storyrod.description;

import storyrod.measure.Length;

/** A sheet's size: along its face grain, then across. */
public record SheetSize(Length length, Length width) {}
