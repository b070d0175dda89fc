package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.page.Block;
import org.benchmetre.page.CaseTable;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Chart;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.EvidenceCount;
import org.benchmetre.page.Page;
import org.benchmetre.page.Panel;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.shown.ShownCells;
import org.benchmetre.page.shown.ShownTable;

/** Where the blocks of one page stand: every cell, its charts, the rows that are folded away, and the entries that live there. */
final class PagePlan {

    /** Letters across a page that is read without a glass, on a screen and in print. */
    static final int WIDTH = 156;

    private static final int FIRST_ROW = 3;
    /** How much wider than a page a table may be and still print on one. */
    private static final double MORE_THAN_WIDE = 1.08;

    private static final int GAP = 2;
    /** Rows, headings among them, up to which a table to fill in stays on one sheet of paper. */
    private static final int SHORT = 14;

    private final Page page;
    private final List<Page> all;
    private final Homes homes;
    private final Figures figures;
    private final Budget budget;
    private final NumberFormats formats;
    private final ShownCells shown;
    private final BesideValue beside;
    private final EntryWidths entryWidths;
    private final List<PageCell> cells = new ArrayList<>();
    private final List<PlacedChart> charts = new ArrayList<>();
    private final List<Integer> widths = new ArrayList<>();
    private final Set<Integer> folded = new TreeSet<>();
    private final Set<Integer> foldedColumns = new TreeSet<>();
    private final List<Integer> headRows = new ArrayList<>();
    private final List<Boxed> boxed = new ArrayList<>();
    private final List<Watched> watched = new ArrayList<>();
    private final Map<Line, TablePlace> followed = new HashMap<>();
    private final Map<Axis, List<Integer>> order = new LinkedHashMap<>();
    private final List<PrintPlan.Span> spans = new ArrayList<>();
    private int end;

    /**
     * A table of cases whose base is boxed.
     *
     * @param block the table
     * @param row first row of values
     * @param column first column of values
     * @param last last column of values
     */
    record Boxed(CaseTable block, int row, int column, int last) {}

    /**
     * An entry that is marked when it lies outside its usual range.
     *
     * @param row its row
     * @param value column of the value
     * @param low column of the low end, or -1
     * @param high column of the high end, or -1
     */
    record Watched(int row, int value, int low, int high) {}

    PagePlan(Page page, List<Page> all, Homes homes, Figures figures, NumberFormats formats) {
        this.page = page;
        this.all = all;
        this.homes = homes;
        this.figures = figures;
        this.budget = figures.budget();
        this.formats = formats;
        this.shown = new ShownCells(figures, page.kind());
        this.beside = new BesideValue(budget, homes);
        this.entryWidths = new EntryWidths(budget, homes, formats);
        place();
    }

    private void place() {
        boolean free =
                page.blocks().stream().anyMatch(block -> block instanceof EntryList || block instanceof EntryTable);
        if (free && page.blocks().stream().anyMatch(block -> block instanceof EntryList)) {
            EntryListPlanner.WIDTHS.forEach(widths::add);
        }
        List<Integer> left = free ? List.of() : take(page.left());
        List<Integer> right = List.of();
        if (!page.right().widths().isEmpty()) {
            widths.add(GAP);
            right = take(page.right());
        }
        List<Integer> all = new ArrayList<>(left);
        all.addAll(right);
        if (all.isEmpty()) {
            IntStream.range(0, Math.max(1, widths.size())).forEach(all::add);
        }
        int top = stack(page.head(), all, FIRST_ROW);
        int leftEnd = stack(page.left().blocks(), free ? all : left, top);
        int rightEnd = right.isEmpty() ? top : stack(page.right().blocks(), right, top);
        end = stack(page.foot(), all, Math.max(leftEnd, rightEnd));
    }

    private List<Integer> take(Panel panel) {
        List<Integer> taken = new ArrayList<>();
        for (int width : panel.widths()) {
            taken.add(widths.size());
            widths.add(width);
        }
        return taken;
    }

    private int stack(List<Block> blocks, List<Integer> columns, int row) {
        BlockPlanner planner = new BlockPlanner(this, columns, row);
        for (Block block : blocks) {
            int first = planner.row();
            block.show(planner);
            spans.add(new PrintPlan.Span(first, planner.row(), isWhole(block, planner.row() - first)));
        }
        return planner.row();
    }

    String name() {
        return page.name();
    }

    Page page() {
        return page;
    }

    List<PageCell> cells() {
        return cells;
    }

    List<PlacedChart> charts() {
        return charts;
    }

    List<Integer> widths() {
        return widths;
    }

    Set<Integer> folded() {
        return folded;
    }

    Set<Integer> foldedColumns() {
        return foldedColumns;
    }

    List<Boxed> boxed() {
        return boxed;
    }

    List<Watched> watched() {
        return watched;
    }

    /** The row of the headings of the first table. */
    int firstHeadRow() {
        return headRows.isEmpty() ? -1 : headRows.get(0);
    }

    int end() {
        return end;
    }

    /** The first row below all that is seen. */
    int seenEnd() {
        int written = cells.stream().mapToInt(PageCell::row).max().orElse(0);
        int drawn = charts.stream().mapToInt(PlacedChart::end).max().orElse(0);
        return Math.max(written + 1, drawn);
    }

    int lastColumn() {
        return widths.size() - 1;
    }

    /** The first column of the right half: of the second panel where there is one, else where half the width is reached. */
    int middle() {
        if (!page.right().widths().isEmpty()) {
            return page.left().widths().size() + 1;
        }
        int total = widths.stream().mapToInt(Integer::intValue).sum();
        int passed = 0;
        for (int column = 0; column < widths.size() - 1; column++) {
            passed += widths.get(column);
            if (passed * 2 >= total) {
                return column + 1;
            }
        }
        return Math.max(1, lastColumn());
    }

