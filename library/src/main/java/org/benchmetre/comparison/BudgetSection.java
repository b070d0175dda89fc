package org.benchmetre.comparison;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A section of the enterprise budget. */
enum BudgetSection {
    /** What fruit brings. */
    RECEIPTS("receipt", "Receipts"),
    /** What the season takes. */
    OPERATING("operating", "Operating costs"),
    /** What owning takes: capital recovery, insurance, property tax. */
    OWNERSHIP("ownership", "Ownership costs"),
    /** What comes with the farm and not with the crop. */
    OVERHEAD("overhead", "Overhead");

    private final String kind;
    private final String label;

    BudgetSection(String kind, String label) {
        this.kind = kind;
        this.label = label;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    String label() {
        return label;
    }

    /** The section whose rows a scenario's budget marks with a word; empty for rows that repeat a sum. */
    static Optional<BudgetSection> of(String kind) {
        return Arrays.stream(values())
                .filter(section -> section.kind.equals(kind))
                .findFirst();
    }

    static List<String> keys() {
        return Arrays.stream(values()).map(BudgetSection::key).toList();
    }
}
