package org.benchmetre.budget.entry;

import java.io.Serializable;

/**
 * Why a cell does not take a value.
 *
 * @param found what was given, in words that follow "found"
 * @param expected what the cell takes, in words that follow "expected", with bounds, unit and the entry's name
 */
public record Refusal(String found, String expected) implements Serializable {

    /**
     * The refusal as the end of a sentence.
     *
     * @return for example {@code found "-5 m", expected a number above 0 and at most 500 in m for Length of one bench (bench_length)}
     */
    public String words() {
        return "found " + found + ", expected " + expected;
    }
}
