package org.benchmetre.budget;

import java.util.Arrays;

/** The loops of the function table, each bit for bit what the body of its row gives for one case. */
final class Kernels {

    private Kernels() {}

    static void add(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = a[i] + b[i];
        }
    }

    static void subtract(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = a[i] - b[i];
        }
    }

    static void multiply(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = a[i] * b[i];
        }
    }

    static void divide(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = a[i] / b[i];
        }
    }

    /** Begins at zero, so that a minus zero never comes out. */
    static void sum(double[] out, double[][] from, int n, Texts texts) {
        Arrays.fill(out, 0, n, 0.0);
        for (double[] term : from) {
            for (int i = 0; i < n; i++) {
                out[i] += term[i];
            }
        }
    }

    static void sumProduct(double[] out, double[][] from, int n, Texts texts) {
        Arrays.fill(out, 0, n, 0.0);
        for (int pair = 0; pair < from.length; pair += 2) {
            double[] a = from[pair];
            double[] b = from[pair + 1];
            for (int i = 0; i < n; i++) {
                out[i] += a[i] * b[i];
            }
        }
    }

    static void sumWhere(double[] out, double[][] from, int n, Texts texts) {
        Arrays.fill(out, 0, n, 0.0);
        for (int pair = 0; pair < from.length; pair += 2) {
            double[] holds = from[pair];
            double[] term = from[pair + 1];
            for (int i = 0; i < n; i++) {
                out[i] += holds[i] != 0 ? term[i] : 0.0;
            }
        }
    }

    static void choose(double[] out, double[][] from, int n, Texts texts) {
        double[] condition = from[0];
        double[] yes = from[1];
        double[] no = from[2];
        for (int i = 0; i < n; i++) {
            out[i] = condition[i] != 0 ? yes[i] : no[i];
        }
    }

    static void min(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = Math.min(a[i], b[i]);
        }
    }

    static void max(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = Math.max(a[i], b[i]);
        }
    }

    static void power(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = Math.pow(a[i], b[i]);
        }
    }

    static void exp(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        for (int i = 0; i < n; i++) {
            out[i] = Math.exp(a[i]);
        }
    }

    static void log(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        for (int i = 0; i < n; i++) {
            out[i] = Math.log(a[i]);
        }
    }

    static void wholeUp(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        for (int i = 0; i < n; i++) {
            out[i] = Rounding.wholeUp(a[i]);
        }
    }

    static void wholeDown(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        for (int i = 0; i < n; i++) {
            out[i] = Rounding.wholeDown(a[i]);
        }
    }

    static void recovery(double[] out, double[][] from, int n, Texts texts) {
        double[] rate = from[0];
        double[] life = from[1];
        double[] cost = from[2];
        double[] salvage = from[3];
        for (int i = 0; i < n; i++) {
            out[i] = Interest.recovery(rate[i], life[i], cost[i], salvage[i]);
        }
    }

    static void positive(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        for (int i = 0; i < n; i++) {
            out[i] = a[i] > 0 ? 1.0 : 0.0;
        }
    }

    static void exceeds(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = Rounding.exceeds(a[i], b[i]) ? 1.0 : 0.0;
        }
    }

    static void sameText(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = texts.same(a[i], b[i]) ? 1.0 : 0.0;
        }
    }

    static void filled(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        for (int i = 0; i < n; i++) {
            out[i] = a[i] != 0 ? 1.0 : 0.0;
        }
    }

    static void hasKey(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = texts.hasKey(a[i], b[i]) ? 1.0 : 0.0;
        }
    }

    static void onlyIf(double[] out, double[][] from, int n, Texts texts) {
        double[] condition = from[0];
        double[] value = from[1];
        double[] reason = from[2];
        for (int i = 0; i < n; i++) {
            out[i] = condition[i] != 0 ? value[i] : Texts.noNumber(reason[i]);
        }
    }

    static void hasNumber(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        for (int i = 0; i < n; i++) {
            out[i] = Double.isNaN(a[i]) ? 0.0 : 1.0;
        }
    }

    static void numberOr(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        double[] b = from[1];
        for (int i = 0; i < n; i++) {
            out[i] = Double.isNaN(a[i]) ? b[i] : a[i];
        }
    }

    static void and(double[] out, double[][] from, int n, Texts texts) {
        for (int i = 0; i < n; i++) {
            double all = 1;
            for (double[] a : from) {
                all = a[i] != 0 ? all : 0;
            }
            out[i] = all;
        }
    }

    static void or(double[] out, double[][] from, int n, Texts texts) {
        for (int i = 0; i < n; i++) {
            double any = 0;
            for (double[] a : from) {
                any = a[i] != 0 ? 1 : any;
            }
            out[i] = any;
        }
    }

    static void not(double[] out, double[][] from, int n, Texts texts) {
        double[] a = from[0];
        for (int i = 0; i < n; i++) {
            out[i] = a[i] == 0 ? 1.0 : 0.0;
        }
    }
}
