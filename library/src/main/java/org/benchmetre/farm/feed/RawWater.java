package org.benchmetre.farm.feed;

import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/** What the raw water carries before anything is added, from a laboratory's analysis. The default is rain water: nothing. */
final class RawWater {

    /** Alkalinity, counted as bicarbonate, mmol/L. */
    final Line alkalinity;

    private final Map<Ion, Line> content = new EnumMap<>(Ion.class);

    private final ScheduleBuilder s;
    private final FarmEntries entries;

    RawWater(BudgetBuilder b, FarmEntries entries) {
        this.entries = entries;
        s = b.schedule(Sheets.OPERATIONS, "Raw water");
        s.note(
                "From an analysis of the water; rain water carries next to nothing. Milligrams a litre over the molar mass are mmol/L: "
                        + "Ca 40.1, Mg 24.3, sulphate 96.1, Na 23.0, Cl 35.5; alkalinity in mg/L of CaCO3 over 50.");
        add(Ion.CALCIUM, "raw_water_calcium", "Calcium in the raw water");
        add(Ion.MAGNESIUM, "raw_water_magnesium", "Magnesium in the raw water");
        add(Ion.SULPHUR, "raw_water_sulphur", "Sulphate in the raw water, as sulphur");
        alkalinity = add(Ion.BICARBONATE, "raw_water_alkalinity", "Alkalinity of the raw water, as bicarbonate");
        add(Ion.SODIUM, "raw_water_sodium", "Sodium in the raw water");
        add(Ion.CHLORIDE, "raw_water_chloride", "Chloride in the raw water");
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
