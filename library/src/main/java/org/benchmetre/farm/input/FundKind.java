package org.benchmetre.farm.input;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What funds are used for, as a lender tells things apart: what secures a loan, and what wears. */
public enum FundKind {
    /** Land, which does not wear. */
    LAND("land", "Land and site"),
    /** The house. */
    HOUSE("house", "House"),
    /** What stands in it and may be sold alone. */
    EQUIPMENT("equipment", "Equipment"),
    /** What plants grow in. */
    GROWING("growing", "Trough and substrate"),
    /** Plants. */
    PLANTS("plants", "Plants"),
    /** Cash kept for the first months. */
    CASH("cash", "Cash"),
    /** What leaves nothing to hold. */
    OTHER("other", "Other");

    /** The keys in reading order. */
    public static final List<String> KEYS =
            Arrays.stream(values()).map(FundKind::key).toList();

    private final String key;
    private final String label;

    FundKind(String key, String label) {
        this.key = key;
        this.label = label;
    }

    /**
     * How files name it.
     *
     * @return lower snake case
     */
    public String key() {
        return key;
    }

    /**
     * What readers call it.
     *
     * @return such as {@code Land and site}
     */
    public String label() {
        return label;
    }

    /** Labels by key. */
    static Map<String, String> labels() {
        return Arrays.stream(values()).collect(Collectors.toMap(FundKind::key, FundKind::label));
    }
}
