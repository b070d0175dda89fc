package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Sheets;

/**
 * Depreciation as income tax counts it, of what was built at the start. House, equipment, and trough and substrate have a life each;
 * land, plants, cash and anything else is not depreciated.
 *
 * <pre>
 * straight line   d = C min(1, max(0, n - t + 1)) / n, full years from the first one on; a choice of this project, no source
 * class tables    d = C s(t) where the life is that of a class of the profile, else the straight line
 * d  of year t, money of its year     C  cost at the start     n  life, a     s  share of the class in year t
 * </pre>
 *
 * The straight line also stands where a rule of law would halve the first year. What may be deducted says a licensed tax adviser.
 */
public final class TaxDepreciation {

    /** Kinds that have a life, by their keys. */
    private static final List<FundKind> KINDS = List.of(FundKind.HOUSE, FundKind.EQUIPMENT, FundKind.GROWING);

    private static final String STRAIGHT = "straight_line";
    private static final String TABLES = "class_tables";
    private static final Unit YEAR = Unit.parse("a");
    private static final Unit MONEY = Unit.MONEY_NOMINAL;

    /** Share of taxable income that is paid as tax, 0 to 1; 0 for figures before tax. */
    public final Line rate;
    /** How depreciation is counted: {@code straight_line} or {@code class_tables}. */
    public final Line method;
    /** Depreciation of all that was built at the start, by year, money of its year; 0 at the start. */
    public final Line total;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param years periods 0 to the longest plan, each with its number as its key
     * @param year number of each, a
     * @param kinds kinds of what funds are used for; {@code house}, {@code equipment} and {@code growing} among its keys
     * @param cost what was built at the start, along the kinds, money of its year
     */
    public TaxDepreciation(BudgetBuilder b, FarmEntries entries, Axis years, Line year, Axis kinds, Line cost) {
        ScheduleBuilder s = b.schedule(Sheets.CASH_FLOW, "Income tax");
        s.note("Left out while the rate is 0: figures are before tax. What law allows says a licensed tax adviser.");
        rate = entries.add(s.entry("tax_rate", "Income tax, share of taxable income", ONE)
                .from(0, 1)
                .note("0: figures are before tax"));
        method = entries.add(s.textEntry("tax_method", "Tax depreciation").oneOf(List.of(STRAIGHT, TABLES)));
        List<Formula> lives = List.of(
                life(s, entries, "tax_life_house", "Tax life of the house"),
                life(s, entries, "tax_life_equipment", "Tax life of equipment"),
                life(s, entries, "tax_life_growing", "Tax life of trough and substrate"));
        TaxClasses classes = new TaxClasses(b, entries.profile(), years);
        Axis axis =
                Axis.rows("tax_kind", "Kind", KINDS.stream().map(FundKind::key).toList(), 0);
        ScheduleBuilder k = b.schedule(Sheets.CASH_FLOW, "Tax: what is depreciated");
        b.nameRows(
                axis,
                k.textLine(
                        "tax_kind_label",
                        "Kind",
                        rows(
                                axis,
                                KINDS.stream().map(kind -> text(kind.label())).toList())));
        Line life = k.line("tax_kind_life", "Life", YEAR, rows(axis, lives));
        Line built = k.line(
                "tax_kind_cost",
                "Built at the start",
                MONEY,
                rows(
                        axis,
                        KINDS.stream().map(kind -> of(cost, kinds, kind.key())).toList()));
        Formula isOfClass = not(or(classes.life.exceeds(life), life.exceeds(classes.life)));
        Line byClass = b.schedule(Sheets.CASH_FLOW, "Tax: cost by class and kind")
                .line(
                        "tax_class_cost",
                        "Cost that goes by the class",
                        MONEY,
                        when(and(isOfClass, method.is(TABLES)), built, none(MONEY)),
                        "a kind is of the class that its life names: a choice of this project, no source");
        Line ofClass = classes.schedule.line(
                "tax_class_total", "Cost that goes by the class, all kinds", MONEY, sum(byClass, axis));
        Line straight = k.line(
                "tax_straight_cost",
                "Cost that goes by the straight line",
                MONEY,
                built.minus(sum(byClass, classes.axis)));
        Formula served =
                lesser(number(1, YEAR), greater(none(YEAR), life.minus(year).plus(number(1, YEAR))));
        Formula even = when(year.isPositive(), straight.times(served).over(life), none(MONEY));
        Line each = b.schedule(Sheets.CASH_FLOW, "Tax: straight line by kind and year")
                .line(
                        "tax_straight_depreciation",
                        "Depreciation by the straight line",
                        MONEY,
                        even,
                        "cost over life, full years from the first on: a choice of this project, no source; ask a "
                                + "licensed tax adviser");
        total = b.shared(Sheets.CASH_FLOW, IncomeTax.BY_YEAR)
                .line(
                        "tax_depreciation",
                        "Tax depreciation",
                        MONEY,
                        sumProduct(ofClass, classes.share, classes.axis).plus(sum(each, axis)));
    }

    private static Line life(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, YEAR).from(1, 50));
    }

    private static Formula of(Line cost, Axis kinds, String kind) {
        return new Element(cost, kinds, kinds.indexOf(kind));
    }

    private static Formula rows(Axis axis, List<Formula> formulas) {
        return new Rows(axis, formulas);
    }
}
