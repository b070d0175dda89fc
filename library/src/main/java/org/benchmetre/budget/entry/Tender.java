package org.benchmetre.budget.entry;

import java.util.Currency;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which currencies a plan can be in: those that are the money of some country today, by the tables of the Java runtime (ISO 4217 list
 * one, by ISO 3166 countries). Codes for testing, for no currency, for metals and units of account, and currencies that were
 * withdrawn, such as XTS, XXX, XAU and DEM, belong to no country and are left out.
 */
public final class Tender {

    private static final Set<String> CODES = Stream.of(Locale.getISOCountries())
            .map(country -> Currency.getInstance(new Locale("", country)))
            .filter(Objects::nonNull)
            .filter(currency -> currency.getDefaultFractionDigits() >= 0)
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toUnmodifiableSet());

    private Tender() {}

    /**
     * Whether a code is a currency that somebody pays with.
     *
     * @param code a code in capitals
     * @return false for anything else
     */
    public static boolean isTender(String code) {
        return CODES.contains(code);
    }

    /**
     * Whether a code stands for money at all, in use or not.
     *
     * @param code a code in capitals
     * @return true for every code of ISO 4217 that the Java runtime knows
     */
    static boolean isCode(String code) {
        return Currency.getAvailableCurrencies().stream()
                .anyMatch(known -> known.getCurrencyCode().equals(code));
    }
}