    /** Whether a table is wider than a page. */
    boolean isWide() {
        return widths.stream().mapToInt(Integer::intValue).sum() > WIDTH * MORE_THAN_WIDE;
    }

    private List<Integer> seenWidths() {
        return IntStream.range(0, widths.size())
                .mapToObj(column -> foldedColumns.contains(column) ? 0 : widths.get(column))
                .toList();
    }

    /** Widens a column of words as long as the page takes no further sheet of paper. */
    void fill(int column, int most) {
        int sheets = PrintPlan.across(seenWidths());
        int width = widths.get(column);
        while (width < most && PrintPlan.across(seenWidths()) == sheets) {
            widths.set(column, ++width);
        }
        if (PrintPlan.across(seenWidths()) > sheets) {
            widths.set(column, width - 1);
        }
    }

    /** What a printer is told of the page, whose rows are so tall. */
    PrintPlan.Extent extent(double[] points) {
        boolean repeats = page.kind() == Page.Kind.ENTRIES;
        return new PrintPlan.Extent(seenWidths(), points, repeats ? firstHeadRow() : -1, spans);
    }

    /** The cells of a line in a sorted table of this page. */
    TablePlace followed(Line line) {
        return followed.get(line);
    }

    void add(PageCell cell) {
        cells.add(cell);
    }

    void add(PlacedChart chart) {
        charts.add(chart);
    }

    void fold(int row) {
        folded.add(row);
    }

    void foldColumn(int column) {
        foldedColumns.add(column);
    }

    void headRow(int row) {
        headRows.add(row);
    }

    void boxed(CaseTable block, int row, int column, int last) {
        boxed.add(new Boxed(block, row, column, last));
    }

    void watched(int row, int value, int low, int high, Plausible usual) {
        boolean hasLow = Double.isFinite(usual.low());
        boolean hasHigh = Double.isFinite(usual.high());
        if (hasLow || hasHigh) {
            watched.add(new Watched(row, value, hasLow ? low : -1, hasHigh ? high : -1));
        }
    }

    void widen(int column, int width) {
        while (widths.size() <= column) {
            widths.add(0);
        }
        widths.set(column, Math.max(widths.get(column), width));
    }

    void home(Line line, int row, int column) {
        homes.put(line, new TablePlace(name(), row, column, null, null));
    }

    void home(Line line, TablePlace place) {
        homes.put(line, place);
    }

    void scattered(CellRef ref, int row, int column) {
        homes.scatter(ref, new Spot(name(), row, column));
    }

    boolean isHomedElsewhere(Line line) {
        return homes.has(line);
    }

    /** Whether a single text says nothing as written. */
    boolean isEmpty(Line text) {
        return figures.text(text, 0).isEmpty();
    }

    /** What is said of a line beside its value. */
    BesideValue beside() {
        return beside;
    }

    /** How wide columns of entries are. */
    EntryWidths entryWidths() {
        return entryWidths;
    }

    /** A heading with the unit of its column. */
    String headed(String heading, Line line) {
        return isNumber(line) ? shown.withUnit(heading, line.unit()) : heading;
    }

    List<CellRef> cells(Line line) {
        return IntStream.range(0, line.size())
                .mapToObj(i -> new CellRef(line, i))
                .toList();
    }

    String format(List<CellRef> refs) {
        if (refs.isEmpty()) {
            return Look.GENERAL;
        }
        Line first = refs.get(0).line();
        return isNumber(first) ? NumberFormats.of(shown.decimals(refs)) : formats.of(first);
    }

    /** A table as it is shown. */
    ShownTable shown(Table block) {
        return new ShownTable(shown, block);
    }

    /** The format of a cell in a column of so many decimals. */
    String format(Line line, Decimals decimals) {
        if (!isNumber(line)) {
            return formats.of(line);
        }
        return budget.entry(line).isPresent() && !line.axes().isEmpty()
                ? formats.typed(line)
                : NumberFormats.of(decimals);
    }

    private static boolean isNumber(Line line) {
        return line.kind() != Kind.TEXT && line.kind() != Kind.TRUTH;
    }

    /** Keeps where the columns of a sorted table stand, for a chart of the same order. */
    void follow(Table block, ShownTable shown, int row, List<Integer> columns) {
        if (block.bySize().isPresent()) {
            for (int i = 0; i < block.columns().size(); i++) {
                Axis axis = block.axis();
                followed.put(block.columns().get(i).line(), new TablePlace(name(), row, columns.get(i), axis, null));
            }
            order.put(block.axis(), shown.rows().stream().map(TableRow::index).toList());
        }
    }

    /** The order of the rows in the sorted table of this page. */
    List<Integer> order(Axis axis) {
        return order.getOrDefault(axis, List.of());
    }

    /** Whether a line names the rows of an axis. */
    boolean namesRows(Axis axis, Line line) {
        return budget.rowName(axis).filter(name -> name == line).isPresent();
    }

    /** Whether paper is not cut within a block: a chart, or a short table to fill in. */
    private static boolean isWhole(Block block, int rows) {
        return block instanceof Chart || block instanceof EntryTable && rows <= SHORT;
    }

    /** The page that has the cautions in full. */
    String cautionsPage() {
        return all.stream()
                .filter(other ->
                        other.blocks().stream().anyMatch(block -> block instanceof CautionList list && list.inFull()))
                .map(Page::name)
                .findFirst()
                .orElse(name());
    }

    /** How many entries come from which kind of source. */
    EvidenceCount evidence() {
        return EvidenceCount.of(budget);
    }
}
