package org.benchmetre.scenario;

import java.nio.file.Path;
import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

/**
 * A price list that several scenarios may share: {@code item,pack,unit,price,price_year,source} and, if need be,
 * {@code currency}. Which items a scenario uses, and whether the units fit, is not known here.
 */
public final class PriceList {

    private static final List<String> CURRENCIES = List.copyOf(currencies());

    private final Map<String, Price> prices = new LinkedHashMap<>();
    private final Map<String, Row> firstRows = new LinkedHashMap<>();
    private final Faults faults;

    private PriceList(Faults faults) {
        this.faults = faults;
    }

    /**
     * Reads a price list.
     *
     * @param path the CSV file
     * @param faults where everything wrong with it is reported, repeated items included
     * @return the prices of the rows without faults
     */
    public static PriceList read(Path path, Faults faults) {
        PriceList list = new PriceList(faults);
        Table table = Table.read(path, faults);
        table.requireColumns("item", "pack", "unit", "price", "price_year", "source");
        table.allowColumns("currency");
        table.rows().forEach(list::add);
        table.warnUnaskedColumns(faults);
        return list;
    }

    private void add(Row row) {
        int before = faults.size();
        Price price = priceOf(row);
        Row first = price.item().isEmpty() ? null : firstRows.putIfAbsent(price.item(), row);
        if (first != null) {
            faults.add(
                    row.place("item"),
                    Fault.quoted(price.item()) + ", which row " + first.rowNumber() + " has already",
                    "each item once");
        }
        if (faults.size() == before) {
            prices.put(price.item(), price);
        }
    }

    private Price priceOf(Row row) {
        return new Price(
                row.key("item", faults),
                row.number("pack", Bounds.above(0), "units in a pack", faults),
                row.label("unit", true, faults),
                row.number("price", Bounds.atLeast(0), "money per pack", faults),
                row.year("price_year", faults),
                row.label("source", "", false, faults),
                currencyOf(row),
                row);
    }

    private String currencyOf(Row row) {
        String code = row.text("currency").toUpperCase(Locale.ROOT);
        if (!code.isEmpty() && !CURRENCIES.contains(code)) {
            faults.add(
                    row.place("currency"), Fault.quoted(row.text("currency")), "an ISO 4217 currency code such as EUR");
            return "";
        }
        return code;
    }

    private static TreeSet<String> currencies() {
        TreeSet<String> codes = new TreeSet<>();
        Currency.getAvailableCurrencies().forEach(currency -> codes.add(currency.getCurrencyCode()));
        return codes;
    }

    /**
     * The prices by item.
     *
     * @return in the order of the file, unchangeable
     */
    public Map<String, Price> prices() {
        return Collections.unmodifiableMap(prices);
    }
}
