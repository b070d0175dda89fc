package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.feed.FeedUnits.MG_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MOLAR_MASS;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What the raw water carries before anything is added, from a laboratory's analysis; the default is rain water: nothing. There is one raw
 * water, for the nutrient solution and for clogging: its hardness follows from calcium and magnesium, its dissolved solids from all ions.
 *
 * <pre>
 * H = 100.1 (Ca + Mg)          T = 0.6 A + Ca + Mg + Na + Cl + SO4
 * H  hardness as CaCO3, mg/L, of mmol/L     T  dissolved solids, mg/L     A  alkalinity as CaCO3, mg/L
 * </pre>
 *
 * Where an analysis tells hardness alone, all of it counts as calcium, since that is what hardness as CaCO3 says; calcium and magnesium
 * go before it. Dissolved solids: Standard Methods for the Examination of Water and Wastewater, 1030 E, from memory.
 */
final class RawWater {

    private static final double CARBONATE = ChemicalFormula.molarMass("CaCO3");
    private static final double SULPHATE = ChemicalFormula.molarMass("SO4");
    private static final double SHARE_OF_ALKALINITY = 0.6;
    private static final double APART = 0.1;
    private static final String TENTH = "a tenth: a choice of this project, no source";

    /** Alkalinity, counted as bicarbonate, mmol/L. */
    final Line alkalinity;
    /** Hardness as CaCO3, mg/L. */
    final Line hardness;
    /** Dissolved solids, mg/L. */
    final Line dissolved;

    private final Map<Ion, Line> content = new EnumMap<>(Ion.class);

    private final ScheduleBuilder s;
    private final FarmEntries entries;

    RawWater(BudgetBuilder b, FarmEntries entries, FeedTables tables) {
        this.entries = entries;
        s = b.schedule(Sheets.OPERATIONS, "Raw water");
        s.note(
                "From an analysis of the water; rain water carries next to nothing. Milligrams a litre over the molar mass are mmol/L: "
                        + "Ca 40.1, Mg 24.3, sulphate 96.1, Na 23.0, Cl 35.5; alkalinity in mg/L of CaCO3 over 50. Where hardness alone "
                        + "is told, all of it counts as calcium.");
        Line calcium = add(Ion.CALCIUM, "raw_water_calcium", "Calcium in the raw water");
        Line magnesium = add(Ion.MAGNESIUM, "raw_water_magnesium", "Magnesium in the raw water");
        Line told = entries.add(
                s.entry("water_hardness", "Raw water: hardness, where calcium and magnesium are not told", MG_PER_LITRE)
                        .from(0, 100_000));
        add(Ion.SULPHUR, "raw_water_sulphur", "Sulphate in the raw water, as sulphur");
        alkalinity = add(Ion.BICARBONATE, "raw_water_alkalinity", "Alkalinity of the raw water, as bicarbonate");
        add(Ion.SODIUM, "raw_water_sodium", "Sodium in the raw water");
        add(Ion.CHLORIDE, "raw_water_chloride", "Chloride in the raw water");
        Line measured = entries.add(s.entry(
                        "water_dissolved",
                        "Raw water: dissolved solids as measured; 0 follows from the ions",
                        MG_PER_LITRE)
                .from(0, 100_000));
        content.put(
                Ion.CALCIUM,
                s.line(
                        "raw_water_calcium_counted",
                        "Calcium of the raw water as counted",
                        MMOL_PER_LITRE,
                        when(
                                or(calcium.isPositive(), magnesium.isPositive()),
                                calcium,
                                told.over(number(CARBONATE, MOLAR_MASS)).in(MMOL_PER_LITRE)),
                        "as told; where hardness alone is told, hardness over the molar mass of CaCO3"));
        hardness = s.line(
                "raw_water_hardness",
                "Hardness of the raw water, as CaCO3",
                MG_PER_LITRE,
                mass(content.get(Ion.CALCIUM).plus(magnesium), CARBONATE),
                "calcium and magnesium times the molar mass of CaCO3: plain chemistry");
        dissolved = dissolved(tables, measured);
        contradictions(told, and(told.isPositive(), or(calcium.isPositive(), magnesium.isPositive())));
    }

    private Line dissolved(FeedTables tables, Line measured) {
        Formula ions = mass(content.get(Ion.SULPHUR), SULPHATE);
        for (Ion ion : new Ion[] {Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.CHLORIDE}) {
            ions = ions.plus(mass(content.get(ion), tables.of(ion).molarMass()));
        }
        Line weighed = s.line(
                "raw_water_ions_weigh",
                "Dissolved solids that its ions make",
                MG_PER_LITRE,
                ions.plus(mass(alkalinity, SHARE_OF_ALKALINITY * CARBONATE / 2)),
                "all ions, and 0.6 of alkalinity as CaCO3: Standard Methods for the Examination of Water and Wastewater, 1030 E, "
                        + "from memory");
        Line most = s.line(
                "raw_water_ions_most",
                "So much may they make of those measured",
                MG_PER_LITRE,
                measured.times(number(1 + APART, ONE)),
                TENTH);
        s.warning(
                "raw_water_dissolved_warning",
                "Dissolved solids of the raw water",
                and(measured.isPositive(), weighed.exceeds(most)),
                "the ions of the analysis weigh over a tenth more than its dissolved solids (water_dissolved). Check the analysis and the "
                        + "units it was given in.");
        return s.line(
                "raw_water_dissolved",
                "Dissolved solids of the raw water",
                MG_PER_LITRE,
                when(measured.isPositive(), measured, weighed));
    }

    private void contradictions(Line told, Formula twice) {
        Line apart = s.line(
                "raw_water_hardness_apart",
                "Hardness told, and of calcium and magnesium: apart",
                MG_PER_LITRE,
                greater(told, hardness).minus(lesser(told, hardness)));
        Line allowed = s.line(
                "raw_water_hardness_allowed",
                "So much may they be apart",
                MG_PER_LITRE,
                greater(told, hardness).times(number(APART, ONE)),
                TENTH);
        s.warning(
                "raw_water_hardness_warning",
                "Hardness of the raw water",
                and(twice, apart.exceeds(allowed)),
                "hardness as told (water_hardness) is over a tenth off that of calcium and magnesium, which count. Check the units.");
    }

    private static Formula mass(Formula concentration, double molarMass) {
        return concentration.times(number(molarMass, MOLAR_MASS)).in(MG_PER_LITRE);
    }

    /** What the raw water brings of an ion, mmol/L; empty where the analysis does not ask for it. */
    Optional<Formula> brings(Ion ion) {
        return Optional.ofNullable(content.get(ion));
    }

    private Line add(Ion ion, String id, String label) {
        Line line = entries.add(s.entry(id, label, MMOL_PER_LITRE).from(0, 100));
        content.put(ion, line);
        return line;
    }
}
