package org.benchmetre.page;

/**
 * What to do with each kind of block.
 *
 * @param <R> what is answered
 */
public interface BlockVisitor<R> {

    /**
     * Live sentences, one a row.
     *
     * @param block the sentences
     * @return the answer
     */
    R sentences(Sentences block);

    /**
     * Entries to change here.
     *
     * @param block the levers
     * @return the answer
     */
    R levers(Levers block);

    /**
     * Single figures, one a row.
     *
     * @param block the figures
     * @return the answer
     */
    R figures(FigureList block);

    /**
     * One row for each row of an axis.
     *
     * @param block the table
     * @return the answer
     */
    R table(Table block);

    /**
     * One column for each row of an axis.
     *
     * @param block the table
     * @return the answer
     */
    R across(Across block);

    /**
     * A figure over steps of two entries.
     *
     * @param block the table
     * @return the answer
     */
    R cases(CaseTable block);

    /**
     * A picture.
     *
     * @param block the picture
     * @return the answer
     */
    R chart(Chart block);

    /**
     * Words that never change.
     *
     * @param block the words
     * @return the answer
     */
    R words(FixedWords block);

    /**
     * Single entries, one a row.
     *
     * @param block the list
     * @return the answer
     */
    R entries(EntryList block);

    /**
     * The entries of a table, one row for each row of its axis.
     *
     * @param block the table
     * @return the answer
     */
    R entryTable(EntryTable block);

    /**
     * What can hurt.
     *
     * @param block the list
     * @return the answer
     */
    R cautions(CautionList block);

    /**
     * How many entries come from which kind of source.
     *
     * @param block the count
     * @return the answer
     */
    R evidence(Evidence block);
}
