package org.benchmetre.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Decimals;

/** Chooses the number format of a line by its kind, its unit and how small its figures are. */
final class NumberFormats {

    private static final Set<String> COUNTED =
            Set.of("plant", "pack", "bench", "outlet", "zone", "container", "item", "line", "crop");
    /** Decimals of what is typed that are shown; the cell holds all. */
    private static final int MOST_TYPED = 4;

    private static final double HUNDRED = 100;
    private static final double TEN = 10;
    /** Below this three decimals show less than two figures of a bound. */
    private static final double LEAST_BOUND = 0.01;

    private static final double WIDEST = 1e9;
    /** Below this a figure is what rounding left of a difference. */
    static final double NOISE = 1e-11;

    private static final String TRUTH = "\"yes\";\"yes\";\"no\"";

    private final Figures figures;
    private final Budget budget;
    private final MoneyFormats money;
    private final Map<Line, String> chosen = new HashMap<>();
    private final Map<Line, String> typed = new HashMap<>();

    NumberFormats(Figures figures) {
        this.figures = figures;
        this.budget = figures.budget();
        this.money = new MoneyFormats(MinorUnit.decimals(budget.currency()));
    }

    String of(Line line) {
        return chosen.computeIfAbsent(line, this::choose);
    }

    private String choose(Line line) {
        if (line.kind() == Kind.TRUTH) {
            return TRUTH;
        }
        if (line.kind() == Kind.TEXT) {
            return Look.GENERAL;
        }
        return budget.entry(line).map(Entry::bounds).filter(Bounds::whole).isPresent()
                ? whole(line.unit())
                : measured(line);
    }

    /** One format for an entry as it is typed: no digit of it is lost. */
    String typed(Line line) {
        return typed.computeIfAbsent(line, this::chooseTyped);
    }

    private String chooseTyped(Line line) {
        Decimals decimals = decimals(line);
        String fewest = decimals.count() == 0 ? "" : "." + "0".repeat(decimals.count());
        return (decimals.thousands() ? "#,##0" : "0") + fewest;
    }

    /** The decimals of an entry as it stands in its cell. */
    Decimals decimals(Line line) {
        List<Given> givens = budget.given(line).stream().filter(Given::filled).toList();
        Unit unit = givens.isEmpty() || !line.axes().isEmpty()
                ? line.unit()
                : givens.get(0).typedIn();
        Decimals exact = Decimals.exact(
                unit, givens.stream().mapToDouble(given -> inCell(line, given)).toArray());
        int least = unit.hasMoney() ? MinorUnit.decimals(budget.currency()) : 0;
        return new Decimals(Math.max(least, Math.min(MOST_TYPED, exact.count())), exact.thousands());
    }

    /** A single value stands as it was typed, a row of a table in the unit of its column. */
    static double inCell(Line line, Given given) {
        return line.axes().isEmpty() ? given.typed() : given.number();
    }

    /** A format of a number of decimals. */
    static String of(Decimals decimals) {
        String digits = (decimals.thousands() ? "#,##0" : "0")
                + (decimals.count() == 0 ? "" : "." + "0".repeat(decimals.count()));
        return digits + ";-" + digits + ";\"" + Decimals.DASH + "\";@";
    }

    /** The same without its zeros, for rows that nobody has filled yet. */
    String withoutZero(Line line) {
        String format = of(line);
        if (format.equals(TRUTH)) {
            return "\"yes\";\"yes\";;@";
        }
        return line.kind() == Kind.TEXT ? format : format + ";-" + format + ";;@";
    }

    /** For a number that stands alone, such as a usual bound. */
    static String ofNumber(double number) {
        double size = Math.abs(number);
        if (number == Math.rint(number) && size < WIDEST) {
            return size >= 10_000 ? "#,##0" : "0";
        }
        return size < WIDEST && size >= 0.001 ? "#,##0.00##" : "0.00E+00";
    }

    /** For a usual bound: three figures that count, two of a small one, no zeros behind the point. */
    static String ofBound(double bound) {
        double size = Math.abs(bound);
        if (bound == Math.rint(bound) || size >= HUNDRED) {
            return size >= 10_000 ? "#,##0" : "0";
        }
        if (size < LEAST_BOUND) {
            return size < LEAST_BOUND / TEN ? "0.0E+00" : "0.0###";
        }
        return size >= TEN ? "0.0" : size >= 1 ? "0.0#" : "0.0##";
    }

    private String money(Line line, double least, double most) {
        if (line.unit().equals(Unit.MONEY) || line.unit().equals(Unit.MONEY_NOMINAL)) {
            return money.amount();
        }
        return budget.entry(line).isPresent() ? money.typed() : money.price(least, most);
    }

    private static String whole(Unit unit) {
        return unit.equals(Unit.ONE) || unit.toString().equals("a") ? "0" : "#,##0";
    }

    private String measured(Line line) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        boolean allWhole = true;
        for (int cell = 0; cell < line.size(); cell++) {
            double value = figures.hasReason(line, cell) ? 0 : Math.abs(figures.number(line, cell));
            least = value > 0 ? Math.min(least, value) : least;
            most = Math.max(most, value);
            allWhole &= value == Math.rint(value);
        }
        if (most >= WIDEST || most > NOISE && most < 0.00005) {
            return "0.00E+00";
        }
        if (allWhole && COUNTED.contains(line.unit().toString())) {
            return "#,##0";
        }
        if (allWhole && line.unit().equals(Unit.ONE)) {
            return Look.GENERAL;
        }
        if (line.unit().hasMoney()) {
            return money(line, least, most);
        }
        return most <= 10 || least < 0.1 ? "#,##0.00##" : "#,##0.00";
    }
}
