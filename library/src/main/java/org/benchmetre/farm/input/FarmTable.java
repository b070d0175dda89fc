package org.benchmetre.farm.input;

import java.util.List;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.GroupColumn;
import org.benchmetre.scenario.RunLength;
import org.benchmetre.scenario.TableForm;

/** The tables of a farm: their files, what names their rows, and how many empty rows a workbook keeps for its reader. */
public enum FarmTable {
    /** Parts. */
    MATERIALS("materials.csv", "item", "material", "Part", 4, 2000),
    /** Irrigation systems; every row is worked out at length. */
    IRRIGATION("irrigation.csv", "way", "way", "Irrigation system", 1, 200),
    /** Kinds of plant stock. */
    PLANT_STOCK("plant_stock.csv", "stock", "stock", "Plant stock", 2, 60),
    /** Price breaks of plant stock by quantity. */
    STOCK_PRICES("stock_prices.csv", "stock", "break", "Price break", 4, 500),
    /** Crops of a year. */
    CROPS("crops.csv", "crop", "crop", "Crop", 1, 24),
    /** Where fruit is sold. */
    CHANNELS("channels.csv", "channel", "channel", "Channel", 2, 60),
    /** Work and inputs that come back. */
    TASKS("tasks.csv", "task", "task", "Task", 4, 500),
    /** What funds are used for beside the parts. */
    FUNDS("funds.csv", "use", "use", "Use of funds", 2, 60),
    /** Flows of cash of one's own. */
    CASH("cash.csv", "flow", "own_flow", "Flow", 2, 60),
    /** Money that is borrowed; every row has a schedule of payments. */
    LOANS("loans.csv", "loan", "loan", "Loan", 1, 24);

    /** Payments of a loan without a word on how many there are in a year. */
    public static final int USUAL_PAYMENTS = 12;

    /** Payments that a schedule of loans has room for where no loan is entered. */
    public static final int ROOM_WITHOUT_LOANS = 60;

    /** Longest schedule: forty years of monthly payments. */
    private static final int MOST_PAYMENTS = 480;

    private static final RunLength PAYMENTS = new RunLength(
            List.of(
                    new RunLength.Factor("term", Unit.parse("a"), 0),
                    new RunLength.Factor("payments_per_year", Unit.ONE, USUAL_PAYMENTS)),
            USUAL_PAYMENTS,
            ROOM_WITHOUT_LOANS,
            MOST_PAYMENTS);

    private final String file;
    private final String key;
    private final String axis;
    private final String title;
    private final int spare;
    private final int most;

    FarmTable(String file, String key, String axis, String title, int spare, int most) {
        this.file = file;
        this.key = key;
        this.axis = axis;
        this.title = title;
        this.spare = spare;
        this.most = most;
    }

    /**
     * The file.
     *
     * @return its name, which is that of the table
     */
    public String file() {
        return file;
    }

    /**
     * The column that names a row.
     *
     * @return its name in the file
     */
    public String key() {
        return key;
    }

    /**
     * Name of the axis of its rows.
     *
     * @return lower case
     */
    public String axis() {
        return axis;
    }

    /**
     * What one row is called.
     *
     * @return for example {@code Part}
     */
    public String title() {
        return title;
    }

    /**
     * Whether a scenario has rows of it.
     *
     * @param structure of the scenario
     * @return false where the file is missing or empty
     */
    public boolean hasRows(Structure structure) {
        return !structure.keys(file).keys().isEmpty();
    }

    /**
     * Empty rows kept for the reader.
     *
     * @return few where each is worked out at length
     */
    public int spare() {
        return spare;
    }

    /**
     * How a folder of files keeps the table.
     *
     * @return its form
     */
    TableForm form() {
        return switch (this) {
            case MATERIALS ->
                form(List.of("item", "group", "driver", "rate", "price"))
                        .groupedBy(new GroupColumn("group", Reserved.GROUPS));
            case IRRIGATION -> form(List.of("way"));
            case PLANT_STOCK -> form(List.of("stock", "price"));
            case STOCK_PRICES ->
                form(List.of("stock", "from_quantity", "price")).countedBy("from_quantity", "from");
            case CROPS -> form(List.of("crop", "clear_out_month"));
            case CHANNELS -> form(List.of("channel", "share"));
            case TASKS -> form(List.of("task", "driver")).groupedBy(new GroupColumn("group", List.of()));
            case LOANS -> form(List.of("loan", "rate", "term")).running(PAYMENTS);
            case FUNDS -> form(List.of("use", "amount"));
            case CASH -> form(List.of("flow", "amount"));
        };
    }

    private TableForm form(List<String> needed) {
        return TableForm.of(file, key, needed, most);
    }
}
