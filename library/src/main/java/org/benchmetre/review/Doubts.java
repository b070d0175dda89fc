package org.benchmetre.review;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Remark;

/**
 * Looks for values that are allowed but probably not meant. A cell of a file that stands for several is told once.
 *
 * @param budget whose entries are looked at
 */
public record Doubts(Budget budget) {

    private static final String PLAN_YEAR = "plan_year";

    /**
     * Entries outside their usual range, and prices of another year than the plan.
     *
     * @return in the order of the lines
     */
    public List<Remark> all() {
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
        Set<Origin> told = new HashSet<>();
        for (int cell = 0; cell < values.size(); cell++) {
            Given given = values.get(cell);
            Usual usual = budget.range(line, cell);
            boolean first = given.origin().equals(Origin.DEFAULT) || !told.contains(given.origin());
            if (given.filled() && first && usual.range().isUnusual(given.number())) {
                told.add(given.origin());
                found.add(remark(given, line.address(cell), unusual(line, given, usual.range(), usual.source())));
            }
        }
        if (entry.meaning().isPrice()) {
            addOtherYears(found, budget.find(entry.meaning().year()));
        }
    }

    /** Value and range in the unit that was typed. */
    private String unusual(Line line, Given given, Plausible usual, String source) {
        String unit = given.typedIn().display(budget.currency());
        String behind = unit.equals("1") ? "" : " " + unit;
        String low = Double.isNaN(usual.low()) ? "" : " from " + end(usual.low(), line.unit(), given.typedIn());
        String high = Double.isNaN(usual.high()) ? "" : " to " + end(usual.high(), line.unit(), given.typedIn());
        return line.label() + " is " + Numbers.shown(given.typed()) + behind + ", usually" + low + high + behind + " ("
                + source + ")";
    }

    private static String end(double end, Unit from, Unit to) {
        boolean same = from.equals(to) && from.zero() == to.zero();
        return Numbers.shown(same ? end : Numbers.brief(from.convertLevel(end, to), RoundingMode.HALF_EVEN));
    }

    private void addOtherYears(List<Remark> found, Optional<Line> years) {
        if (years.isEmpty()) {
            return;
        }
        List<Given> values = budget.given(years.get());
        for (int cell = 0; cell < values.size(); cell++) {
            if (values.get(cell).filled()) {
                addOtherYear(found, values.get(cell), years.get().address(cell));
            }
        }
    }

    private void addOtherYear(List<Remark> found, Given given, String address) {
        double plan = budget.find(PLAN_YEAR)
                .map(line -> budget.given(line).get(0).number())
                .orElse(given.number());
        if (given.number() != plan) {
            String text = "the price is of " + Numbers.shown(given.number()) + " and the plan of " + Numbers.shown(plan)
                    + "; no price is indexed";
            found.add(remark(given, address, text));
        }
    }

    private static Remark remark(Given given, String address, String text) {
        String place = given.origin().equals(Origin.DEFAULT)
                ? "default"
                : given.origin().toString();
        return new Remark(Place.wholeFile(place + ", " + address), text);
    }
}
