package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
 * a(i)  left by the acid, mmol/L      x(k)  amount of a salt before, mmol/L     n(i, k)  ions i in a mole of salt k as sold
 *
 * Which salts there are, and which ion sets each, says the profile of the crop.
 * </pre>
 *
 * Sulphur then follows and is checked. Plain stoichiometry; the order is common practice, no source.
 */
final class SaltAmounts {

    private static final String ORDER =
            "what water, acid and the salts before bring is taken off; the order of the salts is common practice, no source";
    private static final String COUNTS = "over the ions that a mole of the salt as sold brings: plain stoichiometry";

    /** Amount of each salt, mmol/L. */
    final Map<Salt, Line> of = new LinkedHashMap<>();
    /** The salts. */
    final FeedTables tables;

    private final ScheduleBuilder s;
    private final Recipe recipe;
    private final RawWater water;
    private final Acid acid;
    private final SaltContent content;

    SaltAmounts(BudgetBuilder b, FarmEntries entries, FeedTables tables, Recipe recipe, RawWater water, Acid acid) {
        this.tables = tables;
        this.recipe = recipe;
        this.water = water;
        this.acid = acid;
        content = new SaltContent(b, entries, tables);
        s = b.schedule(Sheets.OPERATIONS, "Salts in their order");
        s.note(
                "Each salt is set by one ion: what is asked for, less what raw water, acid and the salts above bring; never below 0. "
                        + "A mole is as many grams of the salt as sold as its formula weighs.");
        Map<Ion, List<Salt>> byIon = tables.salts().stream()
                .collect(Collectors.groupingBy(Salt::setBy, LinkedHashMap::new, Collectors.toList()));
        byIon.forEach((ion, salts) -> {
            if (salts.size() == 1) {
                put(salts.get(0), each(wanted(ion), salts.get(0), ion));
            } else {
                choose(entries, ion, salts);
            }
        });
    }

    /** What the salts set so far bring of an ion, mmol/L; empty where none brings it. */
    Optional<Formula> brings(Ion ion) {
        return of.entrySet().stream()
                .filter(part -> part.getKey().substance().ions().containsKey(ion))
                .map(part -> content.of(part.getKey(), ion).times(part.getValue()))
                .reduce(Formula::plus);
    }

    /** Of several salts that one ion sets the one is set that is chosen by its grade. */
    private void choose(FarmEntries entries, Ion ion, List<Salt> salts) {
        Salt first = salts.get(0);
        Line grade =
                entries.add(s.textEntry(first.key() + "_choice", first.grade().choice())
                        .oneOf(salts.stream().map(salt -> salt.grade().word()).toList()));
        Line wanted = wanted(ion);
        salts.forEach(
                salt -> put(salt, when(grade.is(salt.grade().word()), each(wanted, salt, ion), none(MMOL_PER_LITRE))));
    }

    private Line wanted(Ion ion) {
        String id = "feed_" + ion.key() + "_wanted";
        String name =
                ion.key().substring(0, 1).toUpperCase(Locale.ROOT) + ion.key().substring(1);
        String label = name + (brings(ion).isEmpty() ? " wanted from salts" : " still wanted");
        Formula rest = Stream.of(water.brings(ion), acid.brings(ion), brings(ion))
                .flatMap(Optional::stream)
                .reduce(recipe.target.get(ion), Formula::minus);
        return s.line(id, label, MMOL_PER_LITRE, greater(none(MMOL_PER_LITRE), rest), ORDER);
    }

    private void put(Salt salt, Formula amount) {
        of.put(salt, s.line(salt.key() + "_amount", salt.label(), MMOL_PER_LITRE, amount, COUNTS));
    }

    /** What a mole of a salt as sold brings of an ion; null where it brings none. */
    Line content(Salt salt, Ion ion) {
        return content.of(salt, ion);
    }

    /** The salt that brings so much of an ion. */
    private Formula each(Line wanted, Salt salt, Ion ion) {
        return wanted.over(content.of(salt, ion));
    }
}
