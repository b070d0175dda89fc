package org.benchmetre.decision;

import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Search;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.run.Figures;

/**
 * Every yearly rate, within limits, at which flows have no present value, the lowest first. The present value is a polynomial in the
 * discount factor 1/(1 + rate), whose roots are all found, however near to one another (two nearer than a millionth count as one).
 *
 * @param flows numbers along periods a year apart, the first of them at once
 * @param lowest least rate a year, above -1; -0.99 is -99 %
 * @param highest greatest rate a year
 * @param rows how many rates are filled in; rows beyond what is found stay empty
 */
public record RatesOfReturn(Line flows, double lowest, double highest, int rows) implements Search {

    @Override
    public List<Line> reads() {
        return List.of(flows);
    }

    @Override
    public List<Solved> find(Budget budget) {
        List<Solved> found =
                all(budget).stream().map(Solved::number).limit(rows).toList();
        return IntStream.range(0, rows)
                .mapToObj(row -> row < found.size() ? found.get(row) : Solved.none(""))
                .toList();
    }

    private List<Double> all(Budget budget) {
        Figures figures = Figures.of(budget);
        double[] terms = IntStream.range(0, flows.size())
                .mapToDouble(year -> figures.number(flows, year))
                .toArray();
        if (!DoubleStream.of(terms).allMatch(Double::isFinite)) {
            return List.of();
        }
        List<Double> factors = PolynomialRoots.between(terms, 1 / (1 + highest), 1 / (1 + lowest));
        return factors.stream().map(factor -> 1 / factor - 1).sorted().toList();
    }

    /**
     * How many rates there are, those among them that no row is left for.
     *
     * @param rates which rates are counted
     */
    public record Count(RatesOfReturn rates) implements Search {

        @Override
        public List<Line> reads() {
            return rates.reads();
        }

        @Override
        public List<Solved> find(Budget budget) {
            return Collections.singletonList(Solved.number(rates.all(budget).size()));
        }
    }
}
