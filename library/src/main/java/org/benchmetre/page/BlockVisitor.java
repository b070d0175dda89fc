package org.benchmetre.page;

/**
 * What to do with each kind of block.
 *
 * @param <R> what is answered
 */
public interface BlockVisitor<R> {

    /** Live sentences, one a row. */
    R sentences(Sentences block);

    /** Entries to change here. */
    R levers(Levers block);

    /** Single figures, one a row. */
    R figures(FigureList block);

    /** One row for each row of an axis. */
    R table(Table block);

    /** One column for each row of an axis. */
    R across(Across block);

    /** A figure over steps of two entries. */
    R cases(CaseTable block);

    /** A picture. */
    R chart(Chart block);

    /** Words that never change. */
    R words(FixedWords block);

    /** Single entries, one a row. */
    R entries(EntryList block);

    /** The entries of a table, one row for each row of its axis. */
    R entryTable(EntryTable block);

    /** What can hurt. */
    R cautions(CautionList block);

    /** How many entries come from which kind of source. */
    R evidence(Evidence block);
}
