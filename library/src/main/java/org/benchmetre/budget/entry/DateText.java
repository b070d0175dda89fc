package org.benchmetre.budget.entry;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.regex.Pattern;

/** Days of the calendar as texts: year, month and day by ISO 8601, which sort as texts as they do in time. */
final class DateText {

    private static final Pattern DIGITS = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final int FIRST_YEAR = 1990;
    private static final int LAST_YEAR = 2100;

    static final String FORM =
            "a date written year-month-day, such as 2026-03-31, of the years " + FIRST_YEAR + " to " + LAST_YEAR + ",";

    private DateText() {}

    static boolean isFit(String text) {
        if (!DIGITS.matcher(text).matches()) {
            return false;
        }
        try {
            int year = LocalDate.parse(text).getYear();
            return year >= FIRST_YEAR && year <= LAST_YEAR;
        } catch (DateTimeParseException e) {
            return false;
        }
    }
}
