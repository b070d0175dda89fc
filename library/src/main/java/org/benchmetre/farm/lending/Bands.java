package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/** Ratios one below the other, each with the bands it is read against, and its figures in the first years. */
final class Bands {

    private static final int[] YEARS = {1, 2, 3, 5};

    Bands(BudgetBuilder b, FarmEntries entries, Axis years, List<Line> ratios) {
        ScheduleBuilder e = b.schedule(Sheets.LENDING, "Bands of ratios");
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Ratios beside their bands");
        Axis axis = Axis.rows(
                "ratio", "Ratio", ratios.stream().map(ratio -> ratio.id()).toList(), 0);
        List<Formula> strong = new ArrayList<>();
        List<Formula> weak = new ArrayList<>();
        for (Line ratio : ratios) {
            String id = ratio.id();
            String label = ratio.label();
            strong.add(entries.add(
                    e.entry(id + "_strong", label + ", strong from", ONE).from(-10, 100)));
            weak.add(entries.add(
                    e.entry(id + "_weak", label + ", weak from", ONE).from(-10, 100)));
        }
        b.nameRows(
                axis,
                s.textLine(
                        "ratio_label",
                        "Ratio",
                        new Rows(
                                axis,
                                ratios.stream()
                                        .<Formula>map(ratio -> text(ratio.label()))
                                        .toList())));
        for (int year : YEARS) {
            s.line(
                    "ratio_year_" + year,
                    "Year " + year,
                    ONE,
                    new Rows(
                            axis,
                            ratios.stream()
                                    .<Formula>map(ratio -> new Element(ratio, years, year))
                                    .toList()));
        }
        s.line("ratio_strong", "Strong from", ONE, new Rows(axis, strong));
        s.line("ratio_weak", "Weak from", ONE, new Rows(axis, weak));
    }
}
