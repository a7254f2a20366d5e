package storyrod.description;

import storyrod.measure.Rational;

/** A price, in the maker's own currency, for one unit of stock. */
public record Price(Rational amount, PriceUnit per) {}
