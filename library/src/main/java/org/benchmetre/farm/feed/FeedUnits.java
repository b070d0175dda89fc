package org.benchmetre.farm.feed;

import org.benchmetre.budget.unit.Unit;

/** The units of a feed. A gram a cubic metre is a milligram a litre. */
final class FeedUnits {

    /** Concentration of an ion, a salt or an acid. */
    static final Unit MMOL_PER_LITRE = Unit.parse("mmol/L");
    /** Concentration of charge. */
    static final Unit MEQ_PER_LITRE = Unit.parse("meq/L");
    /** Charge of an ion. */
    static final Unit CHARGE = Unit.parse("meq/mmol");
    /** Molar mass. */
    static final Unit MOLAR_MASS = Unit.parse("g/mol");
    /** Mass of an ion in the feed. */
    static final Unit MG_PER_LITRE = Unit.parse("mg/L");
    /** Mass of a salt in the feed. */
    static final Unit GRAMS_PER_VOLUME = Unit.parse("g/m3");
    /** Volume of acid in the feed. */
    static final Unit ACID_PER_VOLUME = Unit.parse("mL/m3");
    /** Cost of the feed. */
    static final Unit MONEY_PER_VOLUME = Unit.parse("money/m3");
    /** Price of a salt. */
    static final Unit MONEY_PER_KG = Unit.parse("money/kg");

    private FeedUnits() {}
}
