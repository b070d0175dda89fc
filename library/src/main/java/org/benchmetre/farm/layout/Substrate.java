package org.benchmetre.farm.layout;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.LITRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Substrate to buy. Mixing shrinks the parts, wetting in settles the mix, and the two multiply: loose volume is filled volume over
 * (1 - mixing) over (1 - settlement). Common practice, no source. Each part takes its share of the loose volume; a blend of no parts has
 * none of any.
 */
public final class Substrate {

    /** Loose volume of all parts together. */
    public final Line looseVolume;
    /** Loose volume of coir. */
    public final Line coir;
    /** Loose volume of peat. */
    public final Line peat;
    /** Loose volume of perlite. */
    public final Line perlite;
    /** Loose volume of whatever else is mixed in. */
    public final Line other;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param trough the root zone
     */
    public Substrate(BudgetBuilder b, FarmEntries entries, Trough trough) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Substrate blend");
        s.note(
                "Parts by volume. Coir wets easily and starts near pH 6, peat holds water and starts acid: blended, they need less "
                        + "lime to bring the root zone into its band; perlite keeps air in (common practice, no source).");
        Line coirParts = parts(entries, s, "coir_parts", "Coir, parts");
        Line peatParts = parts(entries, s, "peat_parts", "Peat, parts");
        Line perliteParts = parts(entries, s, "perlite_parts", "Perlite, parts");
        Line otherParts = parts(entries, s, "other_parts", "Other, parts");
        Line mixing = share(entries, s, "mixing_shrinkage", "Volume lost on mixing");
        Line settlement = share(entries, s, "substrate_settlement", "Volume lost on wetting in");
        looseVolume = s.line(
                "loose_volume",
                "Loose volume of all parts",
                LITRE,
                trough.substrateVolume.over(one().minus(mixing)).over(one().minus(settlement)),
                "filled volume over (1 - mixing) over (1 - settlement): common practice, no source");
        s.line(
                "backfill_volume",
                "Loose volume of it for backfilling after wetting in",
                LITRE,
                looseVolume.times(settlement),
                "what settles is filled up with the same blend");
        Line all = s.line(
                "all_parts",
                "All parts",
                ONE,
                coirParts.plus(peatParts).plus(perliteParts).plus(otherParts));
        s.warning(
                "all_parts_warning",
                "Parts of the blend",
                and(looseVolume.isPositive(), not(all.isPositive())),
                "The root zone holds substrate and the blend has no parts, so none is bought: enter the parts, or a trough_depth of 0 "
                        + "where there is no substrate.");
        coir = volume(s, "coir_volume", "Coir, loose volume", coirParts, all);
        peat = volume(s, "peat_volume", "Peat, loose volume", peatParts, all);
        perlite = volume(s, "perlite_volume", "Perlite, loose volume", perliteParts, all);
        other = volume(s, "other_volume", "Other, loose volume", otherParts, all);
    }

    private static Line parts(FarmEntries entries, ScheduleBuilder s, String id, String label) {
        return entries.add(s.entry(id, label, ONE).from(0, 1000));
    }

    private static Line share(FarmEntries entries, ScheduleBuilder s, String id, String label) {
        return entries.add(s.entry(id, label, ONE).from(0, 0.9));
    }

    private Line volume(ScheduleBuilder s, String id, String label, Line parts, Line all) {
        return s.line(
                id,
                label,
                LITRE,
                when(all.isPositive(), looseVolume.times(parts).over(all), none(LITRE)));
    }
}
