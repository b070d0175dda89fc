package org.benchmetre.farm.ownership;

/** A part of the enterprise budget, by the word that marks its rows. */
final class BudgetPart {

    static final String RECEIPT = "receipt";
    static final String OPERATING = "operating";
    static final String OWNERSHIP = "ownership";
    static final String OVERHEAD = "overhead";

    private BudgetPart() {}
}
