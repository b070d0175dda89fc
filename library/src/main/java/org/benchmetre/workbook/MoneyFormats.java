package org.benchmetre.workbook;

/**
 * Number formats of money.
 *
 * @param decimals those of the currency's minor unit
 */
record MoneyFormats(int decimals) {

    /** Decimals for which the bounds below are written: cents. */
    private static final int CENTS = 2;

    private static final double HALF_A_CENT = 0.005;
    private static final double TEN_CENTS = 0.1;
    private static final double HUNDRED_CENTS = 1;

    /** An amount that is paid. */
    String amount() {
        return fixed(decimals);
    }

    /** A price as it was typed: further decimals are shown where there are some. */
    String typed() {
        return decimals == 0 ? Look.GENERAL : amount() + "##";
    }

    /** A worked-out price for each unit: where it is small, two decimals more. */
    String price(double least, double most) {
        double minorUnits = Math.pow(10, CENTS - decimals);
        if (least < HALF_A_CENT * minorUnits && least > NumberFormats.NOISE) {
            return decimals == 0 ? fixed(2) : amount() + "##";
        }
        boolean small = least < TEN_CENTS * minorUnits && most < HUNDRED_CENTS * minorUnits;
        return small ? fixed(decimals + 2) : amount();
    }

    private static String fixed(int decimals) {
        return decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
    }
}
