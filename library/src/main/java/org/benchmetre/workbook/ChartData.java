package org.benchmetre.workbook;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;

/** Where the series of a chart stand on the sheets, and their values as cached. */
final class ChartData {

    private final WorkbookPlan plan;
    private final Figures figures;
    private final Budget budget;

    ChartData(WorkbookPlan plan, Figures figures) {
        this.plan = plan;
        this.figures = figures;
        this.budget = figures.budget();
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
    String name(Line line, Position position, Axis along, boolean severalLines) {
        String row = line.axes().stream()
                .filter(axis -> axis != along)
                .map(axis -> rowName(axis, position.on(axis)))
                .collect(Collectors.joining(", "));
        if (row.isEmpty()) {
            return line.label();
        }
        return severalLines ? row + ": " + line.label().toLowerCase(Locale.ROOT) : row;
    }

    XDDFCategoryDataSource categories(BarChart wanted) {
        Axis axis = wanted.categories();
        String[] names = IntStream.range(0, wanted.shown())
                .mapToObj(i -> rowName(axis, i))
                .toArray(String[]::new);
        return XDDFDataSourcesFactory.fromArray(names, nameRange(wanted));
    }

    private String nameRange(BarChart wanted) {
        Line named = budget.rowName(wanted.categories()).orElse(null);
        if (named != null) {
            return plan.spot(named, 0).to(plan.spot(named, wanted.shown() - 1));
        }
        List<Spot> spots = plan.names(wanted.values().get(0), wanted.categories());
        return spots.get(0).to(spots.get(wanted.shown() - 1));
    }

    private String rowName(Axis axis, int index) {
        return budget.rowName(axis)
                .map(line -> figures.text(line, index))
                .orElse(axis.keys().get(index));
    }

    /** The first so many cells of a line along one axis, where its other axis stands as given. */
    XDDFNumericalDataSource<Double> numbers(Line line, Position position, Axis along, int size) {
        TablePlace place = plan.place(line);
        Double[] numbers = IntStream.range(0, size)
                .mapToObj(i -> figures.number(line, line.cellAt(position.with(along, i))))
                .toArray(Double[]::new);
        Spot first = place.spot(position.with(along, 0));
        Spot last = place.spot(position.with(along, size - 1));
        return XDDFDataSourcesFactory.fromArray(numbers, first.to(last));
    }
}
