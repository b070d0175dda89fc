package org.benchmetre.budget.unit;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what {@link UnitText} and {@link WrittenUnit} print, and {@link OtherNames}. */
final class UnitParser {

    private static final Pattern FACTOR = Pattern.compile("(1(?![0-9])|%|[A-Za-z_]+(?:2O)?)(-?[0-9]+)?");

    private static final String NOMINAL = "nominal";
    private static final Pattern REMARK = Pattern.compile("(.*\\S)\\s*\\((real|nominal)\\)");

    private final String written;
    private final String text;
    private final Map<String, Unit> names;
    private int at;

    private UnitParser(String written, Map<String, Unit> names) {
        this.written = written;
        this.text = OtherNames.plain(written);
        this.names = names;
    }

    static Unit parse(String text, Map<String, Unit> names) {
        String trimmed = text.trim();
        if (trimmed.isEmpty()) {
            throw new UnitException("A unit is missing; a plain number has the unit 1.");
        }
        Matcher remark = REMARK.matcher(trimmed);
        return remark.matches()
                ? remarked(new UnitParser(remark.group(1), names).whole(), remark.group(2))
                : new UnitParser(trimmed, names).whole();
    }

    /** A rate is real or nominal; money is nominal where it is not of today. */
    private static Unit remarked(Unit unit, String remark) {
        int money = unit.exponentOf(Unit.MONEY.toString());
        if (remark.equals(NOMINAL) && unit.isNominal()) {
            return unit;
        }
        return remark.equals(NOMINAL) && money != 0
                ? unit.over(Unit.MONEY.power(money)).times(Unit.MONEY_NOMINAL.power(money))
                : unit.times(parse(remark, Map.of()));
    }

    private Unit whole() {
        Unit unit = quotient();
        if (at < text.length()) {
            throw badForm();
        }
        return unit;
    }

    private Unit quotient() {
        Unit unit = product();
        while (take('/')) {
            if (take('(')) {
                unit = unit.over(product());
                if (!take(')')) {
                    throw badForm();
                }
            } else {
                unit = unit.over(factor());
            }
        }
        return unit;
    }

    private Unit product() {
        Unit unit = factor();
        while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '.')) {
            at++;
            unit = unit.times(factor());
        }
        return unit;
    }

    private Unit factor() {
        Matcher matcher = FACTOR.matcher(text).region(at, text.length());
        if (!matcher.lookingAt()) {
            throw badForm();
        }
        at = matcher.end();
        Unit unit = named(matcher.group(1));
        return matcher.group(2) == null ? unit : unit.power(exponent(matcher.group(2)));
    }

    private int exponent(String digits) {
        if (digits.length() > 3) {
            throw badForm();
        }
        return Integer.parseInt(digits);
    }

    private Unit named(String symbol) {
        if (symbol.equals("1")) {
            return Unit.ONE;
        }
        Unit given = names.getOrDefault(symbol, names.get(symbol.toLowerCase(Locale.ROOT)));
        if (given != null) {
            return given;
        }
        if (isNominalMoney(symbol)) {
            return Unit.MONEY_NOMINAL;
        }
        Optional<Atom> known = Atoms.find(symbol);
        if (known.isPresent()) {
            return Unit.of(known.get());
        }
        String meant = OtherNames.meant(symbol);
        if (meant.isEmpty()) {
            throw new UnitException(written, symbol);
        }
        return parse(meant, Map.of());
    }

    /** The currency in files, where money is of its year: {@code USD_nominal}. */
    private boolean isNominalMoney(String symbol) {
        String end = "_" + NOMINAL;
        return symbol.endsWith(end)
                && names.containsKey(symbol.substring(0, symbol.length() - end.length()))
                && names.get(symbol.substring(0, symbol.length() - end.length()))
                        .hasMoney();
    }

    private boolean take(char wanted) {
        if (at < text.length() && text.charAt(at) == wanted) {
            at++;
            return true;
        }
        return false;
    }

    private UnitException badForm() {
        return new UnitException("Unit '" + written + "' is not of a form like L/h, m² or USD/m²/yr.");
    }
}
