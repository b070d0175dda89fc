package org.benchmetre.farm.input;

import java.util.Currency;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.benchmetre.scenario.FarmFile;
import org.benchmetre.scenario.FarmRow;
import org.benchmetre.scenario.Faults;

/**
 * What a scenario says of itself in {@code farm.csv}, beside its entries.
 *
 * @param title the words on top of every sheet, row {@code plan_title}; the name of the folder when left out
 * @param currency ISO 4217 code of all money, row {@code plan_currency}; USD when left out
 */
public record Settings(String title, String currency) {

    private static final String USUAL = "USD";

    /**
     * Reads the settings.
     *
     * @param farm the file
     * @param folder name of the folder
     * @param faults where faults are collected
     * @return the settings
     */
    public static Settings of(FarmFile farm, String folder, Faults faults) {
        String title = farm.take("plan_title")
                .map(row -> row.row().label("value", false, faults))
                .filter(words -> !words.isEmpty())
                .orElse(Columns.readable(folder.replace('-', '_')));
        Optional<FarmRow> row = farm.take("plan_currency");
        return new Settings(title, row.map(r -> currency(r, faults)).orElse(USUAL));
    }

    private static String currency(FarmRow row, Faults faults) {
        String code = row.value().trim();
        if (!codes().contains(code)) {
            faults.add(
                    row.row().place("value"), "\"" + code + "\"", "an ISO 4217 currency code in capitals, such as EUR");
            return USUAL;
        }
        return code;
    }

    private static Set<String> codes() {
        Set<String> codes = new TreeSet<>();
        Currency.getAvailableCurrencies().forEach(currency -> codes.add(currency.getCurrencyCode()));
        return codes;
    }
}
