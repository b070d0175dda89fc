package org.benchmetre.budget.entry;

import java.io.Serializable;

/**
 * What an entry is, beyond its unit, for those who look after kinds of entries: price lists, warnings of old prices.
 *
 * @param kind what it is
 * @param year for a price, the entry along the same rows that holds the year it was asked; empty when there is none
 * @param source for a price, the entry along the same rows that holds where it comes from; empty when there is none
 * @param item for the price of an item that is no row of a table, the item as price lists call it; else empty
 * @param unit for a number whose unit is a column of its own, the entry along the same rows that holds it; empty when there is none
 */
public record Meaning(Kind kind, String year, String source, String item, String unit) implements Serializable {

    /** What entries are. */
    public enum Kind {
        /** Nothing that matters here. */
        PLAIN,
        /** A price. */
        PRICE,
        /** The key of a row of its table. */
        KEY,
        /** The label of a row. */
        LABEL
    }

    /** An entry of no kind that matters. */
    public static final Meaning PLAIN = new Meaning(Kind.PLAIN, "", "", "", "");

    /** The key of a row. */
    public static final Meaning KEY = new Meaning(Kind.KEY, "", "", "", "");

    /** The label of a row. */
    public static final Meaning LABEL = new Meaning(Kind.LABEL, "", "", "", "");

    /**
     * A price.
     *
     * @param year the entry that holds its year
     * @param source the entry that holds its source
     * @return the meaning
     */
    public static Meaning price(String year, String source) {
        return new Meaning(Kind.PRICE, year, source, "", "");
    }

    /**
     * The price of one item, in money for a unit of it, that stands in a single entry. One year stands for all such prices, so that a look
     * for old prices finds it there.
     *
     * @param item as price lists call it
     * @param year the single entry that holds the year
     * @return the meaning
     */
    public static Meaning priceOf(String item, String year) {
        return new Meaning(Kind.PLAIN, year, "", item, "");
    }

    /**
     * A number whose unit has a column of its own.
     *
     * @param unit the entry that holds its unit
     * @return the meaning
     */
    public static Meaning measuredIn(String unit) {
        return new Meaning(Kind.PLAIN, "", "", "", unit);
    }

    /**
     * Whether the entry is a price.
     *
     * @return true for a price
     */
    public boolean isPrice() {
        return kind == Kind.PRICE;
    }
}
