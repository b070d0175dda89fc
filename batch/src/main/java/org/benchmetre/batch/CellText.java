package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Decimals;

/**
 * What the cells of a page show: numbers with the decimals of their column, texts, and reasons in place of numbers.
 *
 * @param figures the budget, computed
 */
record CellText(Figures figures) {

    /** Letters of the longest unit that is a symbol and no word. */
    private static final int SYMBOL = 3;

    /** A cell with the decimals of its column; a null stands for no cell. */
    String shown(CellRef cell, Decimals decimals) {
        if (cell == null) {
            return "";
        }
        if (cell.line().kind() == Kind.TRUTH) {
            return number(cell) == 1 ? "yes" : "no";
        }
        return isNumber(cell) ? decimals.shown(number(cell)) : figures.text(cell.line(), cell.cell());
    }

    /** Whether a cell shows digits. */
    boolean isNumber(CellRef cell) {
        return switch (cell.line().kind()) {
            case NUMBER -> true;
            case OPTIONAL -> !figures.hasReason(cell.line(), cell.cell());
            case TRUTH, TEXT -> false;
        };
    }

    double number(CellRef cell) {
        return figures.number(cell.line(), cell.cell());
    }

    /** A unit as people read it; the empty text for plain numbers. */
    String unit(Unit unit) {
        return unit.equals(Unit.ONE) ? "" : unit.display(figures.budget().currency());
    }

    /** Words with the unit behind them, where there is one that they do not say already, as {@code Packs} does of {@code pack}. */
    String withUnit(String words, Unit unit) {
        String shown = unit(unit);
        boolean said = shown.chars().allMatch(Character::isLetter)
                && shown.length() > SYMBOL
                && words.toLowerCase(Locale.ROOT).contains(shown.toLowerCase(Locale.ROOT));
        return said || shown.isEmpty() || words.isEmpty() ? words + (said ? "" : shown) : words + ", " + shown;
    }

    /**
     * One number of decimals for all cells of a column. Where it has numbers of several units, it is that which most of its numbers
     * would have; of two as frequent that of money, else the larger.
     */
    Decimals decimals(Collection<CellRef> column) {
        Map<Unit, List<Double>> byUnit = new LinkedHashMap<>();
        for (CellRef cell : column) {
            if (cell != null && isNumber(cell)) {
                byUnit.computeIfAbsent(cell.line().unit(), any -> new ArrayList<>())
                        .add(number(cell));
            }
        }
        Map<Decimals, Integer> votes = new LinkedHashMap<>();
        byUnit.forEach((unit, numbers) -> votes.merge(decimals(unit, numbers), numbers.size(), Integer::sum));
        Comparator<Unit> byVotes = Comparator.comparing(unit -> votes.get(decimals(unit, byUnit.get(unit))));
        return byUnit.keySet().stream()
                .max(byVotes.thenComparing(Unit::hasMoney)
                        .thenComparing(unit -> decimals(unit, byUnit.get(unit)).count()))
                .map(unit -> decimals(unit, byUnit.get(unit)))
                .orElse(new Decimals(0, true, false));
    }

    private Decimals decimals(Unit unit, List<Double> numbers) {
        double[] values = numbers.stream().mapToDouble(Double::doubleValue).toArray();
        return Decimals.of(unit, values, MinorUnit.decimals(figures.budget().currency()));
    }
}
