package org.benchmetre;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Numbers;
import org.benchmetre.budget.Plausible;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Remark;

/** Looks for values that are allowed but probably not meant. */
record Doubts(Budget budget) {

    List<Remark> all() {
        List<Remark> found = new ArrayList<>();
        for (Line line : budget.lines()) {
            if (line.kind() == Kind.NUMBER) {
                budget.entry(line).ifPresent(entry -> addTo(found, line, entry));
            }
        }
        return List.copyOf(found);
    }

    private void addTo(List<Remark> found, Line line, Entry entry) {
        List<Given> values = budget.given(line);
        for (int cell = 0; cell < values.size(); cell++) {
            Given given = values.get(cell);
            if (given.filled() && entry.plausible().isUnusual(given.number())) {
                found.add(remark(given, line.address(cell), unusual(line, given, entry)));
            }
            if (given.filled() && line.id().endsWith("_price_year")) {
                addOtherYear(found, given, line.address(cell));
            }
        }
    }

    private String unusual(Line line, Given given, Entry entry) {
        Plausible usual = entry.plausible();
        String unit = line.unit().display(budget.currency());
        String behind = unit.equals("1") ? "" : " " + unit;
        String low = Double.isNaN(usual.low()) ? "" : " from " + Numbers.shown(usual.low());
        String high = Double.isNaN(usual.high()) ? "" : " to " + Numbers.shown(usual.high());
        return line.label() + " is " + Numbers.shown(given.number()) + behind + ", usually" + low + high + behind + " ("
                + entry.source() + ")";
    }

    private void addOtherYear(List<Remark> found, Given given, String address) {
        double plan = budget.find(Lines.PLAN_YEAR)
                .map(line -> budget.given(line).get(0).number())
                .orElse(given.number());
        if (given.number() != plan) {
            String text = "the price is of " + Numbers.shown(given.number()) + " and the plan of " + Numbers.shown(plan)
                    + "; no price is indexed";
            found.add(remark(given, address, text));
        }
    }

    private static Remark remark(Given given, String address, String text) {
        String place = given.place().isEmpty() ? "default" : given.place();
        return new Remark(Place.wholeFile(place + ", " + address), text);
    }
}
