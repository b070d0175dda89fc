package org.benchmetre.farm.input;

/** The sheets of a farm's workbook, in reading order. Their names are fixed. */
public final class Sheets {

    /** The answer. */
    public static final String SUMMARY = "Summary";
    /** Single entries and what follows directly from them. */
    public static final String ENTRIES = "Entries";
    /** Parts, take-off and purchase list. */
    public static final String MATERIALS = "Materials";
    /** Ways to water, and parts by way. */
    public static final String IRRIGATION = "Irrigation";
    /** Plant stock. */
    public static final String CROP = "Crop";

    /** The enterprise budget. */
    public static final String BUDGET = "Budget";
    /** Yearly cash over the plan. */
    public static final String CASH_FLOW = "Cash flow";

    private Sheets() {}
}
