package org.benchmetre.farm.comparison;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/** The irrigation systems in one table a grower reads first: what each costs, how evenly it waters, what runs dry. Repeats figures that stand below. */
public final class SideBySide {

    private static final Unit FIRST = Unit.parse("money/m");
    private static final Unit YEARLY = Unit.parse("money/(m a)");

    /**
     * What is shown, by way.
     *
     * @param money what it costs
     * @param uniformity design emission uniformity
     * @param uniformityClass its class in words
     * @param inletPressure pressure at the inlet of a line
     * @param dryPlants plants that run dry in a year
     */
    public record Shown(Money money, Line uniformity, Line uniformityClass, Line inletPressure, Line dryPlants) {}

    /**
     * What a way costs.
     *
     * @param firstPerMetre first cost per metre of bench, all parts
     * @param lineFirst first cost of the line itself, in total
     * @param yearlyPerMetre yearly cost per metre of bench, lost fruit counted
     * @param lost value of fruit lost to dry plants a year, in total
     */
    public record Money(Line firstPerMetre, Line lineFirst, Line yearlyPerMetre, Line lost) {}

    /**
     * Declares the table.
     *
     * @param s where it stands
     * @param rank how the ways rank
     * @param shown what is shown
     * @param benchMetres metres of bench
     */
    public SideBySide(ScheduleBuilder s, Ranking rank, Shown shown, Line benchMetres) {
        s.textLine("side_place", "Place", rank.place);
        s.line("side_first_cost", "First cost per metre", FIRST, shown.money().firstPerMetre());
        s.line(
                "side_line_first_cost",
                "Of which the line",
                FIRST,
                shown.money().lineFirst().over(benchMetres));
        s.line(
                "side_yearly_cost",
                "Yearly cost per metre, lost fruit counted",
                YEARLY,
                shown.money().yearlyPerMetre());
        s.line(
                "side_lost_fruit",
                "Fruit lost to dry plants",
                YEARLY,
                shown.money().lost().over(benchMetres));
        s.line("side_uniformity", "Emission uniformity", shown.uniformity().unit(), shown.uniformity());
        s.textLine("side_uniformity_class", "Class", shown.uniformityClass());
        s.line(
                "side_inlet_pressure",
                "Pressure at the inlet",
                shown.inletPressure().unit(),
                shown.inletPressure());
        s.line(
                "side_dry_plants",
                "Plants falling dry in a year",
                shown.dryPlants().unit(),
                shown.dryPlants());
    }
}
