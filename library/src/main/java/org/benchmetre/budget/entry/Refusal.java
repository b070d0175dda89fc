package org.benchmetre.budget.entry;

import java.io.Serializable;

/**
 * Why a cell does not take a value.
 *
 * @param found what was given, in words that follow "found"
 * @param expected what the cell takes, in words that follow "expected", with bounds, unit and the entry's name
 */
public record Refusal(String found, String expected) implements Serializable {

    /** How a refusal of money in another currency begins. */
    static final String MONEY_IN = "money in ";

    /**
     * Whether a unit was refused for being money in another currency than the plan's. Found and expected are then the same whatever the money
     * is for.
     *
     * @return false for any other reason
     */
    public boolean isOfCurrency() {
        return found.startsWith(MONEY_IN);
    }

    /**
     * The refusal as the end of a sentence.
     *
     * @return for example {@code found "-5 m", expected a number above 0 and at most 500 in m for Length of one bench (bench_length)}
     */
    public String words() {
        return "found " + found + ", expected " + expected;
    }
}
