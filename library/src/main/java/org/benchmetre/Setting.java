package org.benchmetre;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Units;

/**
 * One change to one entry cell, as people write it: {@code plant_spacing=6in}, {@code material_price[tape]=0.12},
 * {@code irrigation_choice=tape}. A number without a unit is in the unit the entry was given in; with one it is converted. The
 * scenario's currency code stands for money in units.
 *
 * @param address the cell
 * @param value what follows the first equals sign, without spaces around it; empty for a blank cell
 */
public record Setting(Address address, String value) {

    private static final Pattern NUMBER =
            Pattern.compile("([+-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\\s*(.*)", Pattern.DOTALL);
    private static final String SIGNS = "*?~<>=\"";
    private static final int LONGEST = 255;
    private static final String SOURCE = "changed for this run";

    /**
     * Reads a setting.
     *
     * @param text for example {@code plant_spacing=6 in}
     * @return the setting
     * @throws SettingSyntaxException when there is no equals sign or no address before it
     */
    public static Setting parse(String text) {
        int equals = text.indexOf('=');
        if (equals < 0) {
            throw new SettingSyntaxException("A setting is line=value, line[key]=value or line[key;key]=value, such as"
                    + " plant_spacing=6in; it was " + Fault.quoted(text) + ".");
        }
        return new Setting(
                Address.parse(text.substring(0, equals)),
                text.substring(equals + 1).trim());
    }

    /**
     * What a fault names as the place of this setting.
     *
     * @return the word setting and the setting itself
     */
    public Place place() {
        return Place.wholeFile("setting " + this);
    }

    /**
     * The cell that is changed.
     *
     * @param budget the budget it stands in
     * @param faults where an unknown line or key, or a line that is no entry, is reported
     * @return the cell; empty after a fault
     */
    Optional<CellRef> cell(Budget budget, Faults faults) {
        Optional<CellRef> cell = address.in(budget, place(), faults);
        if (cell.isPresent() && budget.entry(cell.get().line()).isEmpty()) {
            Line line = cell.get().line();
            String why = budget.isSolved(line) ? " is found by a search" : " follows from a formula";
            faults.add(place(), Fault.quoted(address.line()), "an entry; " + line.label() + why);
            return Optional.empty();
        }
        return cell;
    }

    /**
     * The value as the cell takes it. Texts that are keys of a table are not compared with it here.
     *
     * @param budget the budget the cell stands in
     * @param cell an entry cell of it
     * @param faults where a value that the entry does not take is reported
     * @return the value; empty after a fault
     */
    Optional<Given> given(Budget budget, CellRef cell, Faults faults) {
        Entry entry = budget.entry(cell.line()).orElseThrow();
        Optional<Given> given = cell.line().kind() == Kind.TEXT
                ? text(cell.line(), entry, faults)
                : number(budget, cell, entry, faults);
        return given.map(known -> known.from(SOURCE).at(place().toString()));
    }

    private Optional<Given> text(Line line, Entry entry, Faults faults) {
        boolean isKey = !entry.allowed().isEmpty() || entry.keysOf() != null;
        String text = isKey ? value.toLowerCase(Locale.ROOT) : value;
        boolean mayBeBlank = !isKey || !line.axes().isEmpty();
        if (text.isEmpty() && mayBeBlank) {
            return Optional.of(Given.text(""));
        }
        if (!entry.allowed().isEmpty() && !entry.allowed().contains(text)) {
            faults.add(place(), Fault.quoted(value), "one of " + String.join(", ", entry.allowed()));
            return Optional.empty();
        }
        boolean fits = text.length() <= LONGEST
                && text.chars().noneMatch(sign -> Character.isISOControl(sign) || SIGNS.indexOf(sign) >= 0);
        if (!fits) {
            faults.add(
                    place(),
                    Fault.quoted(value),
                    "text of at most 255 characters on one line, without any of * ? ~ < > = \"");
            return Optional.empty();
        }
        return Optional.of(Given.text(text));
    }

    private Optional<Given> number(Budget budget, CellRef cell, Entry entry, Faults faults) {
        Line line = cell.line();
        Unit givenIn = budget.given(line).get(cell.cell()).typedIn();
        if (value.isEmpty() && !line.axes().isEmpty()) {
            return Optional.of(Given.blank(line.unit()));
        }
        Matcher form = NUMBER.matcher(value);
        double typed = form.matches() ? Double.parseDouble(form.group(1)) : Double.NaN;
        if (!Double.isFinite(typed)) {
            String in = givenIn.display(budget.currency());
            faults.add(
                    place(),
                    Fault.quoted(value),
                    "a number with a decimal point, with a unit behind it or in " + in + " without one");
            return Optional.empty();
        }
        return unit(form.group(2), givenIn, budget, line, faults)
                .flatMap(unit -> within(typed, unit, line, entry, faults));
    }

    private Optional<Unit> unit(String text, Unit givenIn, Budget budget, Line line, Faults faults) {
        if (text.isBlank()) {
            return Optional.of(givenIn);
        }
        Optional<Unit> unit = Units.parse(text, place(), Map.of(budget.currency(), Unit.MONEY), faults);
        if (unit.isPresent() && !unit.get().sameDimension(line.unit())) {
            String wanted = line.unit().display(budget.currency());
            faults.add(
                    place(), Fault.quoted(text.trim()), "a unit that converts to " + wanted + " for " + line.label());
            return Optional.empty();
        }
        return unit;
    }

    private Optional<Given> within(double typed, Unit unit, Line line, Entry entry, Faults faults) {
        double number = unit.convertLevel(typed, line.unit());
        Optional<String> refusal = Double.isFinite(number)
                ? entry.bounds().refusal(number, line.unit())
                : Optional.of("a number no larger than 1.7E308 in size");
        if (refusal.isPresent()) {
            faults.add(place(), Fault.quoted(value), refusal.get());
            return Optional.empty();
        }
        return Optional.of(Given.typed(typed, unit, line.unit()));
    }

    /** The setting as {@link #parse} reads it back. */
    @Override
    public String toString() {
        return address + "=" + value;
    }
}
