package org.benchmetre.farm.input;

/** Headings of the tables to which several sections add lines of the same rows, so that a table names its rows once. */
public final class Tables {

    /** Parts as they are bought. */
    public static final String PARTS_BOUGHT = "Purchase list, for the chosen irrigation system";
    /** What a unit of a part costs a year. */
    public static final String PARTS_YEARLY = "Parts: yearly cost of a unit";
    /** What parts cost beside their price, by irrigation system. */
    public static final String PARTS_BY_SYSTEM = "Installing, charges and contingency by irrigation system";
    /** Tasks. */
    public static final String TASKS = "Tasks: hours and money a year";
    /** Groups of tasks. */
    public static final String TASK_GROUPS = "Labour and inputs by group of tasks";
    /** What tasks are counted by. */
    public static final String TASK_DRIVERS = "Drivers: what tasks are counted by, and what they take in a year";
    /** Salts. */
    public static final String SALTS = "Salts of the nutrient solution";
    /** Months of the crop. */
    public static final String MONTHS = "Months: days, crop and water the plants keep";
    /** Set points. */
    public static final String HEATING = "Heating: use and set points";
    /** Months of heat. */
    public static final String HEAT = "Climate and heat by month";
    /** Months of electricity. */
    public static final String ENERGY = "Electricity and cost of energy by month";
    /** Months of work. */
    public static final String LABOUR = "Labour by month";
    /** What plant stock costs. */
    public static final String STOCK_PRICES = "Plant stock: price and first plants";
    /** What plant stock does. */
    public static final String STOCK_GROWTH = "Plant stock: growth, fruit and yearly cost";
    /** Crops of a year. */
    public static final String CROPS = "Crops of a year: plants, months and fruit";
    /** Months of fruit. */
    public static final String FRUIT_BY_MONTH = "Fruit and receipts by month";
    /** Channels. */
    public static final String CHANNELS = "Channels: what they sell and bring in a year";
    /** Plants of the chosen stock. */
    public static final String PLANTS = "Plants of the chosen stock: first, ordered, in a year";
    /** Fruit of a year. */
    public static final String FRUIT_OF_A_YEAR = "Yield of the chosen plant stock, in a full year";
    /** From the supply to the bench. */
    public static final String ZONES_AND_PUMP = "Zones, header, pump and run time, by irrigation system";
    /** What fails. */
    public static final String FAILING = "Filter and outlets that fail, by irrigation system";
    /** Plants that fall dry. */
    public static final String DRY_PLANTS = "Dry plants and what they cost, by irrigation system";
    /** What an irrigation system costs. */
    public static final String SYSTEM_COSTS = "First and yearly cost by irrigation system";
    /** Outlets and plants. */
    public static final String OUTLETS = "Outlets in reach of a plant";
    /** How long a line may be. */
    public static final String LONGEST = "Longest line that meets the uniformity asked for";
    /** Irrigation systems in order. */
    public static final String RANKING = "How the systems rank";
    /** How cost moves with an entry. */
    public static final String SYSTEM_SLOPES = "The line itself, and yearly cost for each unit of an entry";
    /** Parts that carry outlets. */
    public static final String OUTLET_PARTS = "Parts that carry outlets, each once";
    /** Irrigation systems side by side. */
    public static final String SIDE_BY_SIDE = "Side by side";
    /** Entries that may flip the answer. */
    public static final String FLIP_WORKINGS = "Flip values: entry by entry";
    /** Causes of a difference. */
    public static final String CAUSES = "Partial budget by cause, per metre of bench and year";
    /** Pieces of the sentences on irrigation. */
    public static final String VERDICT = "The verdict, piece by piece";
    /** Sums and returns. */
    public static final String BUDGET_SUMS = "Sums of the budget";
    /** Interest on operating capital. */
    public static final String OPERATING_CAPITAL = "Interest on operating capital, chosen irrigation system";
    /** Rows of the enterprise budget. */
    public static final String BUDGET = "Enterprise budget of a year";

    /** Loans with the amount that counts. */
    public static final String LOANS_COUNTED = "Loans: what each brings and costs";

    /** What the start takes. */
    public static final String USES = "Uses of funds";

    private Tables() {}
}
