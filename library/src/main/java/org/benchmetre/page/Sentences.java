package org.benchmetre.page;

import java.util.List;

/**
 * Live sentences, one a row.
 *
 * @param rows first to last
 */
public record Sentences(List<Sentence> rows) implements Block {

    /** Keeps the list as it is. */
    public Sentences {
        rows = List.copyOf(rows);
    }

    @Override
    public String title() {
        return "";
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.sentences(this);
    }
}
