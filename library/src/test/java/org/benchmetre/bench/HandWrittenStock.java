package org.benchmetre.bench;

import java.util.List;

/** Cost of the first plants of each kind, by hand. */
final class HandWrittenStock {

    private final List<String> keys;
    private final int chosen;
    private final int price;
    private final int freight;
    private final int losses;

    HandWrittenStock(HandWritten.Cells at) {
        keys = at.texts("stock_key");
        chosen = keys.indexOf(at.text("stock_choice"));
        price = at.first("stock_price");
        freight = at.first("stock_freight");
        losses = at.first("stock_losses");
    }

    List<String> keys() {
        return keys;
    }

    int chosen() {
        return chosen;
    }

    double cost(double[] x, int kind, double plants) {
        return plants / (1 - x[losses + kind]) * x[price + kind] * (1 + x[freight + kind]);
    }
}
