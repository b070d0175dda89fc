package org.benchmetre.farm.input;

import java.util.List;

/** The sheets of a farm's workbook, in reading order. Their names are fixed. */
public final class Sheets {

    /** The answer. */
    public static final String SUMMARY = "Summary";
    /** Single entries and what follows directly from them. */
    public static final String ENTRIES = "Entries";
    /** Parts, take-off and purchase list. */
    public static final String MATERIALS = "Materials";
    /** Irrigation systems, and parts by way. */
    public static final String IRRIGATION = "Irrigation";
    /** Plant stock. */
    public static final String CROP = "Crop";
    /** Work, feed, water and energy by month. */
    public static final String OPERATIONS = "Operations";
    /** The enterprise budget. */
    public static final String BUDGET = "Budget";
    /** Yearly cash over the plan. */
    public static final String CASH_FLOW = "Cash flow";

    /** Returns above total cost over steps of price and yield. */
    public static final String WHAT_IF = "What-if";

    /** All of them, in reading order. */
    public static final List<String> IN_ORDER =
            List.of(SUMMARY, ENTRIES, MATERIALS, IRRIGATION, CROP, OPERATIONS, BUDGET, CASH_FLOW, WHAT_IF);

    private Sheets() {}
}
