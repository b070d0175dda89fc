package org.benchmetre.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.Structure;

/**
 * A run of periods as long as a single entry asks for, with some to spare, such as the years of a plan. A cell that is no number asks for
 * the longest run, and so does one that cannot be; the entry itself says what is wrong with it, and up to where it may go. Where nothing is
 * said the structure has no keys of it, and the documented value decides.
 *
 * @param number the entry: its line is the column, and its unit
 * @param more periods to spare
 * @param least shortest run
 * @param most longest run
 */
public record EntryRun(RunLength.Factor number, int more, int least, int most) {

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
        List<String> keys = set.or(() -> row).map(this::keys).orElse(List.of());
        return Map.entry(lengthOf(number.column()), new Structure.Keys(keys, List.of()));
    }

    /**
     * The periods that a number asks for.
     *
     * @param asked the value of the entry
     * @return keys {@code 1}, {@code 2} and so on
     */
    public List<String> keys(double asked) {
        boolean canBe = asked >= 1 && asked <= most && asked == Math.rint(asked);
        return RunLength.keys(canBe ? (int) Math.max(least, Math.min(most, asked + more)) : most);
    }
}
