package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;

import java.util.Locale;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Names the ions in which the feed misses its recipe. Ions that set a salt of their own can only be in surplus; sulphur, which sets
 * none, can also fall short. What to say of each stands with the ion. Sodium and chloride are held against what the crop bears.
 */
final class Unmet {

    private final ScheduleBuilder s;
    private final IonTable ions;
    private final Line tolerance;

    Unmet(BudgetBuilder b, FarmEntries entries, FeedTables tables, IonTable ions) {
        this.ions = ions;
        s = b.schedule(Sheets.OPERATIONS, "Where the nutrient solution misses its recipe");
        s.note("Empty while all is well.");
        tolerance = limit(entries, "recipe_tolerance", "Difference allowed for each ion");
        tables.ions().values().stream()
                .filter(facts -> !facts.advice().tooMuch().isEmpty())
                .forEach(this::surplus);
        tables.ions().values().stream()
                .filter(facts -> !facts.advice().tooLittle().isEmpty())
                .forEach(this::shortfall);
        borne(entries, Ion.SODIUM, "sodium_limit", "Sodium the crop bears");
        borne(entries, Ion.CHLORIDE, "chloride_limit", "Chloride the crop bears");
    }

    private void surplus(IonFacts facts) {
        Ion ion = facts.ion();
        warn(
                ion,
                ion.key() + "_surplus",
                ions.difference(ion).exceeds(tolerance),
                facts.advice().tooMuch());
    }

    private void shortfall(IonFacts facts) {
        Ion ion = facts.ion();
        Formula wrong = none(MMOL_PER_LITRE).exceeds(ions.difference(ion).plus(tolerance));
        warn(ion, ion.key() + "_shortfall", wrong, facts.advice().tooLittle());
    }

    private void borne(FarmEntries entries, Ion ion, String id, String label) {
        Line limit = limit(entries, id, label);
        warn(
                ion,
                ion.key() + "_beyond_limit",
                ions.supplied(ion).exceeds(limit),
                "more than the crop bears comes with the raw water and builds up in the root zone. "
                        + "Blend with rain water or water from reverse osmosis, or drain more.");
    }

    private void warn(Ion ion, String id, Formula wrong, String sentence) {
        String name =
                ion.key().substring(0, 1).toUpperCase(Locale.ROOT) + ion.key().substring(1);
        s.warning(id, name + " in the nutrient solution", wrong, sentence);
    }

    private Line limit(FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, MMOL_PER_LITRE).from(0, 100));
    }
}
