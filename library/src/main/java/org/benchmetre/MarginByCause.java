package org.benchmetre;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;

/**
 * Where the margin comes from: the receipts and costs of the enterprise budget by one measure, scenario beside scenario. A difference
 * in what is left is the sum of the differences of its causes. Rows are the same when section and label are, upper and lower case alike;
 * a row that one scenario does not have counts 0 there.
 */
public final class MarginByCause {

    /** Sums of a few dozen amounts differ by rounding alone; this share of the amounts together is far above that. */
    private static final double SHARE = 1e-9;

    private final Comparison comparison;
    private final Measure per;
    private final List<Cause> causes;
    private final Total left;
    private final List<ReceiptsStep> receipts;

    private MarginByCause(Comparison comparison, Measure per) {
        this.comparison = comparison;
        this.per = per;
        List<BudgetPage> pages = comparison.scenarios().stream()
                .map(each -> BudgetPage.of(each.figures()))
                .toList();
        List<Double> sizes = comparison.scenarios().stream()
                .map(each -> per.size(each.figures()))
                .toList();
        this.causes = new RowsMatched(pages, sizes).causes();
        this.left = left(pages, sizes);
        this.receipts = ReceiptsSteps.of(comparison, per);
    }

    /**
     * Divides the budgets of the scenarios by a measure.
     *
     * @param comparison the scenarios
     * @param per the measure
     * @return their causes
     * @throws ScenarioException when a scenario has nothing to divide by, such as no marketable fruit
     */
    public static MarginByCause of(Comparison comparison, Measure per) throws ScenarioException {
        Faults faults = new Faults();
        for (Compared each : comparison.scenarios()) {
            if (!(per.size(each.figures()) > 0)) {
                faults.add(Place.wholeFile(each.name()), "nothing to divide by", "some, for results " + per.words());
            }
        }
        if (!faults.isEmpty()) {
            throw new ScenarioException(faults);
        }
        return new MarginByCause(comparison, per);
    }

    private static Total left(List<BudgetPage> pages, List<Double> sizes) {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            values.add(pages.get(i).left().value() / sizes.get(i));
        }
        return new Total("left", pages.get(0).left().label(), values);
    }

    /**
     * The measure.
     *
     * @return by what everything here is divided
     */
    public Measure per() {
        return per;
    }

    /**
     * Receipts and costs.
     *
     * @return in the order of the first scenario's budget, what only others have at its place there
     */
    public List<Cause> causes() {
        return causes;
    }

    /**
     * The causes of a section added up.
     *
     * @param section which
     * @return their sum in each scenario
     */
    public Total total(Section section) {
        String key = "total_" + section.name().toLowerCase(Locale.ROOT);
        return sum(key, section.label(), cause -> cause.section() == section);
    }

    /**
     * All causes added up.
     *
     * @return their sum in each scenario
     */
    public Total sum() {
        return sum("sum", "Sum of all rows", cause -> true);
    }

    private Total sum(String key, String label, Predicate<Cause> which) {
        List<Double> sums = new ArrayList<>();
        for (int i = 0; i < comparison.scenarios().size(); i++) {
            int scenario = i;
            sums.add(causes.stream()
                    .filter(which)
                    .mapToDouble(cause -> cause.values().get(scenario))
                    .sum());
        }
        return new Total(key, label, sums);
    }

    /**
     * What is left, as the enterprise budget itself says.
     *
     * @return the last total of the budget
     */
    public Total left() {
        return left;
    }

    /**
     * The receipts' own causes: plants by the measure, marketable fruit per plant, price, charged in this order.
     *
     * @return those that the measure leaves; their effects add up to the difference in receipts
     */
    public List<ReceiptsStep> receipts() {
        return receipts;
    }

    /**
     * Scenarios whose causes do not add up to what is left: a fault of the arithmetic, not of the input.
     *
     * @return whole sentences; empty when all agree
     */
    public List<String> disagreements() {
        List<String> found = new ArrayList<>();
        Total sum = sum();
        for (int i = 0; i < sum.values().size(); i++) {
            String name = comparison.scenarios().get(i).name();
            double size = size(i);
            double left = this.left.values().get(i);
            check(found, "receipts and costs of " + name, sum.values().get(i), this.left.label(), left, size);
            double more = total(Section.RECEIPTS).difference(i);
            check(found, "causes of more receipts in " + name, effects(i), "the difference", more, size);
        }
        return List.copyOf(found);
    }

    private static void check(List<String> found, String parts, double sum, String whole, double value, double size) {
        if (!(Math.abs(sum - value) <= SHARE * size)) {
            found.add(String.format(Locale.ROOT, "The sum of the %s is %s, but %s is %s.", parts, sum, whole, value));
        }
    }

    /** All amounts of a scenario and of the first together, whatever their sign. */
    private double size(int scenario) {
        return causes.stream()
                .mapToDouble(cause -> Math.abs(cause.values().get(scenario))
                        + Math.abs(cause.values().get(0)))
                .sum();
    }

    private double effects(int scenario) {
        return receipts.stream()
                .mapToDouble(step -> step.effects().get(scenario))
                .sum();
    }
}
