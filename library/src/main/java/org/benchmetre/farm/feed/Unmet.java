package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;
import static org.benchmetre.farm.input.TradeUnits.COMMON;

import java.util.Locale;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Names the ions in which the feed misses its recipe. Six ions set a salt of their own and can only be in surplus; sulphur, which
 * sets none, can also fall short. Sodium and chloride are held against what the crop bears.
 */
final class Unmet {

    private final ScheduleBuilder s;
    private final IonTable ions;
    private final Line tolerance;

    Unmet(BudgetBuilder b, FarmEntries entries, IonTable ions) {
        this.ions = ions;
        s = b.schedule(Sheets.OPERATIONS, "Where the feed misses its recipe");
        s.note("Empty while all is well.");
        tolerance = limit(entries, "recipe_tolerance", "Difference allowed for each ion", 0.02, 0.1, 0.5);
        surplus(
                Ion.NITRATE,
                "more nitrate than asked for: calcium nitrate, ammonium nitrate or nitric acid bring it. "
                        + "Raise nitrogen, lower calcium or the ammonium share, or take another acid.");
        surplus(
                Ion.AMMONIUM,
                "more ammonium than asked for: greenhouse-grade calcium nitrate brings it. "
                        + "Raise the ammonium share, or choose the tetrahydrate.");
        surplus(
                Ion.PHOSPHORUS,
                "more phosphorus than asked for: phosphoric acid brings it. "
                        + "Choose nitric acid, leave more alkalinity, or raise phosphorus.");
        surplus(
                Ion.POTASSIUM,
                "more potassium than asked for: potassium nitrate and monopotassium phosphate bring it. "
                        + "Raise potassium, lower nitrogen or phosphorus, or raise the ammonium share.");
        surplus(
                Ion.CALCIUM,
                "more calcium than asked for: the raw water brings it. "
                        + "Blend with rain water or water from reverse osmosis, or raise calcium.");
        surplus(
                Ion.MAGNESIUM,
                "more magnesium than asked for: the raw water brings it. "
                        + "Blend with rain water or water from reverse osmosis, or raise magnesium.");
        surplus(
                Ion.SULPHUR,
                "more sulphur than asked for: magnesium sulphate, potassium sulphate, sulphuric acid or the raw water bring it. "
                        + "Raise sulphur, lower magnesium, or raise nitrogen so that potassium nitrate takes over.");
        warn(
                Ion.SULPHUR,
                "sulphur_shortfall",
                none(MMOL_PER_LITRE).exceeds(ions.difference(Ion.SULPHUR).plus(tolerance)),
                "less sulphur than asked for: too little potassium is left for potassium sulphate. "
                        + "Raise potassium, lower nitrogen so that potassium sulphate takes over, or lower sulphur.");
        borne(entries, Ion.SODIUM, "sodium_limit", "Sodium the crop bears");
        borne(entries, Ion.CHLORIDE, "chloride_limit", "Chloride the crop bears");
    }

    private void surplus(Ion ion, String sentence) {
        warn(ion, ion.key() + "_surplus", ions.difference(ion).exceeds(tolerance), sentence);
    }

    private void borne(FarmEntries entries, Ion ion, String id, String label) {
        Line limit = limit(entries, id, label, 0.5, 1.5, 3);
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
        s.warning(id, name + " in the feed", wrong, sentence);
    }

    private Line limit(FarmEntries entries, String id, String label, double low, double usual, double high) {
        return entries.add(s.entry(id, label, MMOL_PER_LITRE).from(0, 100).typical(low, usual, high, COMMON));
    }
}
