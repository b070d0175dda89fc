package org.benchmetre.budget.entry;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.benchmetre.budget.unit.Unit;

/**
 * The cell a value is meant for, as a refusal names it.
 *
 * @param label what a reader sees
 * @param address gives its address, such as {@code material_price[tape]}; asked for only where a value is refused
 * @param unit unit of its line
 * @param currency ISO 4217 code of all money
 * @param units what the column may hold that tells its unit; empty where it has none
 */
public record Subject(String label, Supplier<String> address, Unit unit, String currency, List<String> units) {

    /** Which money a rate is on. */
    private static final List<Unit> KINDS = List.of(Unit.parse("real"), Unit.parse("nominal"));

    private static final List<Unit> RATES = List.of(Unit.parse("real/a"), Unit.parse("nominal/a"));

    /** Keeps its own copy. */
    public Subject {
        units = List.copyOf(units);
    }

    /**
     * A cell whose address is known, without a column for its unit.
     *
     * @param label what a reader sees
     * @param address its address
     * @param unit unit of its line
     * @param currency ISO 4217 code of all money
     */
    public Subject(String label, String address, Unit unit, String currency) {
        this(label, () -> address, unit, currency, List.of());
    }

    String name() {
        return " for " + label + " (" + address.get() + ")";
    }

    /**
     * A unit as typed. Pieces are what the line counts; money, and a rate that does not say which money it is on, are of the line's kind.
     * A share is a rate for the time that the line's own is for: 8 % is 8 % a year.
     */
    Unit unit(String typed) {
        Unit parsed = Unit.parse(typed, names());
        for (Unit kind : KINDS) {
            int wanted = unit.exponentOf(kind.toString());
            boolean unsaid = wanted != 0 && KINDS.stream().allMatch(each -> parsed.exponentOf(each.toString()) == 0);
            if (unsaid) {
                return parsed.isPure() && isRate() ? parsed.times(unit) : parsed.times(kind.power(wanted));
            }
        }
        return parsed;
    }

    /** Whether the line holds a rate of interest, a year. */
    boolean isRate() {
        return RATES.contains(unit);
    }

    private Map<String, Unit> names() {
        Map<String, Unit> names = new HashMap<>();
        Unit money = unit.isNominal() ? Unit.MONEY_NOMINAL : Unit.MONEY;
        names.put(currency, money);
        names.put(currency.toLowerCase(Locale.ROOT), money);
        names.put(Unit.MONEY_NOMINAL.inFiles(currency), Unit.MONEY_NOMINAL);
        unit.counted().ifPresent(piece -> UnitWord.PIECES.forEach(word -> names.put(word, piece)));
        return names;
    }

    String shown(Unit in) {
        return in.equals(Unit.ONE) ? "" : in.display(currency);
    }
}
