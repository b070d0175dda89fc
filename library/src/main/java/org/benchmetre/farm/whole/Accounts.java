package org.benchmetre.farm.whole;

import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.text;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * The accounts of a year, in total and for each metre and foot of bench, plant, square metre and square foot of floor, kilogram and
 * pound of marketable fruit. Plain shares.
 */
public final class Accounts {

    private static final String RECEIPTS = "receipts";
    private static final String COSTS = "costs";
    private static final String RETURNS = "returns";
    private static final List<String> KEYS = List.of(RECEIPTS, "operating", "ownership", "overhead", COSTS, RETURNS);

    /** One row for each account. */
    public final Axis axis = Axis.rows("account", "Account", KEYS, 0);

    private final Line perMetre;

    /**
     * The accounts, money/a each.
     *
     * @param receipts receipts
     * @param operating operating costs
     * @param ownership ownership costs
     * @param overhead overhead
     * @param costs all costs
     * @param returns receipts less all costs
     */
    public record Year(Line receipts, Line operating, Line ownership, Line overhead, Line costs, Line returns) {

        private List<Formula> rows() {
            return List.of(receipts, operating, ownership, overhead, costs, returns);
        }
    }

    /**
     * Declares the lines.
     *
     * @param b where a schedule is added
     * @param year the accounts
     * @param leftOut what the costs leave out
     * @param house benches and floor
     * @param planting plants
     * @param fruit marketable fruit, kg/a
     */
    public Accounts(BudgetBuilder b, Year year, LeftOut leftOut, House house, Planting planting, Line fruit) {
        ScheduleBuilder s = b.schedule(Sheets.SUMMARY, "Accounts of a year");
        b.nameRows(axis, s.textLine("account_label", "Account", new Rows(axis, labels(leftOut))));
        Line total = s.line("account_total", "In total", Unit.parse("money/a"), new Rows(axis, year.rows()));
        perMetre = s.line(
                "account_per_metre", "Per metre of bench", Unit.parse("money/(m a)"), total.over(house.benchMetres));
        Unit perFoot = Unit.parse("money/(ft a)");
        s.line("account_per_foot", "Per foot of bench", perFoot, perMetre.in(perFoot));
        s.line("account_per_plant", "Per plant", Unit.parse("money/(plant a)"), planting.each(total));
        Line perArea =
                s.line("account_per_area", "Per m² of floor", Unit.parse("money/(m2 a)"), total.over(house.houseArea));
        Unit perSquareFoot = Unit.parse("money/(ft2 a)");
        s.line("account_per_square_foot", "Per square foot of floor", perSquareFoot, perArea.in(perSquareFoot));
        ofFruit(s, total, fruit);
    }

    private static void ofFruit(ScheduleBuilder s, Line total, Line fruit) {
        Formula perKg = total.over(fruit);
        Unit perPound = Unit.parse("money/lb");
        s.line("account_per_kg", "Per kg of fruit", perKg.unit(), onlyWhen(fruit.isPositive(), perKg, "no yield"));
        s.line(
                "account_per_pound",
                "Per pound of fruit",
                perPound,
                onlyWhen(fruit.isPositive(), perKg.in(perPound), "no yield"));
    }

    private static List<Formula> labels(LeftOut leftOut) {
        return List.of(
                text("Receipts"),
                text("Operating costs"),
                text("Ownership costs"),
                text("Overhead"),
                leftOut.either("Costs of a year, as listed", "Total cost of a year"),
                leftOut.either("Returns above listed costs", "Returns above total cost"));
    }

    /** Receipts, money/(m a). */
    Formula receipts() {
        return ofMetre(RECEIPTS);
    }

    /** All costs, money/(m a). */
    Formula costs() {
        return ofMetre(COSTS);
    }

    /** Receipts less all costs, money/(m a). */
    Formula returns() {
        return ofMetre(RETURNS);
    }

    private Formula ofMetre(String key) {
        return new Element(perMetre, axis, axis.indexOf(key));
    }
}
