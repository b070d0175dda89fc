package org.benchmetre.farm.input;

import java.util.List;

/** The sheets of a farm's workbook, in reading order. Their names are fixed. */
public final class Sheets {

    /** The answer. */
    public static final String SUMMARY = "Results workings";
    /** Single entries and what follows directly from them. */
    public static final String ENTRIES = "House workings";
    /** Parts, take-off and purchase list. */
    public static final String MATERIALS = "Parts workings";
    /** Irrigation systems, and parts by way. */
    public static final String IRRIGATION = "Irrigation workings";
    /** Plant stock. */
    public static final String CROP = "Crop workings";
    /** Work, feed, water and energy by month. */
    public static final String OPERATIONS = "Labour, water, heat workings";
    /** The enterprise budget. */
    public static final String BUDGET = "Budget workings";
    /** Yearly cash over the plan. */
    public static final String CASH_FLOW = "Cash workings";
    /** Loans and what secures them. */
    public static final String LOANS = "Loans workings";

    /** Funds, statements, returns and ratios. */
    public static final String LENDING = "Funds workings";
    /** What breaks first. */
    public static final String STRESS = "Stress workings";

    /** What is submitted: assumptions to doubt, what is complete, figures as they stood. */
    public static final String SUBMISSION = "Submission workings";

    /** Returns over steps of two entries, and how far the usual range of each moves them. */
    public static final String WHAT_IF = "What if workings";
    /** Lines that are repeated for each case of a table or a swing; always last. */
    public static final String CASES = "Cases workings";

    /** All of them, in reading order. */
    public static final List<String> IN_ORDER = List.of(
            SUMMARY,
            ENTRIES,
            MATERIALS,
            IRRIGATION,
            CROP,
            OPERATIONS,
            BUDGET,
            CASH_FLOW,
            LOANS,
            LENDING,
            STRESS,
            SUBMISSION,
            WHAT_IF,
            CASES);

    private Sheets() {}
}
