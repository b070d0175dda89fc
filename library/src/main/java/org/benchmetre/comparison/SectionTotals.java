package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;

/** The rows added up by the sections of the enterprise budget. */
final class SectionTotals {

    /** One place for each section. */
    final Axis axis;
    /** By section and scenario. */
    final Line value;
    /** What a scenario has more than the first. */
    final Line difference;

    SectionTotals(BudgetBuilder b, ScheduleBuilder page, ScenarioColumns scenarios, MarginRows rows, Measure per) {
        axis = Axis.rows("section", "Section", BudgetSection.keys(), 0);
        ScheduleBuilder s = b.schedule(ComparisonSheets.SCENARIOS, "Sections of a budget");
        b.nameRows(axis, s.textLine("section_label", "Section", each(BudgetSection::label)));
        Line key = s.textLine("section_key", "Key", each(BudgetSection::key));
        value = page.declare("section_value", "In short", per.money(), Kind.NUMBER, List.of(axis, scenarios.axis), "");
        b.define(value, sumWhere(rows.value, rows.section, key, rows.axis));
        difference =
                page.line("section_difference", "More than in the first", per.money(), scenarios.difference(value));
    }

    private Formula each(Function<BudgetSection, String> words) {
        return new Rows(
                axis,
                Arrays.stream(BudgetSection.values())
                        .<Formula>map(section -> text(words.apply(section)))
                        .toList());
    }
}
