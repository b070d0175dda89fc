package org.benchmetre.page;

/** A part of a page. Whoever draws pages gives one method for each kind. */
public sealed interface Block
        permits Sentences,
                Levers,
                FigureList,
                Table,
                Across,
                CaseTable,
                Chart,
                FixedWords,
                EntryList,
                EntryTable,
                CautionList,
                Evidence {

    /**
     * What stands above it.
     *
     * @return a few words, or the empty text
     */
    String title();

    /**
     * Hands this block to the method that fits it.
     *
     * @param visitor what to do
     * @param <R> what the visitor answers
     * @return the visitor's answer
     */
    <R> R show(BlockVisitor<R> visitor);
}
