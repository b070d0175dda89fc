package org.benchmetre.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.Rounding;
import org.benchmetre.budget.Structure;

/**
 * A run of periods as long as a single entry asks for, with some to spare, such as the years of a plan. A cell that is no number asks for
 * the longest run, and so does one that cannot be; the entry itself says what is wrong with it, and up to where it may go.
 *
 * @param number the entry: its line is the column, its unit and what a missing row stands for
 * @param more periods to spare
 * @param step the run is a multiple of this
 * @param least shortest run
 * @param most longest run
 */
public record EntryRun(RunLength.Factor number, int more, int step, int least, int most) {

    /**
     * The key under which a structure keeps the periods.
     *
     * @param line the entry
     * @return for use with {@link Structure#keys(String)}
     */
    public static String lengthOf(String line) {
        return line + " length";
    }

    /** The periods that rows of single values ask for, or a setting that goes before them. */
    Map.Entry<String, Structure.Keys> keys(CsvTable single, Settings settings) {
        Optional<Double> set = settings.settings().stream()
                .filter(setting -> setting.address().toString().equals(number.column()))
                .map(setting -> number.read(setting.value(), false))
                .findFirst();
        Optional<Double> row = single.rows().stream()
                .filter(each -> Phrases.folded(each.text(SingleRows.LINE)).equals(number.column()))
                .filter(each -> !each.isBlank(SingleRows.VALUE))
                .map(each -> number.read(each.text(SingleRows.VALUE), each.decimalComma()))
                .findFirst();
        double asked = set.or(() -> row).orElse(number.usual());
        boolean canBe = asked >= 1 && asked <= most && asked == Math.rint(asked);
        double length = canBe ? Math.max(least, Math.min(most, step * Rounding.wholeUp((asked + more) / step))) : most;
        List<String> keys = RunLength.keys((int) length);
        return Map.entry(lengthOf(number.column()), new Structure.Keys(keys, List.of()));
    }
}
