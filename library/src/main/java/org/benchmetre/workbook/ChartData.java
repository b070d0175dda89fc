package org.benchmetre.workbook;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.page.Chart;

/** Where the series of a chart stand, and their values as cached: in the workings, or in the sorted table of the page. */
final class ChartData {

    private final WorkbookPlan plan;
    private final PagePlan page;
    private final Figures figures;

    ChartData(WorkbookPlan plan, PagePlan page, Figures figures) {
        this.plan = plan;
        this.page = page;
        this.figures = figures;
    }

    /** Where the other axis of a line stands for each of its series: one for each filled row, or a single one. */
    List<Position> series(Line line, Axis along) {
        return line.axes().stream()
                .filter(axis -> axis != along)
                .findFirst()
                .map(other -> IntStream.range(0, other.filled())
                        .mapToObj(i -> Position.NONE.with(other, i))
                        .toList())
                .orElse(List.of(Position.NONE));
    }

    /** What a series is called: its row, its line, or both. */
    String name(Chart wanted, Line line, Position position) {
        String row = line.axes().stream()
                .filter(axis -> axis != wanted.categories())
                .map(axis -> rowName(axis, position.on(axis)))
                .collect(Collectors.joining(", "));
        if (row.isEmpty()) {
            return line.label();
        }
        return wanted.values().size() > 1 ? row + ": " + line.label().toLowerCase(Locale.ROOT) : row;
    }

    /** The rows of the categories that are shown, in order. */
    private List<Integer> rows(Chart wanted) {
        List<Integer> sorted = wanted.look().largestFirst().isPresent() ? page.order(wanted.categories()) : List.of();
        return sorted.isEmpty()
                ? IntStream.range(0, wanted.categories().filled()).boxed().toList()
                : sorted;
    }

    XDDFCategoryDataSource categories(Chart wanted) {
        Axis axis = wanted.categories();
        List<Integer> rows = rows(wanted);
        String[] names = rows.stream().map(row -> rowName(axis, row)).toArray(String[]::new);
        return XDDFDataSourcesFactory.fromArray(names, nameRange(wanted, rows.size()));
    }

    private String nameRange(Chart wanted, int size) {
        Line named = figures.budget().rowName(wanted.categories()).orElse(null);
        if (named != null) {
            return range(wanted, named, Position.NONE, size);
        }
        List<Spot> spots = plan.names(wanted.values().get(0), wanted.categories());
        return spots.get(0).to(spots.get(size - 1));
    }

    private String rowName(Axis axis, int index) {
        return figures.budget()
                .rowName(axis)
                .map(line -> figures.text(line, index))
                .orElse(axis.label(index));
    }

    private String range(Chart wanted, Line line, Position position, int size) {
        TablePlace sorted = wanted.look().largestFirst().isPresent() ? page.followed(line) : null;
        TablePlace place = sorted == null ? plan.place(line) : sorted;
        Axis along = wanted.categories();
        return place.spot(position.with(along, 0)).to(place.spot(position.with(along, size - 1)));
    }

    /** The cells of a line along the categories, where its other axis stands as given. */
    XDDFNumericalDataSource<Double> numbers(Chart wanted, Line line, Position position) {
        List<Integer> rows = rows(wanted);
        Double[] numbers = rows.stream()
                .map(row -> figures.number(line, line.cellAt(position.with(wanted.categories(), row))))
                .toArray(Double[]::new);
        return XDDFDataSourcesFactory.fromArray(numbers, range(wanted, line, position, rows.size()));
    }
}
