package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;

/**
 * What a grower compares that stands nowhere else: money of the line for each metre and foot of bench, and the figures of a bench in
 * the units of the United States: feet, pounds a square inch, gallons a minute. Conversions are exact.
 */
public final class SideBySide {

    private static final Unit FIRST = Unit.parse("money/m");
    private static final Unit FIRST_A_FOOT = Unit.parse("money/ft");
    private static final Unit YEARLY = Unit.parse("money/(m a)");
    private static final Unit YEARLY_A_FOOT = Unit.parse("money/(ft a)");
    private static final Unit FOOT = Unit.parse("ft");
    private static final Unit POUNDS = Unit.parse("psi");
    private static final Unit GALLONS = Unit.parse("gal/min");

    /**
     * What a way costs.
     *
     * @param lineFirst first cost of the line itself, in total, by way
     * @param lost value of fruit lost to dry plants a year, in total, by way
     * @param differing yearly cost per metre of what differs, by way
     * @param benchMetres metres of bench
     */
    public record Money(Line lineFirst, Line lost, Line differing, Line benchMetres) {}

    /**
     * Declares the table.
     *
     * @param s where it stands
     * @param h hydraulics of the benches
     * @param money what each way costs
     */
    public SideBySide(ScheduleBuilder s, Hydraulics h, Money money) {
        Line metres = money.benchMetres();
        Line line = s.line(
                "side_line_first_cost",
                "Of which the line",
                FIRST,
                money.lineFirst().over(metres));
        s.line("side_line_first_cost_per_foot", "First cost of the line per foot", FIRST_A_FOOT, line.in(FIRST_A_FOOT));
        s.line(
                "side_differing_cost_per_foot",
                "Yearly cost per foot of what differs",
                YEARLY_A_FOOT,
                money.differing().in(YEARLY_A_FOOT));
        s.line(
                "side_lost_fruit",
                "Fruit lost to dry plants",
                YEARLY,
                money.lost().over(metres));
        s.line(
                "side_longest_run_in_feet",
                "Longest line that meets the target, in feet",
                FOOT,
                onlyWhen(
                        h.longestRun.hasNumber(),
                        h.longestRun.numberOr(none(Unit.METRE)).in(FOOT),
                        when(h.ways.key.isFilled(), text("as in metres"), text(""))));
        s.line("side_inlet_pressure_in_psi", "Pressure at the inlet", POUNDS, h.inletPressure.in(POUNDS));
        s.line("side_flow_in_gallons", "Flow of a bench", GALLONS, h.flowPerBench.in(GALLONS));
    }
}
