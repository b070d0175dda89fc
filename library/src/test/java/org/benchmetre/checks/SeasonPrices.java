package org.benchmetre.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;

/**
 * How prices move over the year, from the published prices of fourteen years in {@code season_prices.csv}: each price over the mean of its
 * year, the mean of that over the years, and all months together a mean of 1.
 */
public final class SeasonPrices {

    private static final List<String> YEARS =
            IntStream.rangeClosed(1980, 1993).mapToObj(Integer::toString).toList();

    private SeasonPrices() {}

    /** The index of a month, such as {@code Apr}, in a series. */
    public static double index(String series, String month) {
        Map<String, Double> months = new LinkedHashMap<>();
        List<CSVRecord> rows = rows(series);
        for (CSVRecord row : rows) {
            months.put(
                    row.get("month"),
                    YEARS.stream()
                            .filter(year -> !row.get(year).isEmpty())
                            .mapToDouble(year -> price(row, year) / mean(rows, year))
                            .average()
                            .orElseThrow());
        }
        return months.get(month)
                / months.values().stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow();
    }

    /** The same; empty where the series has no price of the month. */
    public static Optional<Double> printed(String series, String month) {
        return rows(series).stream().anyMatch(row -> row.get("month").equals(month))
                ? Optional.of(index(series, month))
                : Optional.empty();
    }

    private static double mean(List<CSVRecord> rows, String year) {
        return rows.stream()
                .filter(row -> !row.get(year).isEmpty())
                .mapToDouble(row -> price(row, year))
                .average()
                .orElseThrow();
    }

    private static double price(CSVRecord row, String year) {
        return Double.parseDouble(row.get(year));
    }

    private static List<CSVRecord> rows(String series) {
        try {
            return PublishedFiles.rows("season_prices.csv").stream()
                    .filter(row -> row.get("series").equals(series))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
