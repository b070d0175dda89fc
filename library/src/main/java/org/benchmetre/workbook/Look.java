package org.benchmetre.workbook;

/**
 * How a cell looks and whether it can be typed in. Equal looks share one style.
 *
 * @param role what the cell is for
 * @param format number format of the spreadsheet
 * @param literal whether a text that looks like a formula is marked as text
 * @param shrinks whether a number is drawn smaller where the column is narrow
 */
record Look(Role role, String format, boolean literal, boolean shrinks) {

    /** Signs that begin a formula or mark a text, their wide forms included. */
    private static final String BEGINNINGS = "=+-@'\t\r\uFF1D\uFF0B\uFF0D\uFF20";

    static final String GENERAL = "General";
    static final String TEXT = "@";

    /** What a cell is for. */
    enum Role {
        /** Title of a sheet. */
        TITLE,
        /** Heading of a schedule. */
        HEADING,
        /** Name of a block under a heading. */
        BLOCK,
        /** Sentences under a heading. */
        NOTE,
        /** Header of a column of words. */
        HEAD,
        /** Header of a column of numbers. */
        HEAD_NUMBER,
        /** Unit in the row under the header. */
        HEAD_UNIT,
        /** Label, unit, source. */
        WORDS,
        /** A number to type. */
        ENTRY,
        /** A text to type. */
        ENTRY_TEXT,
        /** A number that is computed. */
        FIGURE,
        /** A number that is computed, or the reason why there is none. */
        FIGURE_OR_REASON,
        /** A number found by a search, or the reason why there is none: stands as it was filled. */
        SOLVED,
        /** A text that is computed. */
        FIGURE_TEXT,
        /** A usual bound or the like: a number of less weight. */
        USUAL,
        /** The sentence that answers a page's question. */
        LEAD,
        /** A sentence on a page. */
        SENTENCE,
        /** A sentence that something is missing or wrong. */
        ALERT,
        /** A sentence that is empty as written. */
        UNSAID,
        /** A heading inside a table. */
        SECTION,
        /** What a row of a page is called. */
        LABEL,
        /** The same of a sum. */
        LABEL_TOTAL,
        /** A number or text on a page. */
        NUMBER,
        /** The same of a sum. */
        NUMBER_TOTAL,
        /** The unit of a row. */
        UNIT,
        /** The same of a sum. */
        UNIT_TOTAL,
        /** What stands at the right of the title. */
        ASIDE,
        /** What stands beside a link. */
        ASIDE_LEFT,
        /** A word that leads to a page. */
        LINK;

        /** Whether an empty cell is seen. */
        boolean isFilled() {
            return isEntry()
                    || this == HEAD
                    || this == HEAD_NUMBER
                    || this == HEAD_UNIT
                    || this == LABEL_TOTAL
                    || this == NUMBER_TOTAL
                    || this == UNIT_TOTAL;
        }

        /** How wide its letters are against usual ones: larger and bold ones take more room. */
        double letters() {
            return switch (this) {
                case TITLE -> 1.7;
                case LEAD -> 1.3;
                case HEADING -> 1.2;
                case HEAD, HEAD_NUMBER, BLOCK, SECTION, LABEL_TOTAL, NUMBER_TOTAL -> 1.08;
                default -> 1;
            };
        }

        boolean isEntry() {
            return this == ENTRY || this == ENTRY_TEXT;
        }
    }

    static Look of(Role role) {
        return new Look(role, GENERAL, false, false);
    }

    static Look number(Role role, String format) {
        return new Look(role, format, false, false);
    }

    /** The same for a column that may be narrow. */
    Look shrinking() {
        return new Look(role, format, literal, true);
    }

    /** The look of a text that may come from anyone. */
    static Look text(Role role, String text) {
        String format = role == Role.ENTRY_TEXT ? TEXT : GENERAL;
        return new Look(role, format, !text.isEmpty() && BEGINNINGS.indexOf(text.charAt(0)) >= 0, false);
    }
}
