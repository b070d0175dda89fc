package org.benchmetre.page;

import java.util.List;

/**
 * Blocks one below the other, in columns of their own.
 *
 * @param widths widths of the columns in letters; blocks take them from the left
 * @param blocks first to last
 */
public record Panel(List<Integer> widths, List<Block> blocks) {

    /** No panel at all. */
    public static final Panel NONE = new Panel(List.of(), List.of());

    /** Keeps the lists as they are. */
    public Panel {
        widths = List.copyOf(widths);
        blocks = List.copyOf(blocks);
    }

    /**
     * A panel of some columns.
     *
     * @param widths widths of the columns in letters
     * @param blocks first to last
     * @return the panel
     */
    public static Panel of(List<Integer> widths, Block... blocks) {
        return new Panel(widths, List.of(blocks));
    }
}
