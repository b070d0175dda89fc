package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countPositive;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/** Says of each channel and month how much fruit is over the most it takes, and where that goes. */
final class OverflowWords {

    private final Channels c;

    OverflowWords(BudgetBuilder b, Channels c, List<Line> over, Axis months) {
        this.c = c;
        Line passed = b.shared(Sheets.CROP, Tables.CHANNELS)
                .line(
                        "channel_passed_on",
                        "Passed on, or not sold past the last",
                        Unit.parse("kg/a"),
                        rows(i -> yearOf(over.get(i), months)));
        b.schedule(Sheets.CROP, "Channels that are full")
                .warning(
                        "channel_full_warning",
                        "Break-even yield",
                        countPositive(passed, c.axis).isPositive(),
                        "Channels are full in some months. What is said of more or less fruit, the yield that breaks even and fruit lost "
                                + "to dry plants, goes by the channels that have room now, and is rough where others fill up.");
        b.schedule(Sheets.CROP, "Channels by month: fruit over the most they take")
                .warning(
                        "channel_over_warning",
                        "Fruit over the most a channel takes in a month",
                        rows(i -> and(label(i).isFilled(), over.get(i).isPositive())),
                        rows(i -> joined(shown(over.get(i), 1), text(" kg is more than it takes and "), goes(i))));
    }

    private Formula rows(IntFunction<Formula> cell) {
        return new Rows(c.axis, IntStream.range(0, c.axis.size()).mapToObj(cell).toList());
    }

    private Formula label(int channel) {
        return new Element(c.label, c.axis, channel);
    }

    private Formula goes(int channel) {
        Formula notSold = text("is not sold: add a channel below, or raise most_per_month.");
        if (channel + 1 == c.axis.size()) {
            return notSold;
        }
        Formula next = label(channel + 1);
        return when(next.isFilled(), joined(text("goes on to "), next, text(".")), notSold);
    }
}
