package org.benchmetre.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.xssf.model.SharedStringsTable;

/** The texts of all cells, each kept once and known by its number. */
final class SharedTexts extends SharedStringsTable {

    private static final String NAMESPACE = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private int uses;

    /** The number of a text, from 0 in order of first use. */
    int numberOf(String text) {
        uses++;
        return numbers.computeIfAbsent(text, fresh -> numbers.size());
    }

    /** Writes the part of the workbook that holds the texts. */
    @Override
    public void writeTo(OutputStream out) throws IOException {
        StringBuilder markup = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<sst xmlns=\"")
                .append(NAMESPACE)
                .append("\" count=\"")
                .append(uses)
                .append("\" uniqueCount=\"")
                .append(numbers.size())
                .append("\">");
        for (String text : numbers.keySet()) {
            markup.append("<si><t xml:space=\"preserve\">");
            Markup.text(markup, text);
            markup.append("</t></si>");
        }
        out.write(markup.append("</sst>").toString().getBytes(StandardCharsets.UTF_8));
    }
}
