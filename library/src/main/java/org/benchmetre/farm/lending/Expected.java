package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.loans.Uses;
import org.benchmetre.farm.takeoff.Materials;

/**
 * What a lender expects in a plan, each counted or not: uses of funds, and rows of the years. Something is counted where it is above zero.
 * Which things there are is a choice of this project after what lenders ask start-ups for, no source.
 */
final class Expected {

    private static final String COUNTED = "counted";
    private static final String MISSING = "not counted";

    /** What volumes of the first fill parts are counted by. */
    private static final List<String> FILL =
            List.of("substrate_volume", "loose_volume", "coir_volume", "peat_volume", "perlite_volume");

    private record Thing(String key, String label, Formula isCounted) {}

    private final Funding funds;

    /** How many things a lender expects are not counted. */
    final Line missing;

    Expected(BudgetBuilder b, Lending lending, Uses uses, Materials parts, Line overhead) {
        funds = lending.funds;
        ScheduleBuilder fill = b.schedule(Sheets.SUBMISSION, "Parts that fill troughs or containers");
        Line filled = fill.line("first_fill_parts", "Parts counted by volume of substrate", ONE, counted(parts));
        List<Thing> things = Stream.concat(ofStart(uses, filled).stream(), ofYears(lending, overhead).stream())
                .toList();
        Axis axis = Axis.rows(
                "expected", "Expected", things.stream().map(Thing::key).toList(), 0);
        ScheduleBuilder s = b.schedule(Sheets.SUBMISSION, "What a lender expects");
        b.nameRows(
                axis,
                s.textLine(
                        "expected_label",
                        "Expected",
                        new Rows(
                                axis,
                                things.stream()
                                        .<Formula>map(thing -> text(thing.label()))
                                        .toList())));
        Line state = s.textLine(
                "expected_state",
                "Counted or not",
                new Rows(
                        axis,
                        things.stream()
                                .map(thing -> when(thing.isCounted(), text(COUNTED), text(MISSING)))
                                .toList()));
        ScheduleBuilder words = b.schedule(Sheets.SUBMISSION, "What a lender expects, in words");
        missing = words.line("expected_missing", "Not counted", ONE, countWhere(state, text(MISSING), axis));
        Formula some = joined(
                text("Of " + axis.size() + " things a lender expects, "),
                shown(missing, 0),
                when(missing.exceeds(one()), text(" are"), text(" is")),
                text(" not counted: say why."));
        words.textLine(
                "expected_sentence",
                "What is not counted, in a sentence",
                when(missing.isPositive(), some, text("Everything a lender expects is counted.")));
    }

    private static Formula counted(Materials parts) {
        return FILL.stream()
                .map(driver -> countWhere(parts.driver, text(driver), parts.axis))
                .reduce(Formula::plus)
                .orElseThrow();
    }

    private List<Thing> ofStart(Uses uses, Line filled) {
        Formula building = sum(uses.amount, uses.axis)
                .minus(uses.ofKind(FundKind.LAND))
                .minus(uses.ofKind(FundKind.PLANTS))
                .minus(uses.ofKind(FundKind.GROWING));
        return List.of(
                new Thing("site", "Land and site", funds.land.isPositive()),
                new Thing("permits", "Permits and connections", building.isPositive()),
                use("house", "House"),
                use("equipment", "Equipment"),
                use("growing", "Benches, troughs, irrigation"),
                new Thing("fill", "First fill of troughs or containers", filled.isPositive()),
                use("labour", "Installation labour"),
                use("delivery", "Freight and sales tax"),
                use("plants", "Plants"),
                use("interest", "Interest while building"),
                use("insurance", "Insurance while building"),
                use("contingency", "Contingency"),
                use("working_capital", "Cash kept for the first months"));
    }

    private Thing use(String key, String label) {
        return new Thing(key, label, new Element(funds.amount, funds.axis, funds.axis.indexOf(key)).isPositive());
    }

    private static List<Thing> ofYears(Lending lending, Line overhead) {
        return List.of(
                ofYear("sales", "Fruit sold", lending.years.sales, lending),
                ofYear("hired", "Hired labour", lending.years.labour, lending),
                ofYear("energy", "Heat and electricity", lending.years.energy, lending),
                ofYear("running", "Inputs, water, repairs, insurance", lending.years.running, lending),
                new Thing("overhead", "Overhead", overhead.isPositive()),
                ofYear("draw", "Owner's draw", lending.cash.draw, lending),
                new Thing("tax", "Income tax", lending.taxRate.isPositive()),
                new Thing("loans", "Loans and their payments", lending.funds.loansTotal.isPositive()));
    }

    private static Thing ofYear(String key, String label, Line byYear, Lending lending) {
        return new Thing(key, label, new Element(byYear, lending.years.axis, 1).isPositive());
    }
}
