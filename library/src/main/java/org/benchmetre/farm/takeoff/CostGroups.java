package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.farm.input.Groups;
import org.benchmetre.farm.input.Reserved;

/**
 * The groups of cost: those of the parts in order of first use, then parts of any other group, plants, installation labour, the house by
 * area, contingency, ownership charges, and what it takes to run. First cost and yearly cost have the same groups, and each sums to its total.
 */
public final class CostGroups {

    /** Label of the parts whose group is not listed. */
    static final String OTHER = "Other parts";

    /** Labels of the groups that are no parts. */
    static final List<String> FIXED = Reserved.GROUPS;

    /** One row for each group. */
    public final Axis axis;

    private final Groups groups;
    private final List<String> labels = new ArrayList<>();
    private final Axis parts;
    private final int partGroups;
    private Line counted;

    /**
     * Finds the groups.
     *
     * @param materials the parts
     * @param running labels of what it takes to run, in order
     */
    public CostGroups(Materials materials, List<String> running) {
        parts = materials.axis;
        groups = materials.groups;
        labels.addAll(groups.names());
        partGroups = labels.size();
        labels.addAll(FIXED);
        labels.addAll(running);
        axis = Axis.rows("group", "Group", Groups.keysOf(labels), 0);
    }

    Formula labels() {
        return new Rows(axis, labels.stream().map(label -> text(label)).toList());
    }

    /** The keys by which parts name their group; none for what is no group of parts. */
    Formula keys() {
        List<Formula> keys = new ArrayList<>();
        groups.keys().forEach(key -> keys.add(text(key)));
        keys.addAll(Collections.nCopies(axis.size() - partGroups, text("")));
        return new Rows(axis, keys);
    }

    /** The key of the group that a part counts under which names none of the list. */
    Formula otherKey() {
        return text(groups.otherKey());
    }

    /** Nothing for each running cost, as first cost has none. */
    List<Formula> withoutRunning() {
        return Collections.nCopies(axis.size() - partGroups - FIXED.size(), none(MONEY));
    }

    /**
     * How many groups are parts.
     *
     * @return the groups of parts come first
     */
    public int partGroups() {
        return partGroups;
    }

    /** Says which text line holds the group each part counts under. */
    void countBy(Line line) {
        counted = line;
    }

    /**
     * An amount for each group.
     *
     * @param byPart amounts of parts, gathered by their group
     * @param fixed amounts of the groups that are no parts, in the order of their labels
     * @param running what it takes to run, in the order of its labels
     * @return one formula a group
     * @throws IllegalArgumentException when there are not as many amounts as groups
     */
    public Formula rows(Line byPart, List<Formula> fixed, List<Formula> running) {
        List<Formula> rows = new ArrayList<>();
        rows.addAll(ofParts(byPart));
        rows.addAll(fixed);
        rows.addAll(running);
        if (rows.size() != axis.size()) {
            throw new IllegalArgumentException(
                    "There are " + axis.size() + " groups of cost, but amounts for " + rows.size() + ".");
        }
        return new Rows(axis, rows);
    }

    /**
     * An amount of each group of parts.
     *
     * @param byPart amounts along the parts
     * @return one formula for each group of parts, in order
     */
    public List<Formula> ofParts(Line byPart) {
        return groups.keys().stream()
                .<Formula>map(key -> sumWhere(byPart, counted, text(key), parts))
                .toList();
    }
}
