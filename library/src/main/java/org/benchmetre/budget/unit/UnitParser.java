package org.benchmetre.budget.unit;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what {@link UnitText} prints. */
final class UnitParser {

    private static final Pattern FACTOR = Pattern.compile("(1(?![0-9])|%|[A-Za-z_]+(?:2O)?)(-?[0-9]+)?");

    private final String text;
    private final Map<String, Unit> names;
    private int at;

    private UnitParser(String text, Map<String, Unit> names) {
        this.text = text;
        this.names = names;
    }

    static Unit parse(String text, Map<String, Unit> names) {
        String trimmed = text.trim();
        if (trimmed.isEmpty()) {
            throw new UnitException("A unit is missing; a plain number has the unit 1.");
        }
        UnitParser parser = new UnitParser(trimmed, names);
        Unit unit = parser.quotient();
        if (parser.at < trimmed.length()) {
            throw parser.badForm();
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
        if (names.containsKey(symbol)) {
            return names.get(symbol);
        }
        return Atoms.find(symbol)
                .map(Unit::of)
                .orElseThrow(() -> new UnitException("Unit '" + symbol + "' in '" + text
                        + "' is unknown; known units are " + String.join(" ", Atoms.symbols()) + "."));
    }

    private boolean take(char wanted) {
        if (at < text.length() && text.charAt(at) == wanted) {
            at++;
            return true;
        }
        return false;
    }

    private UnitException badForm() {
        return new UnitException("Unit '" + text + "' is not of a form like L/h, m2 or W/(m2 K).");
    }
}
