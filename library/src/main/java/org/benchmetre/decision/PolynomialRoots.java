package org.benchmetre.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Every root of a polynomial in a range above zero. Between two roots of a polynomial its derivative has one, so that the roots of the
 * derivative, found first and in the same way, cut the range into stretches in which the polynomial rises or falls all along: each holds
 * one root where the sign changes and none where it does not. Where the polynomial only touches zero, the touch is one root; two roots
 * nearer than about a millionth of themselves count as a touch. Rolle's theorem; any text of algebra.
 */
final class PolynomialRoots {

    /** What is this small against the sum of the sizes of all terms is zero: some hundred times what rounding leaves of forty terms. */
    private static final double ZERO = 1e-12;

    private final double[] terms;

    private PolynomialRoots(double[] terms) {
        this.terms = terms;
    }

    /**
     * The roots in a range.
     *
     * @param terms coefficients, that of the power 0 first
     * @param low least value, above zero
     * @param high greatest value
     * @return the roots, the least first, each once; none where all coefficients are zero
     */
    static List<Double> between(double[] terms, double low, double high) {
        return new PolynomialRoots(withoutZeros(terms)).in(low, high);
    }

    /** Leading powers that every term has are no root above zero. */
    private static double[] withoutZeros(double[] terms) {
        int from = 0;
        int to = terms.length;
        while (from < to && terms[from] == 0) {
            from++;
        }
        while (to > from && terms[to - 1] == 0) {
            to--;
        }
        return Arrays.copyOfRange(terms, from, to);
    }

    private List<Double> in(double low, double high) {
        if (terms.length < 2) {
            return List.of();
        }
        List<Double> cuts = new ArrayList<>(List.of(low));
        cuts.addAll(between(derivative(), low, high));
        cuts.add(high);
        List<Double> roots = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            double cut = cuts.get(i);
            if (sign(cut) == 0) {
                add(roots, cut);
            } else if (i > 0 && sign(cuts.get(i - 1)) * sign(cut) < 0) {
                add(roots, halved(cuts.get(i - 1), cut));
            }
        }
        return roots;
    }

    /** A cut at the end of the range may be the same root as the one before. */
    private static void add(List<Double> roots, double root) {
        if (roots.isEmpty() || root > roots.get(roots.size() - 1)) {
            roots.add(root);
        }
    }

    private double[] derivative() {
        double[] slopes = new double[terms.length - 1];
        for (int power = 1; power < terms.length; power++) {
            slopes[power - 1] = power * terms[power];
        }
        return slopes;
    }

    private double value(double x) {
        double value = 0;
        for (int power = terms.length - 1; power >= 0; power--) {
            value = value * x + terms[power];
        }
        return value;
    }

    private double sign(double x) {
        double size = 0;
        for (int power = terms.length - 1; power >= 0; power--) {
            size = size * x + Math.abs(terms[power]);
        }
        double value = value(x);
        return Math.abs(value) <= ZERO * size ? 0 : Math.signum(value);
    }

    private double halved(double from, double to) {
        double low = from;
        double high = to;
        double below = Math.signum(value(low));
        while (true) {
            double middle = low + 0.5 * (high - low);
            if (middle <= low || middle >= high) {
                return middle;
            }
            if (Math.signum(value(middle)) == below) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }
}
