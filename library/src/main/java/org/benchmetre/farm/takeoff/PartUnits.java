package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;

/**
 * The units that parts may be measured in, as a table that formulas look a word up in, so that a unit typed into a workbook converts too.
 * Factors are those of the units themselves.
 */
final class PartUnits {

    /** The word as typed. */
    final Line word;

    private final Axis axis;
    private final Line key;
    private final Line perDriver;
    private final Line served;

    /** Declares the table. */
    PartUnits(BudgetBuilder b) {
        ScheduleBuilder s = b.schedule(Sheets.MATERIALS, "Units of parts: what converts");
        s.note("A part in a unit of its driver's measure converts; any other word counts what it says.");
        List<String> keys = each((measure, each) -> key(measure.word(), each).replaceAll("[ /]", "_"));
        axis = Axis.rows(
                "part_unit",
                "Unit",
                keys.stream().map(each -> each.toLowerCase(Locale.ROOT)).toList(),
                0);
        word = s.textLine("unit_word", "Unit", rows((measure, each) -> text(each)));
        b.nameRows(axis, word);
        key = s.textLine("unit_key", "Measure and unit", rows((measure, each) -> text(key(measure.word(), each))));
        perDriver = s.line(
                "unit_per_driver",
                "In one of the driver's",
                ONE,
                rows((measure, each) -> number(measure.perBase(each), ONE)),
                "definitions of the units: NIST Special Publication 811, appendix B");
        served = s.textLine(
                "unit_served", "A capacity is held against", rows((measure, each) -> text(measure.served())));
    }

    private static String key(String measure, String word) {
        return measure + " " + word;
    }

    private Formula rows(BiFunction<PartMeasure, String, Formula> cell) {
        return new Rows(axis, each(cell));
    }

    private static <T> List<T> each(BiFunction<PartMeasure, String, T> cell) {
        List<T> all = new ArrayList<>();
        for (PartMeasure measure : PartMeasure.values()) {
            measure.words().forEach(word -> all.add(cell.apply(measure, word)));
        }
        return all;
    }

    /** The key of a unit of a measure, both texts. */
    static Formula key(Formula measure, Formula unit) {
        return joined(measure, text(" "), unit);
    }

    /**
     * How many of a unit make one of the driver's.
     *
     * @param key of the unit, a text
     * @return 0 where the unit is none of that measure
     */
    Formula perDriverOf(Formula key) {
        return sumWhere(perDriver, this.key, key, axis);
    }

    /**
     * How many of a unit make one of a driver's of the same measure.
     *
     * @param unit a word
     * @return 0 where the word is no unit
     */
    Formula perDriver(Formula unit) {
        return sumWhere(perDriver, word, unit, axis);
    }

    /**
     * The driver that a capacity in a unit is held against.
     *
     * @param unit a word of the table
     * @return a key
     */
    Formula served(Formula unit) {
        return lookup(served, word, unit);
    }
}
