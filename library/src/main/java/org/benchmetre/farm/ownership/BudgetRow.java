package org.benchmetre.farm.ownership;

import org.benchmetre.budget.Formula;

/**
 * One row of the enterprise budget: a quantity at a price.
 *
 * @param key of the row
 * @param section where it counts: receipt, operating, ownership or overhead; total for rows that repeat a sum
 * @param label what a reader sees, a text
 * @param unit unit of the quantity, in words
 * @param quantity a plain number a year
 * @param amount money a year; 0 where the quantity is 0
 */
record BudgetRow(String key, String section, Formula label, String unit, Formula quantity, Formula amount) {

    static final String RECEIPT = "receipt";
    static final String OPERATING = "operating";
    static final String OWNERSHIP = "ownership";
    static final String OVERHEAD = "overhead";
    static final String TOTAL = "total";
}
