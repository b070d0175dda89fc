package org.benchmetre.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;

/** Draws bar charts under the tables of their sheets, with the engine's values cached in them. */
final class ChartDrawer {

    private static final int ROWS_FEWEST = 16;
    private static final double WIDTH = 100;
    private static final int TITLE_SIZE = 1200;
    private static final int AXIS_SIZE = 900;
    /** From here on the labels of the axis need no decimals. */
    private static final double WHOLE_LABELS = 10;

    private static final int[] COLOURS = {0x33515C, 0xC08A3E, 0x6E9075, 0x8A5A6B, 0x7C93A8, 0xA9A06A};

    private final Plan plan;
    private final Figures figures;
    private final Budget budget;
    private final XSSFWorkbook workbook;
    private final Map<String, Integer> nextRow = new HashMap<>();

    ChartDrawer(Plan plan, Figures figures, XSSFWorkbook workbook) {
        this.plan = plan;
        this.figures = figures;
        this.budget = figures.budget();
        this.workbook = workbook;
    }

    void draw(BarChart wanted) {
        XSSFChart chart = frame(wanted);
        chart.setTitleText(wanted.title());
        chart.setTitleOverlay(false);
        XDDFCategoryAxis names = chart.createCategoryAxis(AxisPosition.LEFT);
        names.setOrientation(AxisOrientation.MAX_MIN);
        names.setTitle(wanted.categories().title());
        XDDFValueAxis numbers = chart.createValueAxis(AxisPosition.BOTTOM);
        numbers.setCrosses(AxisCrosses.MAX);
        numbers.setNumberFormat(largest(wanted) < WHOLE_LABELS ? "0.0#" : "#,##0");
        numbers.setTitle(wanted.values().unit().display(budget.currency()));
        numbers.getOrAddMajorGridProperties().setLineProperties(new XDDFLineProperties(fill(0xD8DEDF)));
        XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, names, numbers);
        bars.setBarDirection(BarDirection.BAR);
        bars.setBarGrouping(BarGrouping.CLUSTERED);
        bars.setVaryColors(false);
        bars.setGapWidth(60);
        int series = series(wanted, bars);
        chart.plot(bars);
        if (series > 1) {
            chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        }
        letters(chart.getCTChart().getTitle(), TITLE_SIZE);
        letters(chart.getCTChart().getPlotArea().getCatAxArray(0).getTitle(), AXIS_SIZE);
        letters(chart.getCTChart().getPlotArea().getValAxArray(0).getTitle(), AXIS_SIZE);
    }

    /** Sets size and language of a title, which would otherwise be the language of the machine. */
    private static void letters(CTTitle title, int size) {
        CTTextCharacterProperties letters =
                title.getTx().getRich().getPArray(0).getRArray(0).getRPr();
        letters.setLang("en");
        letters.setSz(size);
        letters.setB(true);
    }

    private double largest(BarChart wanted) {
        Line line = wanted.values();
        return IntStream.range(0, line.size())
                .mapToDouble(cell -> Math.abs(figures.number(line, cell)))
                .max()
                .orElse(0);
    }

    private XSSFChart frame(BarChart wanted) {
        SheetPlan sheet = plan.sheet(wanted.sheet());
        int top = nextRow.getOrDefault(wanted.sheet(), sheet.bottom() + 1);
        int end = top + ROWS_FEWEST + wanted.size();
        nextRow.put(wanted.sheet(), end + 2);
        XSSFSheet drawn = workbook.getSheet(wanted.sheet());
        if (drawn.getRowBreaks().length == 0) {
            drawn.setRowBreak(top - 1);
        }
        XSSFDrawing drawing = drawn.createDrawingPatriarch();
        return drawing.createChart(new XSSFClientAnchor(0, 0, 0, 0, 0, top, sheet.lastColumnWithin(WIDTH) + 1, end));
    }

    /** One series, or one for each filled row of the other axis. Answers how many. */
    private int series(BarChart wanted, XDDFBarChartData bars) {
        Line line = wanted.values();
        List<Axis> others =
                line.axes().stream().filter(axis -> axis != wanted.categories()).toList();
        if (others.isEmpty()) {
            add(wanted, bars, Position.NONE, line.label(), 0);
            return 1;
        }
        Axis other = others.get(0);
        for (int i = 0; i < other.filled(); i++) {
            add(wanted, bars, Position.NONE.with(other, i), nameOf(other, i), i);
        }
        return other.filled();
    }

    private void add(BarChart wanted, XDDFBarChartData bars, Position position, String title, int order) {
        XDDFChartData.Series series = bars.addSeries(categories(wanted), values(wanted, position));
        series.setTitle(title, null);
        series.setFillProperties(fill(COLOURS[order % COLOURS.length]));
    }

    private XDDFCategoryDataSource categories(BarChart wanted) {
        Axis axis = wanted.categories();
        String[] names =
                IntStream.range(0, wanted.size()).mapToObj(i -> nameOf(axis, i)).toArray(String[]::new);
        return XDDFDataSourcesFactory.fromArray(names, nameRange(wanted));
    }

    private String nameRange(BarChart wanted) {
        Line named = budget.rowName(wanted.categories()).orElse(null);
        if (named != null) {
            return plan.spot(named, 0).to(plan.spot(named, wanted.size() - 1));
        }
        List<Spot> spots = plan.names(wanted.values(), wanted.categories());
        return spots.get(0).to(spots.get(wanted.size() - 1));
    }

    private String nameOf(Axis axis, int index) {
        return budget.rowName(axis)
                .map(line -> figures.text(line, index))
                .orElse(axis.keys().get(index));
    }

    private XDDFNumericalDataSource<Double> values(BarChart wanted, Position position) {
        Line line = wanted.values();
        Place place = plan.place(line);
        Double[] numbers = IntStream.range(0, wanted.size())
                .mapToObj(i -> figures.number(line, line.cellAt(position.with(wanted.categories(), i))))
                .toArray(Double[]::new);
        Spot first = place.spot(position.with(wanted.categories(), 0));
        Spot last = place.spot(position.with(wanted.categories(), wanted.size() - 1));
        return XDDFDataSourcesFactory.fromArray(numbers, first.to(last));
    }

    private static XDDFSolidFillProperties fill(int rgb) {
        return new XDDFSolidFillProperties(XDDFColor.from(Styles.bytes(rgb)));
    }
}
