package org.benchmetre.checks;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.presentValue;
import static org.benchmetre.budget.Formulas.rateOfReturn;

import java.util.ArrayList;
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

/** Yearly flows of a published check as a little budget of their own; without a flow at time 0 the first comes a year later. */
record Flows(List<Double> flows, Double rate) {

    private static final Unit REAL = Unit.parse("real/a");

    static Flows of(String inputs) {
        Double rate = null;
        double atStart = 0;
        boolean present = inputs.contains("rate=");
        List<Double> later = new ArrayList<>();
        for (String input : inputs.split("; ")) {
            String[] sides = input.split("=");
            switch (sides[0]) {
                case "rate" -> rate = Double.valueOf(sides[1]);
                case "flow0" -> atStart = Double.parseDouble(sides[1]);
                default -> List.of(sides[1].split(",")).forEach(flow -> later.add(Double.valueOf(flow)));
            }
        }
        if (present) {
            later.add(0, atStart);
        }
        return new Flows(later, rate);
    }

    Figures figures() {
        BudgetBuilder b = new BudgetBuilder("Check", "USD");
        ScheduleBuilder years = b.schedule("Sheet", "Flows");
        Axis axis = Axis.periods(
                "year",
                "Year",
                IntStream.range(0, flows.size()).mapToObj(Integer::toString).toList());
        Line line = years.entry("the_flows", "Flows", Unit.MONEY, axis)
                .given(flows.stream()
                        .map(flow -> Given.number(flow, Unit.MONEY))
                        .toList());
        Formula answer = rate == null
                ? rateOfReturn(line, axis, number(0.1, REAL))
                : presentValue(number(rate, REAL), line, axis);
        b.schedule("Sheet", "Answer").line("the_answer", "Answer", answer.unit(), answer);
        return Figures.of(b.build());
    }
}
