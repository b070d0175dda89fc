package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * Types of plant, such as June-bearing and everbearing: usual fruit of a plant and crop, usual spread of fruit over the months, heat
 * to first fruit, and the warmth above which flowering hangs on the length of the day. What a plant costs and how early it is says the
 * plant stock; the same type is sold as many kinds of stock. Rows of the profile's {@code plant_types}, each with its source.
 */
public final class PlantTypes {

    private static final Unit GRAMS = Unit.parse("g/(plant crop)");
    private static final Unit DEGREE_DAYS = Unit.parse("K d");
    private static final Unit DEGREE = Unit.parse("degC");

    /** One row for each type. */
    public final Axis axis;
    /** Keys. */
    public final Line key;
    /** Labels. */
    public final Line label;
    /** Type of the plan, by its key. */
    public final Line chosen;
    /** Least usual fruit of a plant and crop, g/(plant crop). */
    public final Line least;
    /** Most usual fruit of a plant and crop, g/(plant crop). */
    public final Line most;
    /** Heat sum from planting to first ripe fruit, K d. */
    public final Line heatSum;
    /** Temperature above which heat counts, degC. */
    public final Line heatBase;
    /** Mean temperature above which flowering hangs on the length of the day, degC. */
    public final Line flowerLimit;
    /** Usual spread of a crop's fruit, by type and month. */
    final Line spread;
    /** Where usual fruit comes from. */
    public final Line source;

    /** A type by its key or label. */
    final TextForm form;

    private final List<ProfileRow> rows;

    /**
     * Declares the table and the entry.
     *
     * @param b where schedules are added
     * @param entries gives entries their values, and knows the profile
     * @param months the months
     */
    public PlantTypes(BudgetBuilder b, FarmEntries entries, Months months) {
        rows = entries.profile().rows("plant_types");
        axis = Axis.rows(
                "plant_type",
                "Plant type",
                rows.stream().map(r -> r.text("type")).toList(),
                0);
        form = TextForm.oneOf(
                axis.keys(), rows.stream().map(r -> r.text("label")).toList());
        String sources = rows.stream().map(r -> r.text("source")).distinct().collect(Collectors.joining("; "));
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Plant types");
        label = s.textLine("plant_type_label", "Plant type", each(r -> text(r.text("label"))));
        b.nameRows(axis, label);
        key = s.textLine("plant_type_key", "Key", each(r -> text(r.text("type"))));
        least = s.line(
                "plant_type_least",
                "Fruit, usually at least",
                GRAMS,
                numbers("grams_low", GRAMS),
                sources("grams_source"));
        most = s.line(
                "plant_type_most",
                "Fruit, usually at most",
                GRAMS,
                numbers("grams_high", GRAMS),
                sources("grams_source"));
        heatSum = s.line(
                "plant_type_heat_sum",
                "Heat sum, planting to first fruit",
                DEGREE_DAYS,
                numbers("heat_sum", DEGREE_DAYS),
                sources("heat_source"));
        heatBase = s.line(
                "plant_type_heat_base",
                "Heat counts above",
                DEGREE,
                numbers("heat_base", DEGREE),
                sources("heat_source"));
        flowerLimit = s.line(
                "plant_type_flower_limit",
                "Flowers at any length of day up to",
                DEGREE,
                numbers("flower_limit", DEGREE),
                sources("limit_source"));
        source = s.textLine("plant_type_source", "Source of usual fruit", each(r -> text(r.text("grams_source"))));
        spread = b.schedule(Sheets.CROP, "Plant types: usual share of a crop's fruit by month")
                .line(
                        "plant_type_share",
                        "Share of a crop's fruit",
                        ONE,
                        each(row -> new Rows(
                                months.axis,
                                Months.KEYS.stream()
                                        .map(month -> number(row.number(month), ONE))
                                        .<Formula>map(Function.identity())
                                        .toList())),
                        sources("source"));
        chosen = entries.add(b.schedule(Sheets.CROP, "Plant type of the plan")
                .textEntry("plant_type", "Plant type")
                .words(form));
    }

    private String sources(String column) {
        return rows.stream().map(row -> row.text(column)).distinct().collect(Collectors.joining("; "));
    }

    private Formula numbers(String column, Unit unit) {
        return each(row -> number(row.number(column), unit));
    }

    private Formula each(Function<ProfileRow, Formula> cell) {
        return new Rows(axis, rows.stream().map(cell).toList());
    }
}
