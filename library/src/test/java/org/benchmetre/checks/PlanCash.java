package org.benchmetre.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;

/**
 * Published yearly flows as the cash of a house over a plan. What a house costs to run stays as it is; the price of fruit and the
 * shares of the years of learning bring receipts to the flows of the first three years, the price of the pump start-up to the
 * outlay, and its salvage, less what taking out costs, the last year to its flow. Everything lives as long as the plan, so that nothing is replaced within it.
 */
final class PlanCash {

    /** Money, on flows of tens of thousands. */
    private static final double NEAR = 1e-6;

    private final Budget house;
    private final double[] flows;

    private PlanCash(Budget house, double[] flows) {
        this.house = house;
        this.flows = flows;
    }

    /** The figures of a house whose cash by year are the flows given, the first of them at the start. */
    static Figures figures(Budget sample, String inputs) {
        String[] sides = inputs.split("; flows=");
        double[] flows =
                Stream.of(sides[1].split(",")).mapToDouble(Double::parseDouble).toArray();
        List<String> settings = new ArrayList<>(List.of(sides[0].split("; ")));
        settings.addAll(List.of(
                "receipts_by=one_price",
                "fruit_price=1 money/kg",
                "commission_share=0 1",
                "cost_per_kg=0 money/kg",
                "insurance_rate=0 1/a",
                "property_tax_rate=0 1/a",
                "material_freight[pump]=0 1",
                "material_sales_tax[pump]=0 1",
                "material_repairs[pump]=0 1/a"));
        int years = flows.length - 1;
        for (String table : List.of("material", "stock")) {
            var rows = sample.line(table + "_life").axes().get(0);
            for (String key : rows.keys().subList(0, rows.filled())) {
                settings.add(table + "_life[" + key + "]=" + years + " 1");
                settings.add(table + "_life_unit[" + key + "]=a");
            }
        }
        Figures f = new PlanCash(Sample.with(sample, settings.toArray(String[]::new)), flows).reached();
        IntStream.range(0, flows.length)
                .forEach(year ->
                        assertThat(f.number("cash_net", Integer.toString(year))).isCloseTo(flows[year], within(NEAR)));
        return f;
    }

    private Figures reached() {
        Figures f = Figures.of(house);
        double running = DoubleStream.of(
                        f.number("cash_labour", "1"),
                        f.number("cash_energy", "1"),
                        f.number("cash_running", "1"),
                        f.number("cash_repairs", "1"))
                .sum();
        double full = flows[3] + running;
        double price = f.number("material_price", "pump") - flows[0] - f.number("startup_cash");
        double atTheEnd = flows[flows.length - 1] - flows[3];
        double salvage = f.number("material_salvage", "pump")
                + atTheEnd
                - f.number("residual_value")
                + f.number("taking_out_cost");
        return Figures.of(Sample.with(
                house,
                "fruit_price=" + full / f.number("receipts_total") + " money/kg",
                "year_1_share=" + (flows[1] + running) / full + " 1",
                "year_2_share=" + (flows[2] + running) / full + " 1",
                "material_price[pump]=" + price + " money/pack",
                "material_salvage[pump]=" + salvage + " money/pack"));
    }
}
