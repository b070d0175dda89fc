package org.benchmetre.farm.input;

import org.benchmetre.budget.unit.Unit;

/** The units the sections name most. */
public final class TradeUnits {

    /** One bench. */
    public static final Unit BENCH = Unit.parse("bench");
    /** One plant. */
    public static final Unit PLANT = Unit.parse("plant");
    /** One outlet of an irrigation line. */
    public static final Unit OUTLET = Unit.parse("outlet");
    /** One zone watered at a time. */
    public static final Unit ZONE = Unit.parse("zone");
    /** The unit of an item, which differs from row to row. */
    public static final Unit ITEM = Unit.parse("item");
    /** The unit of a driver, which differs from row to row. */
    public static final Unit DRIVER = Unit.parse("driver");
    /** One pack as sold. */
    public static final Unit PACK = Unit.parse("pack");
    /** Millimetre. */
    public static final Unit MILLIMETRE = Unit.parse("mm");
    /** Metre. */
    public static final Unit METRE = Unit.METRE;
    /** Square metre. */
    public static final Unit SQUARE_METRE = Unit.SQUARE_METRE;
    /** Litre. */
    public static final Unit LITRE = Unit.parse("L");
    /** Hour. */
    public static final Unit HOUR = Unit.parse("h");
    /** Plain number. */
    public static final Unit ONE = Unit.ONE;
    /** Money at today's prices. */
    public static final Unit MONEY = Unit.MONEY;

    /** Words for a default that has no published source. */
    public static final String COMMON = "common practice, no source";
    /** Words for a default that is made up. */
    public static final String INVENTED = "invented for the demo";

    private TradeUnits() {}
}
