package org.benchmetre.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.Tender;
import org.benchmetre.budget.entry.TextForm;

/** Reads title, currency and crop of a plan: rows {@code plan_title}, {@code plan_currency}, {@code plan_crop} of single values. */
final class HeadingReader {

    static final String TITLE = "plan_title";
    static final String CURRENCY = "plan_currency";
    static final String CROP = "plan_crop";

    private static final String USUAL = "USD";

    private HeadingReader() {}

    /** The heading; the scenario's own name and dollars where it says nothing. */
    static Heading read(
            ScenarioTables tables,
            String usualCrop,
            Predicate<String> isCrop,
            List<WordChoice> choices,
            Faults faults) {
        String title = readable(Quoted.visible(tables.name()));
        String currency = USUAL;
        String crop = usualCrop;
        for (Row row : tables.table(Home.SINGLE).rows()) {
            String line = Phrases.folded(row.text(SingleRows.LINE));
            String value = row.text(SingleRows.VALUE);
            if (line.equals(TITLE) && !value.isEmpty()) {
                title = title(row, value, faults);
            } else if (line.equals(CURRENCY)) {
                currency = currency(row, value, faults);
            } else if (line.equals(CROP) && isCrop.test(value)) {
                crop = value;
            } else if (line.equals(CROP)) {
                String expected = "a crop that is documented, such as " + usualCrop + ", for " + CROP;
                faults.add(row.place(SingleRows.VALUE), Quoted.text(value), expected);
            }
        }
        return new Heading(title, currency, crop, chosen(tables.table(Home.SINGLE), choices, faults));
    }

    private static Map<String, String> chosen(CsvTable single, List<WordChoice> choices, Faults faults) {
        Map<String, String> chosen = new LinkedHashMap<>();
        for (WordChoice choice : choices) {
            Optional<Row> row = single.rows().stream()
                    .filter(each -> Phrases.folded(each.text(SingleRows.LINE)).equals(choice.line()))
                    .filter(each -> !each.isBlank(SingleRows.VALUE))
                    .findFirst();
            String word =
                    row.map(each -> Phrases.folded(each.text(SingleRows.VALUE))).orElse(choice.otherwise(chosen));
            String expected = choice.expected(word, chosen);
            if (!expected.isEmpty()) {
                row.ifPresent(each ->
                        faults.add(each.place(SingleRows.VALUE), Quoted.text(each.text(SingleRows.VALUE)), expected));
                word = choice.otherwise(chosen);
            }
            chosen.put(choice.line(), word);
        }
        return chosen;
    }

    private static String title(Row row, String value, Faults faults) {
        if (!TextForm.NAME.isFit(value)) {
            faults.add(row.place(SingleRows.VALUE), Quoted.text(value), TextForm.NAME.expected() + " for " + TITLE);
        }
        return value;
    }

    private static String currency(Row row, String code, Faults faults) {
        if (!Tender.isTender(code)) {
            String expected = "an ISO 4217 code in capitals of money in use, such as EUR, for " + CURRENCY;
            faults.add(row.place(SingleRows.VALUE), Quoted.text(code), expected);
            return USUAL;
        }
        return code;
    }

    private static String readable(String name) {
        String words = name.trim().replace('_', ' ').replace('-', ' ');
        return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
