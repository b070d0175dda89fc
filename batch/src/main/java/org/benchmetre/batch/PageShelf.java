package org.benchmetre.batch;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchmetre.budget.entry.NearNames;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.page.Page;

/**
 * Pages by the names under which a console knows them: those of their sheets in lower case, with dashes for spaces.
 *
 * @param pages in reading order, the one that is printed unless another is asked for first
 */
record PageShelf(List<Page> pages) {

    /** What stands for every page. */
    static final String ALL = "all";

    private static final String BETWEEN = "\n" + "=".repeat(TextTable.WIDTH) + "\n\n";

    PageShelf {
        pages = List.copyOf(pages);
    }

    /** A page as text, or every page, and cautions; empty where none has the name. */
    Optional<String> drawn(String name, PageText drawer) {
        List<Page> asked =
                folded(name).equals(ALL) ? pages : found(name).stream().toList();
        return asked.isEmpty()
                ? Optional.empty()
                : Optional.of(asked.stream().map(drawer::of).collect(Collectors.joining(BETWEEN))
                        + drawer.cautionsBelow(asked));
    }

    /** The name of the first page. */
    String first() {
        return key(pages.get(0));
    }

    /** A sentence that tells that no page has a name, and which there are. */
    String missing(String name) {
        String near = NearNames.didYouMean(folded(name), names());
        return "There is no page " + Quoted.always(name) + (near.isEmpty() ? "" : ", " + near)
                + (near.isEmpty() ? ". " : " ") + "Pages: " + String.join(", ", names()) + ".";
    }

    /** A line or two that name all pages but one. */
    String others(String name) {
        return others(name, "Other pages (--page NAME): ");
    }

    /** The same behind other words. */
    String others(String name, String lead) {
        List<Page> entered =
                pages.stream().filter(page -> page.kind() == Page.Kind.ENTRIES).toList();
        String others = Stream.concat(
                        pages.stream()
                                .filter(page -> !entered.contains(page) || page == entered.get(0))
                                .map(page -> told(page, entered)),
                        Stream.of(ALL))
                .filter(other -> !other.equals(folded(name)))
                .collect(Collectors.joining(", "));
        return TextTable.wrapped(lead + others + "; or --csv.");
    }

    /** A page by its name; tables of entries are told with the first of them, which lists what is typed. */
    private static String told(Page page, List<Page> entered) {
        boolean isFirst = !entered.isEmpty() && page == entered.get(0) && entered.size() > 1;
        return isFirst ? key(page) + " (+ " + (entered.size() - 1) + " tables)" : key(page);
    }

    private Optional<Page> found(String name) {
        return pages.stream().filter(page -> key(page).equals(folded(name))).findFirst();
    }

    /** Every name that may be typed. */
    private List<String> names() {
        return Stream.concat(pages.stream().map(PageShelf::key), Stream.of(ALL)).toList();
    }

    private static String key(Page page) {
        return folded(page.name());
    }

    private static String folded(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
    }
}
