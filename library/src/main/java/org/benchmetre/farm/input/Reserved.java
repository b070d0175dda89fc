package org.benchmetre.farm.input;

import java.util.List;

/** Names of groups of cost that hold what is no part, so that no part may take them. */
public final class Reserved {

    /** Plants, labour, what stands for parts that are not listed, charges. */
    public static final List<String> GROUPS =
            List.of("Plants", "Installation labour", "House, by area", "Contingency on parts", "Ownership charges");

    private Reserved() {}
}
