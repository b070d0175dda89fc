package org.benchmetre;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/**
 * Splits a difference in receipts into its causes: receipts by a measure are plants by the measure x marketable fruit per plant x
 * price. From the first scenario to another the factors are changed one after the other in this order, and each is charged with what
 * its change adds (sequential substitution, plain arithmetic); so the parts add up to the whole, and the order decides who gets
 * what two changes bring together. Per plant there is no first factor, per kilogram only the price.
 */
final class ReceiptsSteps {

    private static final Unit FRUIT = Unit.parse("kg/(plant a)");
    private static final Unit PRICE = Unit.parse("money/kg");

    private final List<Factors> all;
    private final Measure per;
    private final String currency;

    private ReceiptsSteps(List<Factors> all, Measure per, String currency) {
        this.all = all;
        this.per = per;
        this.currency = currency;
    }

    static List<ReceiptsStep> of(Comparison comparison, Measure per) {
        List<Factors> all = comparison.scenarios().stream()
                .map(each -> Factors.of(each.figures(), per))
                .toList();
        return new ReceiptsSteps(all, per, comparison.currency()).steps();
    }

    private List<ReceiptsStep> steps() {
        Factors first = all.get(0);
        List<Double> start = each(factors -> first.receipts());
        List<Double> withPlants = each(factors -> new Factors(factors.plants, first.fruit, first.price).receipts());
        List<Double> withFruit = each(factors -> new Factors(factors.plants, factors.fruit, first.price).receipts());
        List<Double> whole = each(Factors::receipts);
        if (per == Measure.KG) {
            return List.of(price(start, whole));
        }
        ReceiptsStep fruit = step(
                "fruit_per_plant",
                "Marketable fruit per plant",
                FRUIT,
                each(Factors::fruit),
                minus(withFruit, withPlants));
        if (per == Measure.PLANT) {
            return List.of(fruit, price(withFruit, whole));
        }
        ReceiptsStep plants = step(
                "plant_density",
                "Plants " + per.words(),
                per.unitOfPlants(),
                each(Factors::plants),
                minus(withPlants, start));
        return List.of(plants, fruit, price(withFruit, whole));
    }

    private ReceiptsStep price(List<Double> before, List<Double> after) {
        return step("price", "Price per kg", PRICE, each(Factors::price), minus(after, before));
    }

    private ReceiptsStep step(String key, String label, Unit unit, List<Double> values, List<Double> effects) {
        return new ReceiptsStep(key, label, unit.display(currency), values, effects);
    }

    private List<Double> each(ToDoubleFunction<Factors> value) {
        return all.stream().mapToDouble(value).boxed().toList();
    }

    private static List<Double> minus(List<Double> after, List<Double> before) {
        List<Double> differences = new ArrayList<>();
        for (int i = 0; i < after.size(); i++) {
            differences.add(after.get(i) - before.get(i));
        }
        return differences;
    }

    /** What receipts by a measure are the product of. */
    private record Factors(double plants, double fruit, double price) {

        /** Receipts per marketable kilogram are the price; without fruit there is none, and 0 is as good as any. */
        static Factors of(Figures figures, Measure per) {
            double count = Measure.PLANT.size(figures);
            double fruit = Measure.KG.size(figures);
            double price = fruit > 0 ? BudgetPage.of(figures).receipts() / fruit : 0;
            if (per == Measure.KG) {
                return new Factors(1, 1, price);
            }
            return new Factors(count / per.size(figures), fruit / count, price);
        }

        double receipts() {
            return plants * fruit * price;
        }
    }
}
