package org.benchmetre.farm.pages;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.page.Column;
import org.benchmetre.page.EntryTable;

/**
 * The columns of a file as columns of a page: every entry that the file keeps, in the order in which the user's page lists the columns,
 * sources last. A column that is not listed stands before the sources. Of an entry along a second axis each row of that axis is a column.
 */
final class FileColumns {

    private static final String SOURCE = "source";

    /** The order of columns. */
    static final Map<String, List<String>> ORDER = Map.ofEntries(
            entry(
                    FarmTable.MATERIALS.file(),
                    split(
                            "item,label,group,driver,rate,waste,whole,unit,pack,price,price_low,price_high,price_year,freight,sales_tax,"
                                    + "life,life_low,life_high,life_unit,salvage,resale,repairs,install_hours,remove_hours,serves,serves_unit,"
                                    + "supplier,quoted,valid_until,paid_by,option,block")),
            entry(
                    FarmTable.IRRIGATION.file(),
                    split(
                            "way,label,lines,tail,run_length,outlets_per_plant,outlet_spacing,outlet_flow,outlet_pressure,flow_exponent,"
                                    + "pressure_low,pressure_high,coefficient_of_variation,outlet_kind,strip_offset,reach,inner_diameter,"
                                    + "connection_loss,feed_point,first_outlet,check_valves,share_caught,outlet_passage,outlet_item,"
                                    + "failed_per_year,failed_low,failed_high,common_cause,repair,outlet_replace_cost")),
            entry(
                    FarmTable.PLANT_STOCK.file(),
                    split(
                            "stock,label,price,price_year,freight,losses,culls,replacement,life,life_unit,lead_weeks,delivery_window,"
                                    + "weeks_to_fruit,heat_sum,heat_base,yield_factor,yield_crop_2,yield_crop_3,bench_weeks_crop,pot_price,media_litres,media_price,"
                                    + "pre_grow_hours,bench_weeks")),
            entry(FarmTable.STOCK_PRICES.file(), split("stock,from_quantity,price")),
            entry(
                    FarmTable.CROPS.file(),
                    split(
                            "crop,label,stock,plant_type,planting_month,clear_out_month,yield_per_plant,bench_share,plants_of,*")),
            entry(
                    Months.FILE,
                    split(
                            "day_temperature,night_temperature,radiation,day_hours,day_set,night_set,heated,fan_hours,cooler_hours,"
                                    + "circulation_hours,light_hours,water_need,crop_share,picks,share_*")),
            entry(
                    FarmTable.CHANNELS.file(),
                    split(
                            "channel,label,share,price_*,second_price_share,price_year,pack_kg,pack_cost,commission,freight,shrink,most_per_month")),
            entry(
                    FarmTable.TASKS.file(),
                    split(
                            "task,label,group,driver,hours,per_hour,times,times_unit,pattern,*,wage_class,input_cost,price_year")),
            entry(FarmTable.FUNDS.file(), split("use,label,kind,amount,month,supplier,quoted,valid_until,security")),
            entry(FarmTable.CASH.file(), split("flow,label,month,year,amount")),
            entry(
                    FarmTable.LOANS.file(),
                    split(
                            "loan,label,amount,rate,term,payments_per_year,kind,interest_only_months,balloon,fee,security,first_month")));

    private final Budget budget;
    private final String file;

    private FileColumns(Budget budget, String file) {
        this.budget = budget;
        this.file = file;
    }

    private static List<String> split(String columns) {
        return List.of(columns.split(","));
    }

    /**
     * The table of a file.
     *
     * @param budget a farm
     * @param file the file
     * @param title words above
     * @return all that the file keeps
     */
    static EntryTable table(Budget budget, String file, String title) {
        FileColumns from = new FileColumns(budget, file);
        List<Line> lines = budget.lines().stream()
                .filter(from::isKept)
                .sorted(Comparator.comparingInt(from::place))
                .toList();
        Axis rows = from.rows(lines.get(0));
        List<Column> columns = new ArrayList<>();
        lines.forEach(line -> from.add(columns, line, rows));
        return new EntryTable(title, rows, columns);
    }

    private boolean isKept(Line line) {
        return budget.entry(line).isPresent() && home(line).table().equals(file);
    }

    private Home home(Line line) {
        return budget.entry(line).orElseThrow().home();
    }

    private int place(Line line) {
        List<String> order = ORDER.get(file);
        int place = order.indexOf(home(line).columns().get(0));
        int last = isSource(home(line)) ? order.size() + 1 : order.size();
        return place < 0 ? last : place;
    }

    /** Whether a column says where its row comes from. */
    static boolean isSource(Home home) {
        return home.columns().contains(SOURCE);
    }

    private Axis rows(Line line) {
        return line.axes().stream()
                .filter(axis -> axis.name().equals(home(line).rows()))
                .findFirst()
                .orElseThrow();
    }

    private void add(List<Column> columns, Line line, Axis rows) {
        for (Axis other : line.axes()) {
            if (!other.equals(rows)) {
                for (int i = 0; i < other.size(); i++) {
                    columns.add(Column.of(heading(line, other.keys().get(i)), line, other, i));
                }
                return;
            }
        }
        columns.add(Column.of(ShortHeadings.of(line), line));
    }

    private String heading(Line line, String key) {
        String stem = home(line).columns().get(0).replace("_*", "").replace("*", "");
        return (Columns.readable(stem) + " " + Columns.readable(key)).strip();
    }
}
