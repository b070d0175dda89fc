package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How a page is printed: at which scale, and where its sheets of paper end. Letters of ten points print with eight at the least. A break
 * stands between blocks where that does not waste most of a sheet, and never in a picture.
 *
 * @param scale per cent
 * @param rowBreaks last row of each sheet of paper but the last
 * @param columnBreaks last column of each sheet but the last, where the page is wider than one
 */
record PrintPlan(int scale, List<Integer> rowBreaks, List<Integer> columnBreaks) {

    /** Letters of ten points have eight. */
    private static final int LEAST_SCALE = 80;

    private static final int FULL = 100;
    /** Points across a letter of the usual size: a digit of Arial at ten points, as the program counts that makes it widest. */
    private static final double POINTS_OF_A_LETTER = 5.6;
    /** What programs differ in. */
    private static final double SAFE = 0.985;

    private static final double SAFE_HEIGHT = 0.995;

    private static final int LAST_TOGETHER = 6;
    private static final double MOST_WASTED = 0.55;
    private static final double LITTLE_WASTED = 0.03;

    /**
     * Rows and columns of a page.
     *
     * @param widths of the columns in letters
     * @param points height of each row
     * @param headRow the row that is repeated, or -1
     * @param spans blocks
     */
    record Extent(List<Integer> widths, double[] points, int headRow, List<Span> spans) {

        /** A break between blocks may leave so much of a sheet of paper empty: little where headings are repeated. */
        double mostWasted() {
            return headRow < 0 ? MOST_WASTED : LITTLE_WASTED;
        }
    }

    /**
     * Rows of one block.
     *
     * @param first row
     * @param end the first row below
     * @param whole whether it may not be cut
     */
    record Span(int first, int end, boolean whole) {}

    static PrintPlan of(Extent extent, Paper paper) {
        double total = extent.widths.stream().mapToInt(Integer::intValue).sum() * POINTS_OF_A_LETTER;
        int fits = (int) Math.min(FULL, Math.floor(FULL * SAFE * paper.printedWidth() / total));
        if (fits < LEAST_SCALE) {
            List<Integer> across = columns(extent.widths, paper, LEAST_SCALE);
            return new PrintPlan(LEAST_SCALE, rows(extent, paper, LEAST_SCALE), across);
        }
        int fewest = rows(extent, paper, LEAST_SCALE).size();
        int scale = fits;
        while (scale > LEAST_SCALE && rows(extent, paper, scale).size() > fewest) {
            scale--;
        }
        return new PrintPlan(scale, rows(extent, paper, scale), List.of());
    }

    /** How many sheets of paper a table that is wider than one takes from left to right, on the paper that takes most. */
    static int across(List<Integer> widths) {
        return 1
                + Stream.of(Paper.values())
                        .mapToInt(paper -> columns(widths, paper, LEAST_SCALE).size())
                        .max()
                        .orElse(0);
    }

    private static List<Integer> columns(List<Integer> widths, Paper paper, int scale) {
        double room = SAFE * paper.printedWidth() * FULL / scale / POINTS_OF_A_LETTER;
        List<Integer> breaks = new ArrayList<>();
        double used = 0;
        for (int column = 0; column < widths.size(); column++) {
            int width = widths.get(column);
            if (used + width > room) {
                breaks.add(column - 1);
                used = widths.get(0);
            }
            used += width;
        }
        return breaks;
    }

    private static List<Integer> rows(Extent extent, Paper paper, int scale) {
        double room = SAFE_HEIGHT * paper.printedHeight() * FULL / scale;
        List<Integer> breaks = new ArrayList<>();
        int start = 0;
        double used = 0;
        for (int row = 0; row < extent.points.length; row++) {
            if (used + extent.points[row] > room && row > start) {
                int next = cut(extent, start, row, room);
                breaks.add(next - 1);
                start = next;
                used = extent.headRow < 0 ? 0 : extent.points[extent.headRow];
                row = next;
            }
            used += extent.points[row];
        }
        return breaks;
    }

    /** The first row of the next sheet of paper, where a row does not fit any more. */
    private static int cut(Extent extent, int start, int row, double room) {
        int between = row;
        while (between > start && isInside(extent, between, false)) {
            between--;
        }
        double kept = 0;
        for (int i = start; i < between; i++) {
            kept += extent.points[i];
        }
        if (between > start && kept >= room * (1 - extent.mostWasted())) {
            return between;
        }
        int whole = tail(extent, start, row);
        while (whole > start && isInside(extent, whole, true)) {
            whole--;
        }
        return whole > start ? whole : row;
    }

    /** A row at which a block that is cut leaves no fewer than its last rows, which hold its sums, for the next sheet of paper. */
    private static int tail(Extent extent, int start, int row) {
        return extent.spans.stream()
                .filter(span -> !span.whole && span.first < row && row < span.end)
                .mapToInt(span -> Math.min(row, Math.max(start + 1, span.end - LAST_TOGETHER)))
                .min()
                .orElse(row);
    }

    private static boolean isInside(Extent extent, int row, boolean wholeOnly) {
        return extent.spans.stream().anyMatch(span -> (span.whole || !wholeOnly) && span.first < row && row < span.end);
    }
}
