package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.number;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/** The formulas of the irrigation section in budgets of a line or two, for what the farm budget does not ask of them. */
public final class HelperFormulas {

    private HelperFormulas() {}

    /** The multiple-outlet factor for 1, 2, 3 ... outlets. */
    static double[] outletFactors(double exponent, int most) {
        BudgetBuilder b = new BudgetBuilder("Factors", "USD");
        ScheduleBuilder s = b.schedule("Sheet", "Factors");
        Axis axis = Axis.rows(
                "n", "N", IntStream.rangeClosed(1, most).mapToObj(n -> "n" + n).toList(), 0);
        List<Given> counts = IntStream.rangeClosed(1, most)
                .mapToObj(n -> Given.number(n, Unit.ONE))
                .toList();
        Line n = s.entry("outlets_n", "Outlets", Unit.ONE, axis).given(counts);
        Line factor = s.line("outlet_factor", "Factor", Unit.ONE, OutletFactor.of(exponent, n));
        Figures figures = Figures.of(b.build());
        return IntStream.range(0, most)
                .mapToDouble(i -> figures.number(factor, i))
                .toArray();
    }

    /** The multiple-outlet factor for an exponent that no line of the farm has. */
    public static double outletFactor(double exponent, int outlets) {
        return outletFactors(exponent, outlets)[outlets - 1];
    }

    /** The class of a maker's coefficient of variation. */
    static String variationClass(double variation, boolean line) {
        BudgetBuilder b = new BudgetBuilder("Class", "USD");
        Formula found = line ? Evenness.lineClass(plain(variation)) : Evenness.pointClass(plain(variation));
        b.schedule("Sheet", "Class").textLine("class_found", "Class", found);
        return Figures.of(b.build()).text("class_found");
    }

    private static Formula plain(double value) {
        return number(value, Unit.ONE);
    }
}
