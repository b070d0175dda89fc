package org.benchmetre.batch;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** First cost, yearly cost, enterprise budget and returns as a reader wants it on a console: at most 100 columns, decimals as {@link Amounts} has them; {@code price --csv} has every digit. */
final class PriceReport {

    private final Figures figures;
    private final Budget budget;
    private final String money;
    private final Amounts amounts;

    PriceReport(Figures figures) {
        this.figures = figures;
        this.budget = figures.budget();
        this.money = budget.currency();
        this.amounts = new Amounts(figures);
    }

    @Override
    public String toString() {
        return TextTable.wrapped(budget.title())
                + "First cost: what it takes to build. Yearly cost: what it takes to own and to run.\n\n"
                + what()
                + heading("First cost per metre of bench, " + money + "/m")
                + new GroupTable(figures, "first")
                + heading("First cost")
                + costs("first")
                + heading("Parts to buy, for the chosen irrigation system")
                + purchase()
                + heading("Yearly cost per metre of bench, " + money + "/m/yr")
                + new GroupTable(figures, "yearly")
                + heading("Yearly cost")
                + costs("yearly")
                + heading("Enterprise budget of a year, " + money + " (rows of zero left out)")
                + new BudgetTable(figures)
                + heading("Returns and break-evens")
                + returns()
                + "\n"
                + TextTable.wrapped(figures.text("left_out_house"))
                + TextTable.wrapped(figures.text("left_out_management"))
                + heading("Labour, heat and electricity of a year")
                + season()
                + heading("Plant stock compared, each as if it were chosen; few yields are published by stock")
                + new StockTable(figures)
                + "\n"
                + cautions();
    }

    private static String heading(String words) {
        return "\n" + words + "\n\n";
    }

    private String what() {
        TextTable table = new TextTable(List.of(), 0);
        table.row(List.of("Irrigation system", figures.text("irrigation_label")));
        table.row(List.of("Plant stock", figures.text("stock_label_chosen")));
        quantity(table, "Bench metres", "bench_metres");
        table.row(List.of("Plants", whole(figures.number("plant_count"))));
        quantity(table, "Floor of the house", "house_area");
        return table.toString();
    }

    private void quantity(TextTable table, String label, String id) {
        table.row(List.of(
                label, whole(figures.number(id)) + " " + budget.line(id).unit().display(money)));
    }

    private String costs(String family) {
        String line = family + "_cost_";
        TextTable table = new TextTable(List.of(), 0).right(1);
        amount(table, "Per metre of bench", line + "per_metre");
        amount(table, "Per foot of bench", line + "per_foot");
        amount(table, "Per plant", line + "per_plant");
        amount(table, "Per m² of floor", line + "per_area");
        amount(table, "Per square foot of floor", line + "per_square_foot");
        if (budget.find(line + "per_kg").isPresent()) {
            amount(table, "Per kg of marketable fruit", line + "per_kg");
        }
        amount(table, "In total", line + "total");
        return table.toString();
    }

    private String returns() {
        TextTable table = new TextTable(List.of(), 0).right(1);
        amount(table, "Marketable fruit", "yield_total");
        amount(table, "Receipts", "receipts_total");
        amount(table, "Returns above operating costs", "returns_above_operating");
        amount(table, "Returns above total cost", "returns_above_total");
        amount(table, "Returns per metre of bench", "returns_above_total_per_metre");
        amount(table, "Returns per plant", "returns_above_total_per_plant");
        amount(table, "Returns per m² of floor", "returns_above_total_per_area");
        amount(table, "Returns per kg", "returns_above_total_per_kg");
        amount(table, "Break-even price, operating costs", "break_even_price_operating");
        amount(table, "Break-even price", "break_even_price");
        amount(table, "Break-even yield, operating costs", "break_even_yield_operating");
        amount(table, "Break-even yield", "break_even_yield");
        return table.toString();
    }

    private String season() {
        TextTable table = new TextTable(List.of(), 0).right(1);
        amount(table, "Labour hours", "labour_hours_total");
        amount(table, "Of that the family's", "family_hours_total");
        amount(table, "Hours per metre of bench", "labour_hours_per_metre");
        amount(table, "Peak labour, people in the busiest month", "people_at_peak");
        amount(table, "Heat", "heat_energy_total");
        amount(table, "Heater to install", "boiler_size");
        amount(table, "Electricity but for pumps", "electricity_energy_total");
        amount(table, "Fuel and electricity per m² of floor", "energy_cost_per_area");
        amount(table, "Nutrient solution, a cubic metre", "feed_cost_per_volume");
        return table.toString();
    }

    private String purchase() {
        TextTable table = new TextTable(List.of(), 0).right(1);
        amount(table, "Exact quantity", "exact_cost");
        amount(table, "Whole packs, to pay", "purchase_cost");
        amount(table, "Left over from packs", "leftover_value");
        amount(table, "Start-up cash: whole packs, installing, plants", "startup_cash");
        return table.toString();
    }

    private void amount(TextTable table, String label, String id) {
        Line line = budget.line(id);
        boolean none = figures.hasReason(line, 0);
        String shown = none ? figures.text(line, 0) : amounts.of(line, 0);
        table.row(List.of(label, shown, none ? "" : line.unit().display(money)));
    }

    private static String cautions() {
        return "Money: prices carry their year and source; replace invented ones by quotations before you spend.\n"
                + "Loads: have a licensed engineer confirm benches, hangers and house before anything is hung.\n"
                + "Heat, electricity, acid, sprays: licensed trades, product instructions and local codes go first.\n";
    }

    /** Two decimals, or none when they are zero. */
    static String whole(double number) {
        return two(number).replaceAll("\\.00$", "");
    }

    static String two(double number) {
        return Amounts.fixed(number, 2);
    }
}
