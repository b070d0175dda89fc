package org.benchmetre.budget.entry;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;

/**
 * Takes a number: an optional sign, digits, one decimal mark with digits behind it, an optional exponent, then a unit of the line's
 * dimension. No thousands separators, no words, no infinity. A number without a unit is in the unit that the cell was given in.
 *
 * @param subject the cell
 * @param bounds hard bounds, in the line's unit
 * @param blank what a blank cell means
 */
public record NumberGate(Subject subject, Bounds bounds, Blank blank) {

    private static final double PERCENT = 100;
    private static final Pattern CODE = Pattern.compile("\\b[A-Z]{3}\\b");
    private static final Pattern NUMBER =
            Pattern.compile("([+-]?(?:[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)(?:[eE][+-]?[0-9]+)?)\\s*(.*)", Pattern.DOTALL);
    private static final Pattern SEPARATED =
            Pattern.compile("[+-]?[0-9](?:[0-9.,'\u2019 \u00a0\u2009\u202f]*[0-9.,])?");

    /**
     * Takes a number as typed.
     *
     * @param typed what was typed
     * @param whenBlank the documented default of the cell
     * @return the value, or the refusal
     */
    public Accepted accept(Typed typed, Given whenBlank) {
        if (typed.isBlank()) {
            return switch (blank) {
                case REFUSED -> Accepted.refused("nothing", expected());
                case NOTHING -> Accepted.value(Given.blank(subject.unit()));
                case DEFAULT -> Accepted.value(whenBlank);
            };
        }
        Matcher form = NUMBER.matcher(typed.text());
        boolean isForm = form.matches() && form.group(1).indexOf(typed.decimalComma() ? '.' : ',') < 0;
        String behind = isForm ? form.group(2).strip() : "";
        boolean apart = !typed.unit().isBlank();
        boolean marked = SEPARATED.matcher(typed.text()).matches() && !behind.isEmpty();
        if (!isForm || marked || apart && !behind.isEmpty()) {
            return Accepted.refused(Quoted.text(typed.text()), expected() + hint(typed));
        }
        double number = Double.parseDouble(form.group(1).replace(',', '.')) + 0.0;
        String unitText = apart ? typed.unit().strip() : behind;
        return subject.units().isEmpty() ? inUnit(number, unitText, typed) : withUnit(number, unitText);
    }

    /** A number whose unit has a column of its own may have it behind it. */
    private Accepted withUnit(double number, String unitText) {
        if (unitText.isEmpty() || unitText.equals(subject.unit().toString())) {
            return taken(Given.number(number, subject.unit()));
        }
        return new UnitColumn(subject.units())
                .read(number, unitText)
                .map(read -> taken(Given.number(read.number(), subject.unit()), read.unit()))
                .orElseGet(() -> Accepted.refused(Quoted.text(unitText), aUnit()));
    }

    private Accepted taken(Given given, Unit beside) {
        return refusal(given).isPresent() ? taken(given) : Accepted.value(given.beside(beside));
    }

    private Accepted taken(Given given) {
        return refusal(given)
                .map(no -> Accepted.refused(no.found(), no.expected()))
                .orElseGet(() -> Accepted.value(given));
    }

    private Accepted inUnit(double number, String unitText, Typed typed) {
        Unit unit = typed.bare();
        if (!unitText.isEmpty()) {
            try {
                unit = subject.unit(unitText);
            } catch (UnitException e) {
                Optional<String> other = otherCurrency(unitText);
                if (other.isPresent()) {
                    return Accepted.refused(
                            Refusal.MONEY_IN + other.get(),
                            Refusal.MONEY_IN + subject.currency() + ", the currency of the plan");
                }
                return Accepted.refused(Quoted.text(unitText), aUnit() + UnitsNear.question(unitText, e, subject));
            }
            if (!unit.sameDimension(subject.unit())) {
                return Accepted.refused(Quoted.text(unitText), aUnit());
            }
        }
        double inLine = unit.convertLevel(number, subject.unit());
        if (!Double.isFinite(inLine)) {
            return Accepted.refused(Quoted.text(typed.text()), expected() + ", no larger than 1.7E308 in size");
        }
        return taken(Given.typed(number, unit, subject.unit()));
    }

    /**
     * Looks at a number that is there already.
     *
     * @param given the value
     * @return the refusal, or empty when the cell takes it
     */
    public Optional<Refusal> refusal(Given given) {
        if (!given.filled()) {
            return blank == Blank.REFUSED ? Optional.of(new Refusal("nothing", expected())) : Optional.empty();
        }
        if (!given.text().isEmpty()) {
            return Optional.of(new Refusal(Quoted.text(given.text()), expected()));
        }
        if (!given.typedIn().sameDimension(subject.unit())) {
            return Optional.of(new Refusal(Quoted.text(subject.shown(given.typedIn())), aUnit()));
        }
        if (!Double.isFinite(given.typed())) {
            return Optional.of(new Refusal(Quoted.text(Double.toString(given.typed())), expected()));
        }
        if (bounds.takes(given.number())) {
            return Optional.empty();
        }
        String unit = subject.shown(given.typedIn());
        String found = Numbers.plain(given.typed()) + (unit.isEmpty() ? "" : " " + unit);
        return Optional.of(new Refusal(Quoted.text(found), expected(given.typedIn()) + percentMeant(given)));
    }

    /** A question where a rate of interest would fit as a percentage. */
    private String percentMeant(Given given) {
        double share = given.typed() / PERCENT;
        boolean fits = subject.isRate() && given.typedIn().equals(subject.unit()) && share > 0 && bounds.takes(share);
        String typed = Numbers.shown(given.typed());
        return fits
                ? "; did you mean " + Numbers.shown(share) + " or " + typed + " %? " + typed + " would be "
                        + Numbers.shown(given.typed() * PERCENT) + " % a year"
                : "";
    }

    private String expected() {
        return expected(subject.unit());
    }

    /** The bounds in the unit that was typed, since nobody should have to convert them. */
    private String expected(Unit typedIn) {
        return bounds.in(subject.unit(), typedIn).words(subject.shown(typedIn)) + subject.name();
    }

    private String aUnit() {
        if (!subject.units().isEmpty()) {
            return new UnitColumn(subject.units()).expected() + subject.name();
        }
        String shown = subject.shown(subject.unit());
        return (shown.isEmpty() ? "no unit" : "a unit that converts to " + shown) + subject.name();
    }

    private static String hint(Typed typed) {
        return SEPARATED.matcher(typed.text()).matches()
                ? ", with a decimal " + (typed.decimalComma() ? "comma" : "point") + " and no thousands separators"
                : "";
    }

    /** The first code of another currency in a unit, told apart from a unit that is only misspelt. */
    private Optional<String> otherCurrency(String unitText) {
        return CODE.matcher(unitText)
                .results()
                .map(MatchResult::group)
                .filter(code -> Tender.isCode(code) && !code.equals(subject.currency()))
                .findFirst();
    }
}
