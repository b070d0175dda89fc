package org.benchmetre.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Polynomials that are made of their roots give them back. */
class PolynomialRootsTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    /** The product of (x - root). */
    private static double[] of(Iterable<Double> roots) {
        double[] terms = {1};
        for (double root : roots) {
            double[] more = new double[terms.length + 1];
            for (int power = 0; power < terms.length; power++) {
                more[power + 1] += terms[power];
                more[power] -= root * terms[power];
            }
            terms = more;
        }
        return terms;
    }

    /** One to six roots a fifth or more apart, times x^2 + 1, which has none. */
    @ParameterizedTest
    @MethodSource("seeds")
    void allRootsOfARangeAreFound(long seed) {
        Random random = new Random(seed);
        TreeSet<Double> roots = new TreeSet<>();
        int most = 1 + random.nextInt(6);
        while (roots.size() < most) {
            double root = 0.3 + 9 * random.nextDouble();
            if (roots.stream().noneMatch(other -> Math.abs(other - root) < 0.2)) {
                roots.add(root);
            }
        }
        double[] terms = of(roots);
        double[] wide = new double[terms.length + 2];
        for (int power = 0; power < terms.length; power++) {
            wide[power] += terms[power];
            wide[power + 2] += terms[power];
        }
        List<Double> found = PolynomialRoots.between(wide, 0.25, 100);
        assertThat(found).hasSameSizeAs(roots);
        int at = 0;
        for (double root : roots) {
            assertThat(found.get(at++)).isCloseTo(root, within(1e-6 * root));
        }
    }

    @Test
    void aTouchIsOneRootAndOneAtTheEndOfTheRangeCounts() {
        assertThat(PolynomialRoots.between(of(List.of(2.0, 2.0)), 0.25, 100)).containsExactly(2.0);
        assertThat(PolynomialRoots.between(of(List.of(0.25, 100.0)), 0.25, 100)).containsExactly(0.25, 100.0);
        assertThat(PolynomialRoots.between(of(List.of(0.25, 100.0)), 0.3, 99)).isEmpty();
    }

    @Test
    void withoutAChangeOfSignThereIsNone() {
        assertThat(PolynomialRoots.between(new double[] {0, 0, 0}, 0.25, 100)).isEmpty();
        assertThat(PolynomialRoots.between(new double[] {0, 5}, 0.25, 100)).isEmpty();
        assertThat(PolynomialRoots.between(new double[] {3, 1, 2}, 0.25, 100)).isEmpty();
    }
}
