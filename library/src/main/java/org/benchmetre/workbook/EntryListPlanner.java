package org.benchmetre.workbook;

import java.util.List;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Ends;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.page.EntryList;

/**
 * Places single entries, one a row: what is typed and its unit, what it counts as where that is another number, usual range in the unit
 * typed, a mark, source. An entry that has its home elsewhere is shown by reference, and folded away where nothing in its row is typed.
 */
final class EntryListPlanner {

    /** Widths of the columns in letters. */
    static final List<Integer> WIDTHS = List.of(46, 16, 13, 8, 8, 7, 9, 9, 47);

    private static final int VALUE = 1;
    private static final int UNIT = 2;
    private static final int COUNTS_AS = 3;
    private static final int COUNTED_IN = 4;
    private static final int LOW = 5;
    private static final int HIGH = 6;
    private static final int MARK = 7;
    private static final int SOURCE = 8;

    private final PagePlan plan;
    private final List<Integer> columns;

    EntryListPlanner(PagePlan plan, List<Integer> columns) {
        this.plan = plan;
        this.columns = columns;
    }

    /** Places a group of entries, headings once a page. Answers the first row below. */
    int place(EntryList block, int top) {
        int row = top;
        if (plan.firstHeadRow() < 0) {
            heads(row++);
        }
        words(row, 0, block.title(), Look.Role.SECTION);
        if (block.entries().stream().allMatch(line -> isFolded(block, line))) {
            plan.fold(row);
        }
        row++;
        for (Line line : block.entries()) {
            if (isFolded(block, line)) {
                plan.fold(row);
            }
            place(line, row++);
        }
        return row;
    }

    private boolean isFolded(EntryList block, Line line) {
        boolean mayStand = block.seldom().contains(line)
                && plan.beside().given(line).origin().equals(Origin.DEFAULT);
        return mayStand
                || plan.isHomedElsewhere(line) && plan.beside().ends(line).isEmpty();
    }

    private void heads(int row) {
        List<String> heads = List.of("Entry", "Value", "Unit", "Is", "Unit", "From", "To", "Mark", "Source and notes");
        for (int i = 0; i < heads.size(); i++) {
            boolean number = i == VALUE || i == COUNTS_AS || i == LOW || i == HIGH;
            words(row, i, heads.get(i), number ? Look.Role.HEAD_NUMBER : Look.Role.HEAD);
        }
        plan.headRow(row);
    }

    private void words(int row, int place, String text, Look.Role role) {
        plan.add(PageCell.of(row, columns.get(place), new PageCell.Plain(text), role));
    }

    private void place(Line line, int row) {
        CellRef ref = new CellRef(line, 0);
        boolean elsewhere = plan.isHomedElsewhere(line);
        plan.add(PageCell.of(row, columns.get(0), new PageCell.Plain(line.label()), Look.Role.LABEL)
                .to(line));
        PageCell.Content typed = elsewhere ? new PageCell.Repeated(ref) : new PageCell.Typed(ref);
        plan.add(PageCell.of(row, columns.get(VALUE), typed, elsewhere ? repeated(line) : Look.Role.ENTRY));
        if (!elsewhere) {
            plan.home(line, row, columns.get(VALUE));
        }
        words(row, UNIT, plan.beside().typedUnit(line), Look.Role.UNIT);
        countsAs(line, row);
        Plausible usual = plan.beside().usualAsTyped(line);
        Ends ends = plan.beside().ends(line).orElse(null);
        end(row, LOW, ends == null ? null : ends.low(), usual.low());
        end(row, HIGH, ends == null ? null : ends.high(), usual.high());
        Given given = plan.beside().given(line);
        words(row, MARK, plan.beside().mark(line, given), Look.Role.UNIT);
        Entry entry = plan.beside().entry(line);
        words(row, SOURCE, ListWriter.remarks(ListWriter.source(given, entry), line.note()), Look.Role.WORDS);
        plan.watched(row, columns.get(VALUE), columns.get(LOW), columns.get(HIGH), usual);
    }

    private static Look.Role repeated(Line line) {
        return line.kind() == Kind.TEXT ? Look.Role.LABEL : Look.Role.NUMBER;
    }

    private void countsAs(Line line, int row) {
        if (plan.beside().isConverted(line)) {
            CellRef ref = new CellRef(line, 0);
            plan.add(PageCell.of(row, columns.get(COUNTS_AS), new PageCell.Shown(ref), Look.Role.NUMBER)
                    .as(plan.format(List.of(ref))));
            words(row, COUNTED_IN, plan.beside().unit(line), Look.Role.UNIT);
        }
    }

    /** An end of the usual range: an entry of its own, or what is documented. */
    private void end(int row, int place, Line entry, double bound) {
        if (entry != null) {
            plan.add(PageCell.of(row, columns.get(place), new PageCell.Typed(new CellRef(entry, 0)), Look.Role.ENTRY));
            plan.home(entry, row, columns.get(place));
        } else if (Double.isFinite(bound)) {
            plan.add(PageCell.of(row, columns.get(place), new PageCell.Bound(bound), Look.Role.USUAL)
                    .as(NumberFormats.ofBound(bound)));
        }
    }
}
