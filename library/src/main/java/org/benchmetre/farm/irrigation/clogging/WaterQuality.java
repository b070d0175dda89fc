package org.benchmetre.farm.irrigation.clogging;

import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * What the raw water may clog outlets with. Each cause is slight below its lower limit, moderate from that limit up to and with its
 * upper one, severe above it. Causes and limits are a table of the profile; what follows from the analysis that the nutrient solution
 * is made with is not asked again. It grades raw water as it comes, not acidified feed. It
 * warns; it does not change any amount.
 */
public final class WaterQuality {

    private static final String SLIGHT = "slight";
    private static final String MODERATE = "moderate";
    private static final String SEVERE = "severe";

    private record Cause(String key, String label, Line value, double from, double above, String advice) {}

    /** One row for each cause. */
    public final Axis axis;
    /** Class of each cause, a text. */
    public final Line classes;

    private final List<Cause> causes;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param following causes that follow from the analysis of the raw water, by their key
     */
    public WaterQuality(BudgetBuilder b, FarmEntries entries, Map<String, Line> following) {
        List<ProfileRow> known = entries.profile().rows("water");
        ScheduleBuilder list = b.schedule(Sheets.IRRIGATION, "Raw water, as tested");
        list.note(
                "Have the raw water tested, before any acid or salts. What is left out is an invented figure. Hardness and dissolved solids "
                        + "follow from the analysis that the nutrient solution is made with.");
        causes = known.stream()
                .map(row -> cause(
                        row,
                        Optional.ofNullable(following.get(row.text("cause"))).orElseGet(() -> ask(list, entries, row))))
                .toList();
        String source = known.stream().map(row -> row.text("source")).distinct().collect(Collectors.joining("; "));
        axis = Axis.rows("water_cause", "Cause", causes.stream().map(Cause::key).toList(), 0);
        ScheduleBuilder table = b.schedule(Sheets.IRRIGATION, "Raw water: what it may clog outlets with");
        table.note(
                "Slight below the first limit, severe above the second. Other tables differ: pH severe above 8.0, and "
                        + "hardness limits of 150 and 300 mg/L (from memory).");
        Line label = table.textLine("water_cause_label", "Cause", rows(cause -> text(cause.label())));
        b.nameRows(axis, label);
        Line value = table.line("water_cause_value", "Value", ONE, rows(cause -> plain(cause.value())));
        table.textLine("water_cause_unit", "Unit", rows(cause -> text(unitOf(cause))));
        Line from = table.line("water_moderate_from", "Moderate from", ONE, rows(c -> number(c.from(), ONE)), source);
        Line above = table.line("water_severe_above", "Severe above", ONE, rows(c -> number(c.above(), ONE)), source);
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

    private static Line ask(ScheduleBuilder list, FarmEntries entries, ProfileRow row) {
        String id = "water_" + row.text("cause");
        return entries.add(list.entry(id, "Raw water: " + words(row.text("label")), Unit.parse(row.text("unit")))
                .from(0, row.number("most")));
    }

    private static Cause cause(ProfileRow row, Line value) {
        return new Cause(
                row.text("cause"),
                row.text("label"),
                value,
                row.number("moderate_from"),
                row.number("severe_above"),
                row.text("advice"));
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
        return cause.value().unit().equals(ONE) ? "pH" : cause.value().unit().toString();
    }

    private Formula worst() {
        Formula severe = countWhere(classes, text(SEVERE), axis).isPositive();
        Formula moderate = countWhere(classes, text(MODERATE), axis).isPositive();
        return when(severe, text(SEVERE), when(moderate, text(MODERATE), text(SLIGHT)));
    }
}
