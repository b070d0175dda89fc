package org.benchmetre.bench;

import java.util.List;
import org.benchmetre.budget.Rounding;

/** Cost of the first plants of each kind, by hand. */
final class HandWrittenStock {

    private final List<String> keys;
    private final int chosen;
    private final int price;
    private final int freight;
    private final int losses;
    private final int culls;
    private final int replaced;
    private final int pot;
    private final int litres;
    private final int media;
    private final int hours;
    private final int weeks;
    private final int wage;
    private final int wageLevel;
    private final int level;
    private final int benchWeek;
    private final int density;
    private final int[] breakKinds;
    private final int breakFrom;
    private final int breakPrice;

    HandWrittenStock(HandWritten.Cells at) {
        keys = at.texts("stock_key");
        chosen = keys.indexOf(at.text("stock_choice"));
        price = at.first("stock_price");
        freight = at.first("stock_freight");
        losses = at.first("stock_losses");
        culls = at.first("stock_culls");
        replaced = at.first("stock_replacement");
        pot = at.first("stock_pot_price");
        litres = at.first("stock_media_litres");
        media = at.first("stock_media_price");
        hours = at.first("stock_pre_grow_hours");
        weeks = at.first("stock_raising_weeks");
        wage = at.first("pre_grow_wage");
        wageLevel = at.first("wage_level");
        level = at.first("plant_price_level");
        benchWeek = at.first("bench_week_cost");
        density = at.first("raising_density");
        breakKinds = at.texts("break_stock").stream().mapToInt(keys::indexOf).toArray();
        breakFrom = at.first("break_from");
        breakPrice = at.first("break_price");
    }

    List<String> keys() {
        return keys;
    }

    int chosen() {
        return chosen;
    }

    double cost(double[] x, int kind, double plants) {
        double set = plants * (1 + x[replaced + kind]) / (1 - x[losses + kind]);
        double bought = set / (1 - x[culls + kind]);
        double growing = x[pot + kind]
                + x[litres + kind] * x[media + kind]
                + x[hours + kind] * x[wage] * x[wageLevel]
                + x[weeks + kind] * x[benchWeek] / x[density];
        return bought * priceOf(x, kind, bought) * x[level] * (1 + x[freight + kind]) + set * growing;
    }

    private double priceOf(double[] x, int kind, double bought) {
        double paid = x[price + kind];
        double reached = -1;
        double whole = Rounding.wholeUp(bought);
        for (int i = 0; i < breakKinds.length; i++) {
            double from = x[breakFrom + i];
            if (breakKinds[i] == kind && !Rounding.exceeds(from, whole) && from > reached) {
                reached = from;
                paid = x[breakPrice + i];
            }
        }
        return paid;
    }
}
