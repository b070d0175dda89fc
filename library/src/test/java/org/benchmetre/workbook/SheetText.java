package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet as a spreadsheet program writes it with commas: texts in quotes, numbers bare and in full. What is neither, such as an
 * error, is kept as a text.
 */
final class SheetText {

    private final String text;
    private final List<List<Object>> rows = new ArrayList<>(List.of(new ArrayList<>()));
    private int at;

    private SheetText(String text) {
        this.text = text;
    }

    /** The cells by row: Doubles and Strings, an empty cell as an empty String. */
    static List<List<Object>> rows(String text) {
        SheetText sheet = new SheetText(text);
        while (sheet.at < text.length()) {
            sheet.cell();
        }
        return sheet.rows;
    }

    private void cell() {
        List<Object> row = rows.get(rows.size() - 1);
        row.add(text.charAt(at) == '"' ? quoted() : bare());
        if (at < text.length() && text.charAt(at) == '\n') {
            rows.add(new ArrayList<>());
        }
        at++;
    }

    private String quoted() {
        StringBuilder found = new StringBuilder();
        int end = text.indexOf('"', ++at);
        while (text.startsWith("\"\"", end)) {
            found.append(text, at, end + 1);
            at = end + 2;
            end = text.indexOf('"', at);
        }
        found.append(text, at, end);
        at = end + 1;
        return found.toString();
    }

    private Object bare() {
        int start = at;
        while (at < text.length() && text.charAt(at) != ',' && text.charAt(at) != '\n') {
            at++;
        }
        String found = text.substring(start, at);
        try {
            return found.isEmpty() ? "" : (Object) Double.valueOf(found);
        } catch (NumberFormatException noNumber) {
            return found;
        }
    }
}
