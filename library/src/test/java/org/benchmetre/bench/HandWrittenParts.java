package org.benchmetre.bench;

import java.util.Arrays;
import java.util.List;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.Rounding;

/** The parts table by hand: exact cost and hours of an irrigation system, and its purchase list in whole packs. */
final class HandWrittenParts {

    double bought;
    double leftValue;

    private final int[][] driverByWay;
    private final double coins;
    private final int rate;
    private final int waste;
    private final int pack;
    private final int price;
    private final int level;
    private final int freight;
    private final int salesTax;
    private final int installHours;
    private final double[] packSize;
    private final double[] delivered;
    private final double[] unitCost;
    private final double[] perDriver;
    private final double[] hoursPerDriver;

    HandWrittenParts(HandWritten.Cells at, List<String> ways) {
        driverByWay = driverByWay(at.texts("material_driver"), at.texts("material_option"), ways);
        coins = Math.pow(10, MinorUnit.decimals(at.budget().currency()));
        rate = at.first("material_rate");
        waste = at.first("material_waste");
        pack = at.first("material_pack");
        price = at.first("material_price");
        level = at.first("parts_price_level");
        freight = at.first("material_freight");
        salesTax = at.first("material_sales_tax");
        installHours = at.first("material_install_hours");
        int parts = driverByWay[0].length;
        packSize = new double[parts];
        delivered = new double[parts];
        unitCost = new double[parts];
        perDriver = new double[parts];
        hoursPerDriver = new double[parts];
    }

    private static int[][] driverByWay(List<String> names, List<String> options, List<String> ways) {
        int[][] places = new int[ways.size()][names.size()];
        for (int way = 0; way < places.length; way++) {
            for (int part = 0; part < names.size(); part++) {
                String option = options.get(part);
                boolean belongs =
                        option.isEmpty() || Arrays.asList(option.split(" ")).contains(ways.get(way));
                places[way][part] = belongs ? placeOf(names.get(part)) : HandWritten.NO_DRIVER;
            }
        }
        return places;
    }

    private static int placeOf(String driver) {
        int place = HandWritten.DRIVERS.indexOf(driver);
        if (place < 0) {
            throw new IllegalArgumentException("Nothing is written by hand for the driver " + driver + ".");
        }
        return place;
    }

    /** Prices and rates, the same for every way. */
    void price(double[] x) {
        for (int part = 0; part < packSize.length; part++) {
            double size = x[pack + part];
            packSize[part] = size > 0 ? size : 1;
            delivered[part] = x[price + part] * x[level] * (1 + x[freight + part] + x[salesTax + part]);
            unitCost[part] = delivered[part] / packSize[part];
            perDriver[part] = x[rate + part] * (1 + x[waste + part]);
            hoursPerDriver[part] = x[rate + part] * x[installHours + part];
        }
    }

    /** Exact cost and installation labour of a way. */
    double cost(int way, double[] drivers, double wage) {
        double cost = 0;
        double hours = 0;
        int[] driver = driverByWay[way];
        for (int part = 0; part < driver.length; part++) {
            double amount = drivers[driver[part]];
            cost += amount * perDriver[part] * unitCost[part];
            hours += amount * hoursPerDriver[part];
        }
        return cost + hours * wage;
    }

    /** The purchase list of a way, paid part by part in whole coins. */
    void buy(int way, double[] drivers) {
        bought = 0;
        leftValue = 0;
        int[] driver = driverByWay[way];
        for (int part = 0; part < driver.length; part++) {
            double quantity = perDriver[part] * drivers[driver[part]];
            double packs = Rounding.wholeUp(quantity / packSize[part]);
            double paid = Rounding.wholeUp(Math.max(0, packs * delivered[part] * coins - 1e-3)) / coins;
            bought += paid;
            leftValue += Math.max(paid - quantity * unitCost[part], 0);
        }
    }
}
