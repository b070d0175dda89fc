package org.benchmetre.page;

/**
 * How many entries come from which kind of source, as written.
 *
 * @param title words above
 */
public record Evidence(String title) implements Block {

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.evidence(this);
    }
}
