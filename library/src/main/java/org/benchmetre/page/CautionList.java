package org.benchmetre.page;

import java.util.List;
import org.benchmetre.budget.Caution;

/**
 * What can hurt.
 *
 * @param title words above
 * @param all the cautions
 * @param inFull whole sentences, or the topics alone
 */
public record CautionList(String title, List<Caution> all, boolean inFull) implements Block {

    /** Keeps the list as it is. */
    public CautionList {
        all = List.copyOf(all);
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.cautions(this);
    }
}
