package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.farm.input.TradeUnits.METRE;

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

    /** The factor of a line whose first outlet stands at half spacing: its loss over that of its length at full flow. */
    public static double outletFactor(double exponent, int outlets, boolean half) {
        BudgetBuilder b = new BudgetBuilder("Factor", "USD");
        ScheduleBuilder s = b.schedule("Sheet", "Factor");
        Line n = s.entry("outlets_n", "Outlets", Unit.ONE).given(Given.number(outlets, Unit.ONE));
        double shortfall = half ? 0.5 : 0;
        EqualOutlets spaced = new EqualOutlets(n, number(1, METRE), none(METRE), number(shortfall, Unit.ONE));
        s.line(
                "loss_total",
                "Loss where a metre loses one",
                METRE,
                spaced.equivalentLength(OutletFactor.of(exponent, n)));
        return Figures.of(b.build()).number("loss_total") / (outlets - shortfall);
    }

    /** Emission uniformity in %. */
    public static double emissionUniformity(double variation, double inReach, double lowestOverAverage) {
        return value(
                Evenness.PERCENT,
                Evenness.emissionUniformity(
                        Evenness.asMade(plain(variation), plain(inReach)), plain(lowestOverAverage)));
    }

    /** The class of a maker's coefficient of variation. */
    static String variationClass(double variation, boolean line) {
        BudgetBuilder b = new BudgetBuilder("Class", "USD");
        Formula found = line ? Evenness.lineClass(plain(variation)) : Evenness.pointClass(plain(variation));
        b.schedule("Sheet", "Class").textLine("class_found", "Class", found);
        return Figures.of(b.build()).text("class_found");
    }

    private static double value(Unit unit, Formula formula) {
        BudgetBuilder b = new BudgetBuilder("Value", "USD");
        b.schedule("Sheet", "Value").line("value_found", "Value", unit, formula);
        return Figures.of(b.build()).number("value_found");
    }

    private static Formula plain(double value) {
        return number(value, Unit.ONE);
    }
}
