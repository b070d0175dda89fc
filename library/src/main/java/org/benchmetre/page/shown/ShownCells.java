package org.benchmetre.page.shown;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.Page;

/**
 * What the cells of a page show: numbers with the decimals of their column, texts, and reasons in place of numbers.
 *
 * @param figures the budget, computed
 * @param kind of the page
 */
public record ShownCells(Figures figures, Page.Kind kind) {

    /** Words alone, each longer than a symbol: what is counted, or so much of one for another. */
    private static final Pattern COUNTS = Pattern.compile("[a-zA-Z]{4,}(/[a-zA-Z]{4,})*");

    private static final Unit ITEM = Unit.parse("item");

    /**
     * A cell with the decimals of its column.
     *
     * @param cell a null stands for no cell
     * @param decimals of its column
     * @return the words
     */
    public String shown(CellRef cell, Decimals decimals) {
        if (cell == null) {
            return "";
        }
        if (cell.line().kind() == Kind.TRUTH) {
            return number(cell) == 1 ? "yes" : "no";
        }
        return isNumber(cell) ? decimals.shown(number(cell)) : figures.text(cell.line(), cell.cell());
    }

    /**
     * Whether a cell shows digits.
     *
     * @param cell a cell
     * @return false for texts, truths and reasons
     */
    public boolean isNumber(CellRef cell) {
        return switch (cell.line().kind()) {
            case NUMBER -> true;
            case OPTIONAL -> !figures.hasReason(cell.line(), cell.cell());
            case TRUTH, TEXT -> false;
        };
    }

    /**
     * The number of a cell.
     *
     * @param cell of a number
     * @return in its line's unit
     */
    public double number(CellRef cell) {
        return figures.number(cell.line(), cell.cell());
    }

    /**
     * A unit as people read it.
     *
     * @param unit a unit
     * @return the empty text for plain numbers
     */
    public String unit(Unit unit) {
        return written(unit, figures.budget().currency());
    }

    /**
     * A unit as a page writes it. Money goes by its currency alone, be it of today or of its year, since pages never add the two.
     *
     * @param unit a unit
     * @param currency of the plan
     * @return empty for a plain number
     */
    public static String written(Unit unit, String currency) {
        Unit plain = unit.equals(Unit.MONEY_NOMINAL) ? Unit.MONEY : unit;
        return plain.equals(Unit.ONE) ? "" : plain.display(currency);
    }

    /**
     * Words with the unit behind them, where there is one that they do not say already, as {@code Packs} does of {@code pack} and a
     * heading <i>Pack size</i> of {@code item/pack}. An item is whatever its row counts and is not told.
     *
     * @param words words
     * @param unit a unit
     * @return words with the unit
     */
    public String withUnit(String words, Unit unit) {
        String shown = unit(unit);
        boolean said = COUNTS.matcher(shown).matches()
                && (shown.contains("/") || words.toLowerCase(Locale.ROOT).contains(shown.toLowerCase(Locale.ROOT)));
        if (said || shown.isEmpty() || unit.equals(ITEM) || words.endsWith(", " + shown)) {
            return words;
        }
        return words.isEmpty() ? shown : words + ", " + shown;
    }

    /**
     * One number of decimals for all cells of a column. Where it has numbers of several units, it is that which most of its numbers
     * would have; of two as frequent that of money, else the larger.
     *
     * @param column its cells, nulls among them
     * @return the same for all
     */
    public Decimals decimals(Collection<CellRef> column) {
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
                .orElse(new Decimals(0, true));
    }

    private Decimals decimals(Unit unit, List<Double> numbers) {
        double[] values = numbers.stream().mapToDouble(Double::doubleValue).toArray();
        int currency = MinorUnit.decimals(figures.budget().currency());
        return kind == Page.Kind.PAYMENT
                ? Decimals.ofPayments(unit, values, currency)
                : Decimals.of(unit, values, currency);
    }
}
