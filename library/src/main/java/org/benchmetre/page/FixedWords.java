package org.benchmetre.page;

/**
 * Words that never change.
 *
 * @param title words above, or the empty text
 * @param text a sentence or two
 * @param tone how loud
 */
public record FixedWords(String title, String text, Tone tone) implements Block {

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.words(this);
    }
}
