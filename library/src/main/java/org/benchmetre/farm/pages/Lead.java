package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;

/** Which of two systems of units stands first on pages that show both. */
enum Lead {
    /** Metres and kilograms. */
    METRIC,
    /** Feet and pounds. */
    US;

    static Lead of(Budget budget) {
        return budget.given(budget.line("plan_units")).get(0).text().equals("us") ? US : METRIC;
    }

    /** Pairs of the same figure, the leading one first in each. */
    <T> List<T> pairs(List<T> metricFirst) {
        List<T> all = new ArrayList<>(metricFirst);
        for (int i = 0; this == US && i + 1 < all.size(); i += 2) {
            T metric = all.get(i);
            all.set(i, all.get(i + 1));
            all.set(i + 1, metric);
        }
        return all;
    }
}
