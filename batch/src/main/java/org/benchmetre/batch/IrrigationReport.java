package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;

/** Irrigation systems on a console: recommendation, side by side, by cause, partial budget, flip values, cautions; at most 100 columns. */
final class IrrigationReport {

    private static final List<String> REASONS = List.of(
            "irrigation_reason_evenness",
            "irrigation_reason_pulses",
            "irrigation_reason_ownership",
            "irrigation_reason_upkeep",
            "irrigation_reason_clogging",
            "irrigation_reason_friction",
            "irrigation_choice_differs",
            "irrigation_doubt_flips",
            "irrigation_doubt_prices");

    private static final List<String> COMPARED = List.of(
            "way_first_cost_per_metre",
            "side_line_first_cost",
            "way_yearly_cost_per_metre",
            "way_flow_per_bench",
            "way_inlet_pressure",
            "way_far_pressure",
            "way_friction_head",
            "way_flow_variation",
            "way_emission_uniformity",
            "way_emission_class",
            "way_longest_run",
            "way_outlets_in_reach",
            "way_stored_per_plant",
            "way_pulse_length",
            "way_fill_time",
            "way_drained_share",
            "way_zones_needed",
            "way_pump_power",
            "way_gross_water",
            "way_pump_energy",
            "way_no_outlet_left",
            "way_standing_reserve",
            "way_dry_plants",
            "side_lost_fruit",
            "way_loss_per_percent");

    private final Figures figures;
    private final Budget budget;
    private final String money;
    private final WaysInUse ways;
    private final Amounts amounts;

    IrrigationReport(Figures figures) {
        this.figures = figures;
        this.budget = figures.budget();
        this.money = budget.currency();
        this.ways = new WaysInUse(figures);
        this.amounts = new Amounts(figures);
    }

    @Override
    public String toString() {
        return TextTable.wrapped(budget.title())
                + "\n"
                + TextTable.wrapped(figures.text("irrigation_recommendation"))
                + saving()
                + "\n"
                + reasons()
                + heading("Side by side")
                + sideBySide()
                + heading("Yearly cost per metre of bench by cause, " + money + "/m/yr")
                + causes()
                + heading("Partial budget, " + money + "/m/yr, of changing from the system chosen to: " + rival())
                + boxes()
                + heading("At which value of an entry the answer flips")
                + new FlipTable(figures)
                + heading("Cautions")
                + cautions();
    }

    private static String heading(String words) {
        return "\n" + TextTable.wrapped(words) + "\n";
    }

    private String saving() {
        Line saving = budget.line("recommended_saving_per_metre");
        return figures.hasReason(saving, 0)
                ? ""
                : TextTable.wrapped("It saves " + amounts.of(saving, 0) + " " + money
                        + " per metre and year against the next: " + figures.text("irrigation_next") + ".");
    }

    private String reasons() {
        StringBuilder text = new StringBuilder();
        for (String id : REASONS) {
            Line line = budget.line(id);
            text.append(TextTable.wrapped(line.label() + ": " + figures.text(line, 0)));
        }
        return text.toString();
    }

    private String sideBySide() {
        TextTable table = byWay("Figure");
        for (String id : COMPARED) {
            Line line = budget.line(id);
            table.row(row(line.label() + unit(line), way -> Shown.cell(figures, line, way)));
        }
        return table.toString();
    }

    private String causes() {
        Line cost = budget.line("cause_way_cost_per_metre");
        Line label = budget.line("cause_label");
        Line total = budget.line("way_yearly_cost_per_metre");
        TextTable table = byWay("Cause");
        for (int i = 0; i < label.size(); i++) {
            Position cause = Position.NONE.with(label.axes().get(0), i);
            table.row(row(figures.text(label, i), way -> amounts.of(cost, cost.cellAt(cause.with(ways.axis(), way)))));
        }
        Line same = budget.line("way_same_cost_per_metre");
        table.row(row(same.label(), way -> amounts.of(same, way)));
        table.total(row("Total", way -> amounts.of(total, way)));
        return table.toString();
    }

    private TextTable byWay(String first) {
        List<String> header = row(first, ways::heading);
        TextTable table = new TextTable(header, 1);
        for (int column = 1; column < header.size(); column++) {
            table.right(column);
        }
        return table;
    }

    private List<String> row(String first, IntFunction<String> cell) {
        List<String> cells = new ArrayList<>(List.of(first));
        ways.rows().forEach(way -> cells.add(cell.apply(way)));
        return cells;
    }

    private String unit(Line line) {
        String unit = line.unit().display(money);
        return unit.equals("1") ? "" : ", " + unit;
    }

    private String rival() {
        return figures.text("rival_label");
    }

    private String boxes() {
        if (figures.text("rival_way").equalsIgnoreCase(figures.text("irrigation_choice"))) {
            return TextTable.wrapped("There is no other system to change to.");
        }
        TextTable table = new TextTable(List.of(), 0).right(1, 3);
        table.row(List.of(
                "Added returns", two("partial_added_returns"), "Reduced returns", two("partial_reduced_returns")));
        table.row(List.of("Reduced costs", two("partial_reduced_costs"), "Added costs", two("partial_added_costs")));
        table.row(List.of("", "", "Gain of changing", two("partial_net")));
        return table.toString();
    }

    private String two(String id) {
        return amounts.of(id);
    }

    private String cautions() {
        return budget.cautions().stream()
                .filter(caution -> !caution.topic().equals("Loads"))
                .map(caution -> TextTable.wrapped(caution.topic() + ": " + caution.text()))
                .collect(Collectors.joining("\n"));
    }
}
