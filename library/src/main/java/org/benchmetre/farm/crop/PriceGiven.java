package org.benchmetre.farm.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.rule.Breach;

/**
 * A channel that takes fruit has a price, in one month at least.
 *
 * @param price by channel and month
 * @param share share of fruit, by channel
 */
record PriceGiven(Line price, Line share) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(price, share);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        int months = price.axes().get(1).size();
        for (int row = 0; row < share.size(); row++) {
            Given taken = values.of(share).get(row);
            boolean priced = values.of(price).subList(row * months, (row + 1) * months).stream()
                    .anyMatch(Given::filled);
            if (taken.filled() && !priced && !share.axes().get(0).isSpare(row)) {
                String expected = "a price in price, or by month in price_jan to price_dec,";
                found.add(Breach.of(
                        price,
                        row * months,
                        Breach.placed(values.of(price).get(row * months), taken),
                        "nothing",
                        expected));
            }
        }
        return found;
    }
}
