package org.benchmetre.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One question of one reader and what answers it: sentences over the whole width, one or two panels side by side, and what stands below
 * both. It refers to lines and makes none.
 *
 * @param name of its sheet and on the console
 * @param question that it answers
 * @param kind answers or entries
 * @param head blocks over the whole width
 * @param panels one or two, side by side
 * @param foot blocks over the whole width, below
 */
public record Page(String name, String question, Kind kind, List<Block> head, Panels panels, List<Block> foot) {

    /** What a page is for. */
    public enum Kind {
        /** It answers a question. */
        ANSWER,
        /** It answers what is paid: money to the last coin. */
        PAYMENT,
        /** It holds what is entered. */
        ENTRIES
    }

    /** Keeps the lists as they are. */
    public Page {
        head = List.copyOf(head);
        foot = List.copyOf(foot);
    }

    /**
     * A page that answers a question.
     *
     * @param name of its sheet
     * @param question that it answers
     * @return an empty page, to be filled by the methods below
     */
    public static Page answer(String name, String question) {
        return new Page(name, question, Kind.ANSWER, List.of(), Panels.NONE, List.of());
    }

    /**
     * A page that answers what is paid.
     *
     * @param name of its sheet
     * @param question that it answers
     * @return an empty page, to be filled by the methods below
     */
    public static Page payment(String name, String question) {
        return new Page(name, question, Kind.PAYMENT, List.of(), Panels.NONE, List.of());
    }

    /**
     * A page of entries.
     *
     * @param name of its sheet
     * @param question what is entered there
     * @return an empty page, to be filled by the methods below
     */
    public static Page entries(String name, String question) {
        return new Page(name, question, Kind.ENTRIES, List.of(), Panels.NONE, List.of());
    }

    /**
     * The same page with blocks over the whole width, above.
     *
     * @param blocks first to last
     * @return the page
     */
    public Page head(Block... blocks) {
        return new Page(name, question, kind, List.of(blocks), panels, foot);
    }

    /**
     * The same page with a first panel.
     *
     * @param widths widths of its columns in letters
     * @param blocks first to last
     * @return the page
     */
    public Page left(List<Integer> widths, Block... blocks) {
        return new Page(name, question, kind, head, new Panels(Panel.of(widths, blocks), right()), foot);
    }

    /**
     * The same page with a second panel.
     *
     * @param widths widths of its columns in letters
     * @param blocks first to last
     * @return the page
     */
    public Page right(List<Integer> widths, Block... blocks) {
        return new Page(name, question, kind, head, new Panels(left(), Panel.of(widths, blocks)), foot);
    }

    /**
     * The same page with blocks over the whole width, below.
     *
     * @param blocks first to last
     * @return the page
     */
    public Page foot(Block... blocks) {
        return new Page(name, question, kind, head, panels, List.of(blocks));
    }

    /**
     * The first panel.
     *
     * @return {@link Panel#NONE} where there is none
     */
    public Panel left() {
        return panels.left();
    }

    /**
     * The second panel.
     *
     * @return {@link Panel#NONE} where there is none
     */
    public Panel right() {
        return panels.right();
    }

    /**
     * Every block, as one reads.
     *
     * @return head, first panel, second panel, foot
     */
    public List<Block> blocks() {
        List<Block> all = new ArrayList<>(head);
        Stream.of(left(), right()).forEach(panel -> all.addAll(panel.blocks()));
        all.addAll(foot);
        return List.copyOf(all);
    }
}
