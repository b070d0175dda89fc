package org.benchmetre.workbook;

import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.TextForm;

/** How wide columns of entries are on a page, in letters: by what they hold and by the words of their headings. */
final class EntryWidths {

    private static final int SOURCE = 40;
    private static final double WIDEST_TEXT = 20;
    /** Letters of a date, counted in full since a program breaks it at its hyphens where it has less room. */
    private static final double DATE = 10;
    /** Letters that the edges of a cell take. */
    private static final double EDGES = 2.2;

    private final Budget budget;
    private final Homes homes;
    private final NumberFormats formats;

    EntryWidths(Budget budget, Homes homes, NumberFormats formats) {
        this.budget = budget;
        this.homes = homes;
        this.formats = formats;
    }

    /** How wide an entry column is, by what it holds and the longest word of its heading. */
    int ofLongest(Line line, String heading) {
        if (ColumnWidths.isSource(line)) {
            return SOURCE;
        }
        double longest = budget.given(line).stream()
                .filter(Given::filled)
                .mapToDouble(
                        given -> Letters.width(isText(line) ? homes.onPage(line, given.text()) : typed(line, given)))
                .max()
                .orElse(0);
        return within(longestWord(heading), Math.max(longest, least(line)));
    }

    /** Whether nothing is typed in any row of a column. */
    boolean isEmpty(Line line) {
        return budget.given(line).stream()
                .allMatch(
                        given -> !given.filled() || isText(line) && given.text().isEmpty());
    }

    /** Letters that the longest word of a column takes, in its heading or its texts, so that none is broken. */
    int ofWords(Line line, String heading) {
        return within(longestWord(heading), Math.max(longestWordOf(line), least(line)));
    }

    private double longestWordOf(Line line) {
        return budget.given(line).stream()
                .filter(given -> isText(line))
                .flatMap(given -> Stream.of(homes.onPage(line, given.text()).split("\\s+")))
                .mapToDouble(Letters::width)
                .max()
                .orElse(0);
    }

    /** Room that is kept for what somebody may type. */
    private double least(Line line) {
        boolean isDate = budget.entry(line).orElseThrow().form().equals(TextForm.DATE);
        return isDate ? DATE : 0;
    }

    private static double longestWord(String heading) {
        return Stream.of(heading.split("\\s+"))
                        .mapToDouble(Letters::width)
                        .max()
                        .orElse(0)
                * Look.Role.HEAD.letters();
    }

    private static int within(double heading, double longest) {
        return (int) Math.ceil(Math.min(WIDEST_TEXT, Math.max(heading, longest)) + EDGES);
    }

    private static boolean isText(Line line) {
        return line.kind() == Kind.TEXT;
    }

    private String typed(Line line, Given given) {
        return formats.decimals(line).written(NumberFormats.inCell(line, given));
    }
}
