package org.benchmetre.budget;

/** What a function computes for a block of cases: a plain loop, since one call for each case would cost more than the arithmetic. */
@FunctionalInterface
public interface Kernel {

    /**
     * Computes the first cases of a block.
     *
     * @param out where the results are put; none of the arguments
     * @param from for each argument its values, numbers, truths as 1 or 0, texts as codes
     * @param cases how many
     * @param texts what the codes stand for
     */
    void run(double[] out, double[][] from, int cases, Texts texts);

    /**
     * A kernel that asks a body case by case, for what takes so long that the call does not count.
     *
     * @param body what is computed for one case
     * @return the kernel
     */
    static Kernel oneByOne(Function.Body body) {
        return (out, from, cases, texts) -> {
            double[] arguments = new double[from.length];
            for (int i = 0; i < cases; i++) {
                for (int k = 0; k < arguments.length; k++) {
                    arguments[k] = from[k][i];
                }
                out[i] = body.of(arguments, texts);
            }
        };
    }
}
