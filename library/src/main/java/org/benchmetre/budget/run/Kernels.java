package org.benchmetre.budget.run;

import org.benchmetre.budget.Interest;
import org.benchmetre.budget.Rounding;
import org.benchmetre.budget.Texts;

/** The bodies of all operations as loops over arrays, bit for bit what the bodies for one case give. */
final class Kernels {

    private Kernels() {}

    static void apply(Operation operation, double[] out, double[][] from, int n, Texts texts) {
        switch (operation) {
            case ADD -> add(out, from[0], from[1], n);
            case SUBTRACT -> subtract(out, from[0], from[1], n);
            case MULTIPLY -> multiply(out, from[0], from[1], n);
            case DIVIDE -> divide(out, from[0], from[1], n);
            case SUM -> sum(out, from, n);
            case RATE_OF_RETURN -> rateOfReturn(out, from, n);
            case IF -> choose(out, from[0], from[1], from[2], n);
            case MIN -> min(out, from[0], from[1], n);
            case MAX -> max(out, from[0], from[1], n);
            case POWER -> power(out, from[0], from[1], n);
            case EXP -> exp(out, from[0], n);
            case LN -> log(out, from[0], n);
            case WHOLE_UP -> wholeUp(out, from[0], n);
            case WHOLE_DOWN -> wholeDown(out, from[0], n);
            case RECOVERY -> recovery(out, from[0], from[1], from[2], from[3], n);
            case POSITIVE -> positive(out, from[0], n);
            case EXCEEDS -> exceeds(out, from[0], from[1], n);
            case SAME_TEXT -> sameText(out, from[0], from[1], n, texts);
            case FILLED -> filled(out, from[0], n);
            case HAS_KEY -> hasKey(out, from[0], from[1], n, texts);
            case JOIN -> join(out, from, n, texts);
            case ONLY_IF -> onlyIf(out, from[0], from[1], from[2], n);
            case HAS_NUMBER -> hasNumber(out, from[0], n);
            case NUMBER_OR -> numberOr(out, from[0], from[1], n);
            case AND -> and(out, from, n);
            case OR -> or(out, from, n);
            case NOT -> not(out, from[0], n);
        }
    }

    private static void add(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] + b[i];
        }
    }

    private static void subtract(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] - b[i];
        }
    }

    private static void multiply(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] * b[i];
        }
    }

    private static void divide(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] / b[i];
        }
    }

    private static void sum(double[] out, double[][] from, int n) {
        first(out, from[0], n);
        for (int term = 1; term < from.length; term++) {
            add(out, out, from[term], n);
        }
    }

    /** The sum of one term begins at zero, so that a minus zero never comes out. */
    private static void first(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = 0.0 + a[i];
        }
    }

    private static void choose(double[] out, double[] condition, double[] yes, double[] no, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = condition[i] != 0 ? yes[i] : no[i];
        }
    }

    private static void min(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Math.min(a[i], b[i]);
        }
    }

    private static void max(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Math.max(a[i], b[i]);
        }
    }

    private static void power(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Math.pow(a[i], b[i]);
        }
    }

    private static void exp(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Math.exp(a[i]);
        }
    }

    private static void log(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Math.log(a[i]);
        }
    }

    private static void wholeUp(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Rounding.wholeUp(a[i]);
        }
    }

    private static void wholeDown(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Rounding.wholeDown(a[i]);
        }
    }

    private static void rateOfReturn(double[] out, double[][] from, int n) {
        double[] flows = new double[from.length];
        for (int i = 0; i < n; i++) {
            for (int year = 0; year < flows.length; year++) {
                flows[year] = from[year][i];
            }
            out[i] = Interest.rateOfReturn(flows);
        }
    }

    private static void recovery(double[] out, double[] rate, double[] life, double[] cost, double[] salvage, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Interest.recovery(rate[i], life[i], cost[i], salvage[i]);
        }
    }

    private static void positive(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] > 0 ? 1.0 : 0.0;
        }
    }

    private static void exceeds(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Rounding.exceeds(a[i], b[i]) ? 1.0 : 0.0;
        }
    }

    private static void sameText(double[] out, double[] a, double[] b, int n, Texts texts) {
        for (int i = 0; i < n; i++) {
            out[i] = texts.same(a[i], b[i]) ? 1.0 : 0.0;
        }
    }

    private static void filled(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] != 0 ? 1.0 : 0.0;
        }
    }

    private static void hasKey(double[] out, double[] a, double[] b, int n, Texts texts) {
        for (int i = 0; i < n; i++) {
            out[i] = texts.hasKey(a[i], b[i]) ? 1.0 : 0.0;
        }
    }

    private static void join(double[] out, double[][] from, int n, Texts texts) {
        double[] parts = new double[from.length];
        for (int i = 0; i < n; i++) {
            for (int part = 0; part < parts.length; part++) {
                parts[part] = from[part][i];
            }
            out[i] = texts.joined(parts);
        }
    }

    private static void onlyIf(double[] out, double[] condition, double[] value, double[] reason, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = condition[i] != 0 ? value[i] : Texts.noNumber(reason[i]);
        }
    }

    private static void hasNumber(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Double.isNaN(a[i]) ? 0.0 : 1.0;
        }
    }

    private static void numberOr(double[] out, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = Double.isNaN(a[i]) ? b[i] : a[i];
        }
    }

    private static void and(double[] out, double[][] from, int n) {
        for (int i = 0; i < n; i++) {
            double all = 1;
            for (double[] a : from) {
                all = a[i] != 0 ? all : 0;
            }
            out[i] = all;
        }
    }

    private static void or(double[] out, double[][] from, int n) {
        for (int i = 0; i < n; i++) {
            double any = 0;
            for (double[] a : from) {
                any = a[i] != 0 ? 1 : any;
            }
            out[i] = any;
        }
    }

    private static void not(double[] out, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] == 0 ? 1.0 : 0.0;
        }
    }
}
