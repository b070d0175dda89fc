package org.benchmetre;

import java.util.Arrays;

/** A section of the enterprise budget. */
public enum Section {
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

    Section(String kind, String label) {
        this.kind = kind;
        this.label = label;
    }

    /**
     * The section in words.
     *
     * @return for example {@code Operating costs}
     */
    public String label() {
        return label;
    }

    /** What rows of the budget call it. */
    String kind() {
        return kind;
    }

    static Section of(String kind) {
        return Arrays.stream(values())
                .filter(section -> section.kind.equals(kind))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No section of the budget is called '" + kind + "'."));
    }
}
