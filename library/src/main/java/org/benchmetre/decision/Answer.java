package org.benchmetre.decision;

import java.util.List;

/**
 * Where a difference crosses zero, by the value of an entry, in the unit of the entry's line: a {@link Crossing}, several, or none.
 * Through whole packs and whole zones a difference may jump across zero without ever being zero.
 */
public sealed interface Answer permits Crossing, Answer.Several, Answer.None {

    /**
     * More than one crossing.
     *
     * @param crossings from the least value of the entry to the greatest
     */
    record Several(List<Crossing> crossings) implements Answer {

        /** Keeps its own copy of the list. */
        public Several {
            crossings = List.copyOf(crossings);
        }
    }

    /**
     * No crossing in the range.
     *
     * @param lesser the side that stays the lesser; neither when both are the same all over, unknown when there was no finite number
     */
    record None(Lesser lesser) implements Answer {}
}
