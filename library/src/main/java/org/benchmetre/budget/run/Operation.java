package org.benchmetre.budget.run;

import org.benchmetre.budget.Function;
import org.benchmetre.budget.Interest;

/** What one instruction does: a function of the table, or something over any number of registers. */
enum Operation {
    ADD(Function.ADD),
    SUBTRACT(Function.SUBTRACT),
    MULTIPLY(Function.MULTIPLY),
    DIVIDE(Function.DIVIDE),
    POWER(Function.POWER),
    MIN(Function.MIN),
    MAX(Function.MAX),
    EXP(Function.EXP),
    LN(Function.LN),
    WHOLE_UP(Function.WHOLE_UP),
    WHOLE_DOWN(Function.WHOLE_DOWN),
    RECOVERY(Function.RECOVERY),
    POSITIVE(Function.POSITIVE),
    EXCEEDS(Function.EXCEEDS),
    SAME_TEXT(Function.SAME_TEXT),
    FILLED(Function.FILLED),
    HAS_KEY(Function.HAS_KEY),
    JOIN(Function.JOIN),
    IF(Function.IF),
    ONLY_IF(Function.ONLY_IF),
    HAS_NUMBER(Function.HAS_NUMBER),
    NUMBER_OR(Function.NUMBER_OR),
    AND(Function.AND),
    OR(Function.OR),
    NOT(Function.NOT),
    SUM(null),
    RATE_OF_RETURN(null);

    private final transient Function function;

    Operation(Function function) {
        this.function = function;
    }

    static Operation of(Function function) {
        return valueOf(function.name());
    }

    /** The body for one case; sums and rates of return, of any number of registers, have one of their own. */
    Function.Body body() {
        return switch (this) {
            case SUM -> (terms, texts) -> sum(terms);
            case RATE_OF_RETURN -> (flows, texts) -> Interest.rateOfReturn(flows);
            default -> function.body();
        };
    }

    private static double sum(double[] terms) {
        double sum = 0;
        for (double term : terms) {
            sum += term;
        }
        return sum;
    }
}
