package org.benchmetre.farm.input;

import java.util.List;

/** Names of groups of cost that hold what is no part, so that no part may take them. */
public final class Reserved {

    /** Plants, labour, charges, and what it takes to run. */
    public static final List<String> GROUPS = List.of("Plants", "Installation labour", "Ownership charges");

    private Reserved() {}
}
