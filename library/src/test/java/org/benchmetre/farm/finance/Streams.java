package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.none;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/** Yearly cash that is entered, as a little budget of its own, with all that it may be worth. */
final class Streams {

    private static final Unit YEAR = Unit.parse("a");

    private final Unit money;
    private final Unit rateUnit;
    private final BudgetBuilder b = new BudgetBuilder("Stream", "USD");
    private final ScheduleBuilder entries = b.schedule("Sheet", "Entries");
    private final Line net;

    /** The budget. */
    final Budget budget;

    private Streams(Unit money, String prefix, double rate, double finance, double[] flows) {
        this.money = money;
        rateUnit = Unit.parse(money.isNominal() ? "nominal/a" : "real/a");
        Axis years = Axis.periods(
                "year",
                "Year",
                IntStream.range(0, flows.length).mapToObj(Integer::toString).toList());
        ScheduleBuilder flow = b.schedule("Sheet", "Flow");
        net = along(flow, "the_flows", money, years, flows);
        Line year = along(
                flow,
                "year_number",
                YEAR,
                years,
                IntStream.range(0, flows.length).asDoubleStream().toArray());
        Line costs = flow.line("the_costs", "Costs", money, none(money).minus(net));
        CashStream stream = new CashStream(
                prefix,
                prefix.isEmpty() ? "" : "after finance",
                net,
                single("the_rate", rateUnit, rate),
                single("plan_years", YEAR, flows.length - 1),
                year);
        Returns returns = new Returns(b, b.schedule("Sheet", "Answers"), flow, new RateAxes(b), stream);
        returns.modified(single("finance_rate", rateUnit, finance), single("reinvestment_rate", rateUnit, 0.12));
        returns.equivalentCost(costs, single("bench_metres", Unit.METRE, 50));
        budget = b.build();
    }

    private Line single(String id, Unit unit, double value) {
        return entries.entry(id, id, unit).given(Given.number(value, unit));
    }

    private static Line along(ScheduleBuilder s, String id, Unit unit, Axis years, double[] values) {
        return s.entry(id, id, unit, years)
                .given(Arrays.stream(values)
                        .mapToObj(value -> Given.number(value, unit))
                        .toList());
    }

    /** Money of today, discounted at a rate that is the finance rate too; 12 % is the reinvestment rate, 50 m the bench. */
    static Streams of(double rate, double... flows) {
        return new Streams(Unit.MONEY, "", rate, rate, flows);
    }

    /** Money of its year, with identifiers of its own. */
    static Streams nominal(double rate, double... flows) {
        return new Streams(Unit.MONEY_NOMINAL, "equity_", rate, rate, flows);
    }

    Figures figures() {
        return Figures.of(budget);
    }

    /** The cash of one year, typed over. */
    Map<Line, Map<Integer, Given>> typed(int year, double cash) {
        return Map.of(net, Map.of(year, Given.number(cash, money)));
    }

    /** Flows as they are entered, apart by commas. */
    static double[] flows(String words) {
        return List.of(words.split(",")).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
