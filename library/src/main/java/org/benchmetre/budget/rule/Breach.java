package org.benchmetre.budget.rule;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.Refusal;

/** Words of rules that are broken. */
public final class Breach {

    private Breach() {}

    /**
     * A cell that is wrong beside others.
     *
     * @param line the entry
     * @param cell from 0
     * @param given the value whose place the fault names
     * @param found what was found
     * @param expected what is expected, the name of the entry follows
     * @return the refusal
     */
    public static Refused of(Line line, int cell, Given given, String found, String expected) {
        String name = " for " + line.label() + " (" + line.address(cell) + ")";
        return new Refused(line, given.origin(), new Refusal(found, expected + name));
    }

    /**
     * Whose place a fault about a blank cell names.
     *
     * @param cell the blank cell, which has a place when a file has its row
     * @param beside a filled cell of the same row
     * @return the one that comes from somewhere
     */
    public static Given placed(Given cell, Given beside) {
        return cell.origin().equals(Origin.DEFAULT) ? beside : cell;
    }

    /**
     * What a cell holds.
     *
     * @param given its value
     * @param currency ISO 4217 code of all money
     * @return in quotation marks; <i>nothing</i> when it is blank
     */
    public static String shown(Given given, String currency) {
        if (!given.text().isEmpty()) {
            return Quoted.text(given.text());
        }
        if (!given.filled()) {
            return "nothing";
        }
        String unit = given.typedIn().display(currency);
        return Quoted.text(Numbers.plain(given.typed()) + (unit.equals("1") ? "" : " " + unit));
    }
}
