package org.benchmetre.decision;

/** Which of the two sides of a difference is the lesser: the better one of two costs, the worse one of two incomes. */
public enum Lesser {
    /** The left side, or the difference is below zero. */
    LEFT,
    /** The right side, or the difference is above zero. */
    RIGHT,
    /** Neither: they are the same. */
    NEITHER,
    /** Not known: outside the range that was searched, or nowhere a finite number. */
    UNKNOWN
}
