package org.benchmetre.page;

import org.benchmetre.budget.Line;

/**
 * A figure over steps of two entries, with the real values of both on the edges. The case that is the plan as entered is boxed; what is
 * below zero carries its sign.
 *
 * @param title words above
 * @param values along steps down and steps across
 * @param down the first entry at each step, along the steps down
 * @param across the second entry at each step, along the steps across
 * @param nowDown the first entry as entered, a single value of the same unit
 * @param nowAcross the second entry as entered
 */
public record CaseTable(String title, Line values, Line down, Line across, Line nowDown, Line nowAcross)
        implements Block {

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.cases(this);
    }
}
