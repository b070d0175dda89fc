package org.benchmetre.farm.irrigation.clogging;

import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.INVENTED;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What the raw water may clog outlets with. Each cause is slight below its lower limit, moderate from that limit up to and with its
 * upper one, severe above it. Limits: University of Florida IFAS, FAWN, microirrigation maintenance, table 1 (after Pitts 1990);
 * its page prints the severe limits of suspended and dissolved solids swapped, here they stand with their own cause. The table
 * grades raw water as it comes, not acidified feed. It warns; it does not change any amount.
 */
public final class WaterQuality {

    private static final String SLIGHT = "slight";
    private static final String MODERATE = "moderate";
    private static final String SEVERE = "severe";
    private static final Unit MG_PER_LITRE = Unit.parse("mg/L");
    private static final Unit PER_MILLILITRE = Unit.parse("1/mL");
    private static final String TABLE = "UF/IFAS FAWN microirrigation maintenance, table 1 (Pitts 1990)";

    private record Cause(String key, String label, Line entry, double from, double above, String advice) {}

    /** One row for each cause. */
    public final Axis axis;
    /** Class of each cause, a text. */
    public final Line classes;

    private final ScheduleBuilder list;
    private final FarmEntries entries;
    private final List<Cause> causes = new ArrayList<>();

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     */
    public WaterQuality(BudgetBuilder b, FarmEntries entries) {
        this.entries = entries;
        list = b.schedule(Sheets.IRRIGATION, "Raw water, as tested");
        list.note("Have the raw water tested, before any acid or feed. What is left out is an invented figure.");
        ask();
        axis = Axis.rows("water_cause", "Cause", causes.stream().map(Cause::key).toList(), 0);
        ScheduleBuilder table = b.schedule(Sheets.IRRIGATION, "Raw water: what it may clog outlets with");
        table.note(
                "Slight below the first limit, severe above the second. Other tables differ: pH severe above 8.0, and "
                        + "hardness limits of 150 and 300 mg/L (from memory).");
        Line label = table.textLine("water_cause_label", "Cause", rows(cause -> text(cause.label())));
        b.nameRows(axis, label);
        Line value = table.line("water_cause_value", "Value", ONE, rows(cause -> plain(cause.entry())));
        table.textLine("water_cause_unit", "Unit", rows(cause -> text(unitOf(cause))));
        Line from = table.line("water_moderate_from", "Moderate from", ONE, rows(c -> number(c.from(), ONE)), TABLE);
        Line above = table.line("water_severe_above", "Severe above", ONE, rows(c -> number(c.above(), ONE)), TABLE);
        classes = table.textLine(
                "water_cause_class",
                "Risk of clogging",
                when(from.exceeds(value), text(SLIGHT), when(value.exceeds(above), text(SEVERE), text(MODERATE))));
        table.textLine(
                "water_cause_advice",
                "What to do",
                when(classes.is(SLIGHT), text("nothing"), rows(cause -> text(cause.advice()))));
        table.warning(
                "water_severe_warning",
                "Clogging",
                classes.is(SEVERE),
                "The raw water is a severe risk of clogging by this cause: treat it before the house, as the table of raw "
                        + "water says, or take water from elsewhere.");
        list.textLine("water_worst_class", "Risk of clogging, the worst of all causes", worst());
    }

    private void ask() {
        add("ph", "pH", ONE, 14, new double[] {6, 7.2, 8.5}, 7.0, 7.5, "acidify: high pH lets lime and iron settle");
        add("iron", "Iron", new double[] {0, 0.05, 2}, 0.1, 1.5, "aerate, settle and filter before the house");
        add("manganese", "Manganese", new double[] {0, 0.02, 2}, 0.1, 1.5, "oxidise and filter before the house");
        add(
                "suspended",
                "Suspended solids",
                new double[] {0, 20, 150},
                50,
                100,
                "settle, filter finer, flush more often");
        add(
                "dissolved",
                "Dissolved solids",
                new double[] {50, 300, 2500},
                500,
                2000,
                "blend with rain water or desalt");
        add(
                "sulphide",
                "Hydrogen sulphide",
                new double[] {0, 0.05, 3},
                0.2,
                2.0,
                "aerate before use, keep apart from iron");
        add(
                "bacteria",
                "Bacteria",
                PER_MILLILITRE,
                1e9,
                new double[] {0, 1000, 60_000},
                10_000,
                50_000,
                "disinfect as labels allow, flush, keep lines dark");
        add("hardness", "Hardness, as CaCO3", new double[] {10, 60, 300}, 40, 80, "acidify or soften before the house");
    }

    private void add(String key, String label, double[] usual, double from, double above, String advice) {
        add(key, label, MG_PER_LITRE, 100_000, usual, from, above, advice);
    }

    private void add(
            String key,
            String label,
            Unit unit,
            double most,
            double[] usual,
            double from,
            double above,
            String advice) {
        Line entry = entries.add(list.entry("water_" + key, "Raw water: " + words(label), unit)
                .from(0, most)
                .typical(usual[0], usual[1], usual[2], INVENTED));
        causes.add(new Cause(key, label, entry, from, above, advice));
    }

    private Formula rows(Function<Cause, Formula> cell) {
        return new Rows(axis, causes.stream().map(cell).toList());
    }

    private static Formula plain(Line entry) {
        return entry.unit().equals(ONE) ? entry : entry.counting(ONE);
    }

    private static String words(String label) {
        return label.equals("pH") ? label : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }

    private static String unitOf(Cause cause) {
        return cause.entry().unit().equals(ONE) ? "pH" : cause.entry().unit().toString();
    }

    private Formula worst() {
        Formula severe = countWhere(classes, text(SEVERE), axis).isPositive();
        Formula moderate = countWhere(classes, text(MODERATE), axis).isPositive();
        return when(severe, text(SEVERE), when(moderate, text(MODERATE), text(SLIGHT)));
    }
}
