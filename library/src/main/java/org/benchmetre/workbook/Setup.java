package org.benchmetre.workbook;

import java.util.List;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Page;

/**
 * What a workbook holds beside its workings, and how it is printed.
 *
 * @param pages pages in reading order; may be empty
 * @param heading a text line that stands at the top of every page, such as the year of the prices; null for none
 * @param paper what is printed on
 */
public record Setup(List<Page> pages, Line heading, Paper paper) {

    /** No pages: workings alone. */
    public static final Setup WORKINGS_ALONE = new Setup(List.of(), null, Paper.A4);

    /** Keeps the list as it is. */
    public Setup {
        pages = List.copyOf(pages);
    }
}
