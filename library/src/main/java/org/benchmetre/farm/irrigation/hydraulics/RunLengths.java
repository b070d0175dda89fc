package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/** How evenly each way would water lines of other lengths, by the same formulas as the bench, and the longest that is even enough. */
final class RunLengths {

    private static final List<Integer> METRES = List.of(10, 20, 40, 60, 100);

    RunLengths(BudgetBuilder b, Outlets outlets, Conditions water, InReach where, Slope slope, Line asMade) {
        Axis axis = Axis.periods(
                "run_length",
                "Length of line",
                METRES.stream().map(m -> m + "_m").toList(),
                METRES.stream().map(m -> m + " m").toList());
        ScheduleBuilder list = b.schedule(Sheets.IRRIGATION, "Lengths of line compared");
        List<Formula> names = METRES.stream().map(m -> text(m + " m")).toList();
        b.nameRows(axis, list.textLine("run_label", "Length of line", new Rows(axis, names)));
        List<Formula> metres = METRES.stream().map(m -> number(m, METRE)).toList();
        Line run = list.line("run_metres", "Length of line", METRE, new Rows(axis, metres), "a choice of this table");

        ScheduleBuilder best = b.shared(Sheets.IRRIGATION, Tables.LONGEST);
        ScheduleBuilder result = b.schedule(Sheets.IRRIGATION, "Uniformity by length of line");
        ScheduleBuilder workings = b.schedule(Sheets.IRRIGATION, "Workings of the table by length of line");
        workings.note(Lateral.SYMBOLS + " " + LateralPressure.SYMBOLS);
        Lateral lateral = new Lateral(workings, "run", run, outlets, water, where);
        LateralPressure pressure = new LateralPressure(workings, "run", lateral, slope, outlets);
        Line uniformity = result.line(
                "run_emission_uniformity",
                "Emission uniformity, new",
                Evenness.PERCENT,
                Evenness.emissionUniformity(asMade, lateral, pressure, outlets),
                Evenness.SOURCE);
        Line inRange = workings.line(
                "run_uniformity_in_range",
                "Emission uniformity where the pressure range is kept, else 0",
                Evenness.PERCENT,
                pressure.whereInRange(uniformity));
        Formula misses = or(not(lateral.outlets.isPositive()), water.target.exceeds(inRange));
        Line enough = workings.line(
                "run_even_enough", "Length where it is even enough, else 0", METRE, when(misses, none(METRE), run));
        best.line(
                "way_longest_listed_run",
                "Longest line listed that meets the target, 0 for none",
                METRE,
                greatest(enough, axis));
    }
}
