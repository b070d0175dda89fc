package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * The salts in their order: each is set by the ion it is named for, at what the recipe asks for less what raw water, acid and the
 * salts before it bring, and never below nothing.
 *
 * <pre>
 * w(i) = max(0, r(i) - v(i) - a(i) - sum of n(i, k) x(k))     x(s) = w(i) / n(i, s)
 * w(i)  wanted of ion i, mmol/L       r(i)  asked for by the recipe, mmol/L     v(i)  in the raw water, mmol/L
 * a(i)  left by the acid, mmol/L      x(k)  amount of a salt before, mmol/L     n(i, k)  ions i in one formula unit of salt k
 *
 * i            s, the salt that ion i sets
 * calcium      calcium nitrate, one of two grades
 * magnesium    magnesium sulphate
 * phosphorus   monopotassium phosphate
 * ammonium     ammonium nitrate
 * nitrate      potassium nitrate
 * potassium    potassium sulphate
 * </pre>
 *
 * Sulphur then follows and is checked. Plain stoichiometry; the order is common practice, no source.
 */
final class SaltAmounts {

    private static final String TETRAHYDRATE = "tetrahydrate";
    private static final String DOUBLE_SALT = "double_salt";
    private static final String ORDER =
            "what water, acid and the salts before bring is taken off; the order of the salts is common practice, no source";
    private static final String COUNTS = "ions in a formula unit of the salt: its chemical formula";

    /** Amount of each salt, mmol/L. */
    final Map<Salt, Line> of = new EnumMap<>(Salt.class);

    private final ScheduleBuilder s;
    private final Recipe recipe;
    private final RawWater water;
    private final Acid acid;

    SaltAmounts(BudgetBuilder b, FarmEntries entries, Recipe recipe, RawWater water, Acid acid) {
        this.recipe = recipe;
        this.water = water;
        this.acid = acid;
        s = b.schedule(Sheets.OPERATIONS, "Salts in their order");
        s.note(
                "Each salt is set by one ion: what is asked for, less what raw water, acid and the salts above bring; never below 0. "
                        + "Salts are taken as pure: mind the analysis on the bag.");
        Line grade = entries.add(
                s.textEntry("calcium_nitrate_choice", "Calcium nitrate: tetrahydrate or double_salt (greenhouse)")
                        .oneOf(TETRAHYDRATE, COMMON, List.of(TETRAHYDRATE, DOUBLE_SALT)));
        Line calcium = wanted(Ion.CALCIUM, "feed_calcium_wanted", "Calcium wanted from salts");
        put(Salt.CALCIUM_NITRATE, onlyFor(grade, TETRAHYDRATE, each(calcium, Salt.CALCIUM_NITRATE, Ion.CALCIUM)));
        put(
                Salt.CALCIUM_AMMONIUM_NITRATE,
                onlyFor(grade, DOUBLE_SALT, each(calcium, Salt.CALCIUM_AMMONIUM_NITRATE, Ion.CALCIUM)));
        next(Salt.MAGNESIUM_SULPHATE, Ion.MAGNESIUM, "feed_magnesium_wanted", "Magnesium wanted from salts");
        next(Salt.MONOPOTASSIUM_PHOSPHATE, Ion.PHOSPHORUS, "feed_phosphorus_wanted", "Phosphorus wanted from salts");
        next(Salt.AMMONIUM_NITRATE, Ion.AMMONIUM, "feed_ammonium_wanted", "Ammonium still wanted");
        next(Salt.POTASSIUM_NITRATE, Ion.NITRATE, "feed_nitrate_wanted", "Nitrate still wanted");
        next(Salt.POTASSIUM_SULPHATE, Ion.POTASSIUM, "feed_potassium_wanted", "Potassium still wanted");
    }

    /** What the salts set so far bring of an ion, mmol/L; empty where none brings it. */
    Optional<Formula> brings(Ion ion) {
        return of.entrySet().stream()
                .filter(part -> part.getKey().ions.containsKey(ion))
                .map(part -> timesCount(part.getValue(), part.getKey().ions.get(ion)))
                .reduce(Formula::plus);
    }

    private void next(Salt salt, Ion ion, String id, String label) {
        put(salt, each(wanted(ion, id, label), salt, ion));
    }

    private Line wanted(Ion ion, String id, String label) {
        Formula rest = Stream.of(water.brings(ion), acid.brings(ion), brings(ion))
                .flatMap(Optional::stream)
                .reduce(recipe.target.get(ion), Formula::minus);
        return s.line(id, label, MMOL_PER_LITRE, greater(none(MMOL_PER_LITRE), rest), ORDER);
    }

    private void put(Salt salt, Formula amount) {
        of.put(salt, s.line(salt.key() + "_amount", salt.label, MMOL_PER_LITRE, amount, COUNTS));
    }

    private static Formula onlyFor(Line grade, String wanted, Formula amount) {
        return when(grade.is(wanted), amount, none(MMOL_PER_LITRE));
    }

    /** The salt that brings so much of an ion. */
    private static Formula each(Line wanted, Salt salt, Ion ion) {
        int count = salt.ions.get(ion);
        return count == 1 ? wanted : wanted.over(number(count, ONE));
    }

    private static Formula timesCount(Line amount, int count) {
        return count == 1 ? amount : number(count, ONE).times(amount);
    }
}
