package org.benchmetre.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * One row of a table, read cell by cell. Asking for a column makes it known, see {@link Table#warnUnaskedColumns}.
 *
 * <p>A cell that is not as asked adds one fault and gives a value that says so: NaN for a number, 0 for a year, empty
 * text for all else. Whoever compares cells with each other should leave those out, so that one fault does not cause
 * another. Where no fallback is given, a blank cell is a fault; where a column may be blank without any meaning of its
 * own, ask {@link #isBlank} first.
 */
public final class Row {

    private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9_]*");
    private static final String KEY_FORM = "a letter a to z, then letters, digits and underscores";
    private static final Pattern YEAR = Pattern.compile("[0-9]{4}");
    private static final Bounds YEARS = Bounds.between(1990, 2100);
    private static final int LISTED = 20;

    private final Table table;
    private final int row;
    private final List<String> cells;

    Row(Table table, int row, List<String> cells) {
        this.table = table;
        this.row = row;
        this.cells = List.copyOf(cells);
    }

    /**
     * The number a spreadsheet program shows beside the row.
     *
     * @return 2 or more when the header is the first line of the file
     */
    public int rowNumber() {
        return row;
    }

    /**
     * Where a cell stands.
     *
     * @param column name in lower case; empty for the whole row
     * @return its place, whether or not the column exists
     */
    public Place place(String column) {
        return new Place(table.file(), row, column);
    }

    /**
     * The text of a cell.
     *
     * @param column name in lower case
     * @return trimmed text; empty when the cell is blank, or the row or the header ends before it
     */
    public String text(String column) {
        return table.cell(cells, column);
    }

    /**
     * Whether a cell has nothing in it but spaces.
     *
     * @param column name in lower case
     * @return true also when the column does not exist
     */
    public boolean isBlank(String column) {
        return text(column).isEmpty();
    }

    /**
     * A key: letters a to z, digits and underscores, beginning with a letter; capitals are folded to lower case.
     *
     * @param column name in lower case
     * @param faults where a blank or badly formed key is reported
     * @return the key; empty after a fault
     */
    public String key(String column, Faults faults) {
        String key = Words.folded(text(column));
        if (!KEY.matcher(key).matches()) {
            return refused(column, "a key: " + KEY_FORM, faults);
        }
        return key;
    }

    /**
     * Any number of keys separated by spaces. A key that is repeated counts once.
     *
     * @param column name in lower case
     * @param faults where badly formed keys are reported, one fault for the cell
     * @return the well-formed keys in the order of the cell; empty when the cell is blank
     */
    public List<String> keys(String column, Faults faults) {
        if (isBlank(column)) {
            return List.of();
        }
        List<String> keys =
                new ArrayList<>(Arrays.asList(Words.folded(text(column)).split("[\\s\\p{Zs}]+")));
        if (keys.removeIf(Predicate.not(KEY.asMatchPredicate()))) {
            refused(column, "keys separated by spaces, each " + KEY_FORM, faults);
        }
        return keys.stream().distinct().toList();
    }

    /**
     * A number that must be given.
     *
     * @param column name in lower case
     * @param bounds the range it must lie in
     * @param unitWords its unit for messages, such as {@code EUR per pack}; may be empty
     * @param faults where a blank cell, text that is not a number, or a number outside the range is reported
     * @return the number, never -0.0; NaN after a fault
     */
    public double number(String column, Bounds bounds, String unitWords, Faults faults) {
        return number(column, bounds, unitWords, Double.NaN, faults);
    }

    /**
     * A number: optional sign, digits, one decimal mark with digits behind it (a point, in semicolon files a comma),
     * optional exponent. Anything else is a fault, thousands separators, {@code NaN} and infinities included.
     *
     * @param column name in lower case
     * @param bounds the range it must lie in; the fallback need not
     * @param unitWords its unit for messages, such as {@code EUR per pack}; may be empty
     * @param fallback what a blank cell means; NaN makes a blank cell a fault
     * @param faults where text that is not a number, or a number outside the range is reported
     * @return the number, never -0.0; NaN after a fault
     */
    public double number(String column, Bounds bounds, String unitWords, double fallback, Faults faults) {
        String text = text(column);
        if (text.isEmpty() && !Double.isNaN(fallback)) {
            return fallback;
        }
        double value = NumberText.parse(text, table.decimalComma());
        if (!bounds.contains(value)) {
            String unit = unitWords.isEmpty() ? "" : " (" + unitWords + ")";
            boolean outOfRange = Double.isFinite(value);
            String hint = outOfRange ? "" : NumberText.hint(text, table.decimalComma());
            refused(column, bounds.of("a number") + unit + hint, faults);
            return Double.NaN;
        }
        return value;
    }

    /**
     * A calendar year from 1990 to 2100 that must be given.
     *
     * @param column name in lower case
     * @param faults where a blank cell or anything but such a year is reported
     * @return the year; 0 after a fault
     */
    public int year(String column, Faults faults) {
        String text = text(column);
        if (!YEAR.matcher(text).matches() || !YEARS.contains(Integer.parseInt(text))) {
            refused(column, "a year from 1990 to 2100", faults);
            return 0;
        }
        return Integer.parseInt(text);
    }

    /**
     * A calendar year from 1990 to 2100.
     *
     * @param column name in lower case
     * @param fallback what a blank cell means
     * @param faults where anything but such a year is reported
     * @return the year; 0 after a fault
     */
    public int year(String column, int fallback, Faults faults) {
        return isBlank(column) ? fallback : year(column, faults);
    }

    /**
     * One of several words, capitals or not, that must be given.
     *
     * @param column name in lower case
     * @param allowed the words; may be empty, then every text is a fault
     * @param faults where a blank cell or any other word is reported, with the words allowed and the nearest of them
     * @return the word as it is spelt in {@code allowed}; empty after a fault
     */
    public String choice(String column, List<String> allowed, Faults faults) {
        String wanted = Words.folded(text(column));
        return allowed.stream()
                .filter(word -> Words.folded(word).equals(wanted))
                .findFirst()
                .orElseGet(() -> refused(column, oneOf(allowed, wanted), faults));
    }

    /**
     * One of several words, capitals or not.
     *
     * @param column name in lower case
     * @param allowed the words; may be empty, then every text is a fault
     * @param fallback what a blank cell means; need not be among the words
     * @param faults where any other word is reported, with the words allowed and the nearest of them
     * @return the word as it is spelt in {@code allowed}; empty after a fault
     */
    public String choice(String column, List<String> allowed, String fallback, Faults faults) {
        return isBlank(column) ? fallback : choice(column, allowed, faults);
    }

    private static String oneOf(List<String> allowed, String wanted) {
        if (allowed.isEmpty()) {
            return "a blank cell, as there is nothing to choose from";
        }
        String question = NearNames.didYouMean(wanted, allowed);
        String words = allowed.size() <= LISTED
                ? Words.joined(allowed.stream().map(Words::quoted).toList(), "or")
                : "one of " + allowed.size() + " known words";
        return words + (question.isEmpty() ? "" : " (" + question + ")");
    }

    /**
     * Free text that must be given, see {@link #label(String, String, boolean, Faults)}.
     *
     * @param column name in lower case
     * @param lookup whether spreadsheet formulas will look the text up
     * @param faults where blank or unfit text is reported
     * @return the text; empty after a fault
     */
    public String label(String column, boolean lookup, Faults faults) {
        String text = text(column).replace("\r\n", "\n").replace('\r', '\n');
        if (text.isEmpty() || !LabelText.isFit(text, lookup)) {
            return refused(column, LabelText.form(lookup), faults);
        }
        return text;
    }

    /**
     * Free text. Line breaks and tabs are kept, line breaks as line feeds; other control characters are faults. Text
     * that formulas look up must be on one line, have at most 255 characters, and be free of {@code * ? ~ < > = "},
     * which spreadsheet programs take for patterns and comparisons.
     *
     * @param column name in lower case
     * @param fallback what a blank cell means
     * @param lookup whether spreadsheet formulas will look the text up
     * @param faults where unfit text is reported
     * @return the text; empty after a fault
     */
    public String label(String column, String fallback, boolean lookup, Faults faults) {
        return isBlank(column) ? fallback : label(column, lookup, faults);
    }

    private String refused(String column, String expected, Faults faults) {
        faults.add(place(column), Fault.quoted(text(column)), expected);
        return "";
    }
}
