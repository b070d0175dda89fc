package org.benchmetre.batch;

import java.util.List;
import java.util.Locale;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;

/** First cost as a reader wants it on a console: at most 100 columns, two decimals; {@code price --csv} has every digit. */
final class PriceReport {

    private final Figures figures;
    private final Budget budget;
    private final String money;

    PriceReport(Figures figures) {
        this.figures = figures;
        this.budget = figures.budget();
        this.money = budget.currency();
    }

    @Override
    public String toString() {
        return TextTable.wrapped(budget.title())
                + "First cost: what it takes to build, not what it takes to run\n\n"
                + what()
                + "\nFirst cost per metre of bench, " + money + "/m\n\n"
                + new GroupTable(figures)
                + "\nFirst cost\n\n"
                + results()
                + "\nParts to buy, for the chosen way to water\n\n"
                + purchase()
                + "\n"
                + cautions();
    }

    private String what() {
        TextTable table = new TextTable(List.of(), 0);
        table.row(List.of("Way to water", figures.text("irrigation_label")));
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

    private String results() {
        TextTable table = new TextTable(List.of(), 0).right(1);
        amount(table, "Per metre of bench", "first_cost_per_metre");
        amount(table, "Per foot of bench", "first_cost_per_foot");
        amount(table, "Per plant", "first_cost_per_plant");
        amount(table, "Per m² of floor", "first_cost_per_area");
        amount(table, "Per square foot of floor", "first_cost_per_square_foot");
        amount(table, "In total", "first_cost_total");
        return table.toString();
    }

    private String purchase() {
        TextTable table = new TextTable(List.of(), 0).right(1);
        amount(table, "Exact quantity", "exact_cost");
        amount(table, "Whole packs, to pay", "purchase_cost");
        amount(table, "Left over from packs", "leftover_value");
        return table.toString();
    }

    private void amount(TextTable table, String label, String id) {
        table.row(List.of(label, two(figures.number(id)), budget.line(id).unit().display(money)));
    }

    private static String cautions() {
        return "Money: prices carry their year and source; replace invented ones by quotations before you spend.\n"
                + "Loads: have a licensed engineer confirm benches, hangers and house before anything is hung.\n";
    }

    /** Two decimals, or none when they are zero. */
    private static String whole(double number) {
        return two(number).replaceAll("\\.00$", "");
    }

    static String two(double number) {
        String shown = String.format(Locale.ROOT, "%.2f", number);
        return shown.equals("-0.00") ? "0.00" : shown;
    }
}
