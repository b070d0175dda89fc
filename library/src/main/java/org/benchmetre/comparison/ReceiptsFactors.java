package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * What receipts by the measure are the product of: plants by the measure x marketable fruit per plant x price. Per plant there is no
 * first factor, per kilogram only the price.
 */
final class ReceiptsFactors {

    private static final Unit PRICE = Unit.parse("money/kg");

    /** Receipts of a year, in total. */
    final Line receipts;
    /** Marketable fruit of a plant in a year. */
    final Beside fruitPerPlant;
    /** Those that the measure leaves, in the order in which they are changed. */
    final List<Beside> all;

    ReceiptsFactors(BudgetBuilder b, ScenarioColumns scenarios, MarginRows rows, Measure per) {
        ScheduleBuilder s = b.schedule(ComparisonSheets.COMPARISON, "What receipts are made of");
        receipts = s.line(
                "receipts_amount",
                "Receipts, in total",
                MarginRows.YEARLY,
                sumWhere(rows.amount, rows.section, text(BudgetSection.RECEIPTS.key()), rows.axis));
        Line fruit = s.line(
                "fruit_per_plant",
                "Marketable fruit per plant",
                Unit.parse("kg/(plant a)"),
                scenarios.fruit.over(scenarios.plants));
        Line price = s.line(
                "price_per_kg",
                "Price per kg",
                PRICE,
                when(scenarios.fruit.isPositive(), receipts.over(scenarios.fruit), none(PRICE)),
                "Receipts by the kilogram of marketable fruit; without fruit there is no price, and 0 is as good as any.");
        fruitPerPlant = beside(s, scenarios, "fruit_per_plant", fruit);
        List<Beside> factors = new ArrayList<>(List.of(fruitPerPlant, beside(s, scenarios, "price", price)));
        if (per == Measure.METRE) {
            Unit unit = Unit.parse("plant/m");
            Line plants =
                    s.line("plants_per_metre", "Plants " + per.words(), unit, scenarios.plants.over(scenarios.size));
            factors.add(0, beside(s, scenarios, "plant_density", plants));
        }
        if (per == Measure.AREA) {
            factors.add(0, beside(s, scenarios, "plant_density", scenarios.plantsPerArea));
        }
        all = List.copyOf(per == Measure.KG ? factors.subList(1, 2) : factors);
    }

    private static Beside beside(ScheduleBuilder s, ScenarioColumns scenarios, String key, Line value) {
        String label = value.label() + ", more than in the first";
        Line more = s.line(value.id() + "_difference", label, value.unit(), scenarios.difference(value));
        return new Beside(key, "", value, more);
    }
}
