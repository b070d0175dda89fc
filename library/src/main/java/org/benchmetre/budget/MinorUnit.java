package org.benchmetre.budget;

import java.util.Currency;

/** The smallest part of a currency that is paid, by ISO 4217: cents of most, none of the yen, thousandths of some dinars. */
public final class MinorUnit {

    /** Where a code is no ISO 4217 currency. */
    private static final int USUAL = 2;

    private MinorUnit() {}

    /**
     * How many decimals an amount of money has.
     *
     * @param currency a code
     * @return 0 to 4; 2 where the code is no ISO 4217 currency, or one without a minor unit
     */
    public static int decimals(String currency) {
        return Currency.getAvailableCurrencies().stream()
                .filter(known -> known.getCurrencyCode().equals(currency))
                .mapToInt(Currency::getDefaultFractionDigits)
                .filter(digits -> digits >= 0)
                .findFirst()
                .orElse(USUAL);
    }
}
