package org.benchmetre.budget;

import java.util.List;
import java.util.stream.Collectors;
import org.benchmetre.budget.entry.Numbers;

/**
 * How a function is written in a spreadsheet. Each printed part knows how tightly it binds, and whoever encloses it adds the
 * parentheses: the spreadsheet programs' own order (unary minus before power, ECMA-376 part 1, 18.17.2.2) never decides alone.
 */
@FunctionalInterface
interface Spelling {

    /** Binds least: a comparison. */
    int COMPARE = 2;

    /** Texts joined: less tightly than sums, more tightly than comparisons (ECMA-376 part 1, 18.17.2.2). */
    int JOIN = 3;

    /** Sums and differences. */
    int ADD = 4;

    /** Products and quotients. */
    int MULTIPLY = 5;

    /** Powers. */
    int POWER = 6;

    /** Binds most: a name, a cell, a number, a call. */
    int ATOM = 9;

    /** Text of a formula and how tightly its outermost operator binds. */
    record Printed(String text, int binding) {

        /** The text, in parentheses when it binds less tightly than wanted. */
        String within(int wanted) {
            return binding >= wanted ? text : "(" + text + ")";
        }
    }

    Printed of(List<Printed> arguments);

    /** A number as it stands in a formula. */
    static Printed number(double value) {
        return new Printed(Numbers.plain(value), value < 0 ? ADD : ATOM);
    }

    /** A left-associative operator between two parts; the right part is enclosed at equal strength. */
    static Spelling infix(String sign, int binding) {
        return parts ->
                new Printed(parts.get(0).within(binding) + sign + parts.get(1).within(binding + 1), binding);
    }

    /** The power sign, its base and exponent always enclosed unless a single name, cell, call or plain number. */
    static Spelling power() {
        return parts ->
                new Printed(parts.get(0).within(ATOM) + "^" + parts.get(1).within(ATOM), POWER);
    }

    /** All parts with the sign for joining texts between them; the order of joining does not matter. */
    static Spelling joined() {
        return parts ->
                new Printed(parts.stream().map(part -> part.within(JOIN)).collect(Collectors.joining("&")), JOIN);
    }

    /** A function by name, its arguments apart by commas. */
    static Spelling call(String name) {
        return parts ->
                new Printed(parts.stream().map(Printed::text).collect(Collectors.joining(",", name + "(", ")")), ATOM);
    }

    /** Rounded to six decimals first, as all spreadsheet programs then agree. */
    static Spelling roundedFirst(String before, String after) {
        return parts -> new Printed(before + "ROUND(" + parts.get(0).text() + ",6)" + after, ATOM);
    }

    /** The only part compared with something written here. */
    static Spelling comparedWith(String comparison) {
        return parts -> new Printed(parts.get(0).within(ADD) + comparison, COMPARE);
    }

    /** Whether the rounded difference is above zero. */
    static Spelling differenceAboveZero() {
        return parts -> new Printed(
                "ROUND(" + parts.get(0).within(ADD) + "-" + parts.get(1).within(MULTIPLY) + ",6)>0", COMPARE);
    }

    /** Straight line where the rate is next to zero, else the payment function, whose sign is the payer's. */
    static Spelling recovery() {
        return parts -> {
            String rate = parts.get(0).text();
            String life = parts.get(1).text();
            String cost = parts.get(2).within(ADD);
            String salvage = parts.get(3).within(MULTIPLY);
            return new Printed(
                    "IF(ABS(" + rate + ")<0.0000001,(" + cost + "-" + salvage + ")/"
                            + parts.get(1).within(POWER) + ",-PMT(" + rate + "," + life + "," + cost + ",-"
                            + parts.get(3).within(ATOM) + "))",
                    ATOM);
        };
    }

    /** A number where there is one, else the other part. */
    static Spelling numberOr() {
        return parts -> {
            String optional = parts.get(0).text();
            String other = parts.get(1).text();
            return new Printed("IF(ISNUMBER(" + optional + ")," + optional + "," + other + ")", ATOM);
        };
    }

    /** A number as text, with commas between thousands; the spreadsheet program puts the signs of its own language. */
    static Spelling shown() {
        return parts ->
                new Printed("FIXED(" + parts.get(0).text() + "," + parts.get(1).text() + ",FALSE)", ATOM);
    }

    /** Whether a list of keys apart by spaces has one. */
    static Spelling hasKey() {
        return parts -> new Printed(
                "ISNUMBER(FIND(\" \"&LOWER(" + parts.get(1).text() + ")&\" \",\" \"&LOWER("
                        + parts.get(0).text() + ")&\" \"))",
                ATOM);
    }
}
