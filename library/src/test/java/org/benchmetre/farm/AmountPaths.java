package org.benchmetre.farm;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.CellWalk;
import org.benchmetre.budget.Constant;
import org.benchmetre.budget.Fold;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Lookup;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/**
 * Counts the paths from a sum of money a year down to each amount of money a year or month. Of a filtered sum only the rows that match
 * are followed, of a lookup only the row found.
 */
final class AmountPaths {

    private static final Set<Unit> AMOUNTS = Set.of(Unit.parse("money/a"), Unit.parse("money/mo"));

    /** Read for what is charged on it, not as an amount that is added. */
    private static final Set<String> BASES = Set.of(
            "way_operating_expense", "operating_expense", "way_parts_recovery", "receipts_total", "month_receipts");

    private final Figures figures;
    private final Map<String, Integer> paths = new TreeMap<>();
    private final Map<String, Integer> ends = new TreeMap<>();

    AmountPaths(Figures figures, Line sum, int cell) {
        this.figures = figures;
        descend(new CellRef(sum, cell));
    }

    /** How many paths reach each amount. */
    Map<String, Integer> paths() {
        return paths;
    }

    /** The same for the amounts that are made of no other amount. */
    Map<String, Integer> ends() {
        return ends;
    }

    private void descend(CellRef cell) {
        paths.merge(cell.toString(), 1, Integer::sum);
        boolean end = true;
        Line line = cell.line();
        if (figures.budget().formula(line).isPresent()) {
            Reads reads = new Reads(line.positionOf(cell.cell()), figures);
            figures.budget().formula(line).get().walk(reads);
            for (CellRef read : reads.cells()) {
                if (AMOUNTS.contains(read.line().unit())
                        && !BASES.contains(read.line().id())) {
                    end = false;
                    descend(read);
                }
            }
        }
        if (end) {
            ends.merge(cell.toString(), 1, Integer::sum);
        }
    }

    private static final class Reads extends CellWalk {

        private final Figures figures;

        Reads(Position position, Figures figures) {
            super(position);
            this.figures = figures;
        }

        @Override
        public Void fold(Fold fold) {
            for (int row = 0; row < fold.axis().size(); row++) {
                Position at = position.with(fold.axis(), row);
                for (Line line : fold.lines()) {
                    if (!line.equals(tags(fold)) && matches(fold, at)) {
                        read(line, at);
                    }
                }
            }
            return null;
        }

        private static Line tags(Fold fold) {
            return fold.tag() == null ? null : fold.tags();
        }

        private boolean matches(Fold fold, Position at) {
            return fold.tag() == null
                    || text(fold.tags(), at).equalsIgnoreCase(new Text(position, figures).of(fold.tag()));
        }

        @Override
        public Void lookup(Lookup lookup) {
            String key = new Text(position, figures).of(lookup.key());
            for (int row = 0; row < lookup.axis().size(); row++) {
                Position at = position.with(lookup.axis(), row);
                if (text(lookup.keys(), at).equalsIgnoreCase(key)) {
                    return read(lookup.values(), at);
                }
            }
            throw new IllegalStateException("No row " + key + " in " + lookup.keys());
        }

        private String text(Line line, Position at) {
            return figures.text(line, line.cellAt(at));
        }
    }

    /** The text of a constant or a line. */
    private record Text(Position position, Figures figures) {

        String of(Formula formula) {
            return formula instanceof Line line
                    ? figures.text(line, line.cellAt(position))
                    : ((Constant) formula).text();
        }
    }
}
