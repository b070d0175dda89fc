package org.benchmetre.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.namespace.QName;
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
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlCursor;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;

/** Draws charts under the tables of their sheets, with the engine's values cached in them. */
final class ChartDrawer {

    private static final double WIDTH = 100;
    /** Rows of a table that leave no room for a chart on the same page; a shorter one begins a page together with its chart. */
    private static final int LONG_TABLE = 30;

    private static final int TITLE_SIZE = 1200;
    private static final int AXIS_SIZE = 900;
    /** From here on the labels of the axis need no decimals. */
    private static final double WHOLE_LABELS = 10;

    private static final int[] COLOURS = {
        0x33515C, 0xC08A3E, 0x6E9075, 0x8A5A6B, 0x7C93A8, 0xA9A06A, 0x4F6D4A, 0xB4684D, 0x5B5F86, 0x9C8472, 0x86B0B5,
        0xD2A3A8
    };

    private final WorkbookPlan plan;
    private final Figures figures;
    private final Budget budget;
    private final XSSFWorkbook workbook;
    private final ChartData data;
    private final Map<String, Integer> nextRow = new HashMap<>();

    ChartDrawer(WorkbookPlan plan, Figures figures, XSSFWorkbook workbook) {
        this.plan = plan;
        this.figures = figures;
        this.budget = figures.budget();
        this.workbook = workbook;
        this.data = new ChartData(plan, figures);
    }

    void draw(Chart wanted) {
        XSSFChart chart = frame(wanted);
        chart.setTitleText(wanted.title());
        chart.setTitleOverlay(false);
        int series = wanted instanceof BarChart bars ? bars(chart, bars) : curves(chart, (LineChart) wanted);
        if (series > 1) {
            chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        }
        letters(chart.getCTChart().getTitle(), TITLE_SIZE);
        CTPlotArea area = chart.getCTChart().getPlotArea();
        Stream.concat(
                        area.getCatAxList().stream().map(axis -> axis.getTitle()),
                        area.getValAxList().stream().map(CTValAx::getTitle))
                .forEach(title -> letters(title, AXIS_SIZE));
    }

    private int bars(XSSFChart chart, BarChart wanted) {
        boolean upright = wanted.shape() == BarChart.Shape.COLUMNS;
        boolean stacked = wanted.shape() == BarChart.Shape.STACKED_BARS;
        XDDFCategoryAxis names = chart.createCategoryAxis(upright ? AxisPosition.BOTTOM : AxisPosition.LEFT);
        names.setOrientation(upright ? AxisOrientation.MIN_MAX : AxisOrientation.MAX_MIN);
        names.setTitle(wanted.categories().title());
        XDDFValueAxis numbers = numberAxis(chart, upright ? AxisPosition.LEFT : AxisPosition.BOTTOM, wanted.values());
        numbers.setCrosses(upright ? AxisCrosses.AUTO_ZERO : AxisCrosses.MAX);
        XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, names, numbers);
        bars.setBarDirection(upright ? BarDirection.COL : BarDirection.BAR);
        bars.setBarGrouping(stacked ? BarGrouping.STACKED : BarGrouping.CLUSTERED);
        bars.setVaryColors(false);
        bars.setGapWidth(60);
        int order = 0;
        for (Line line : wanted.values()) {
            for (Position position : data.series(line, wanted.categories())) {
                XDDFChartData.Series series = bars.addSeries(
                        data.categories(wanted), data.numbers(line, position, wanted.categories(), wanted.shown()));
                series.setTitle(
                        data.name(
                                line,
                                position,
                                wanted.categories(),
                                wanted.values().size() > 1),
                        null);
                series.setFillProperties(fill(COLOURS[order++ % COLOURS.length]));
            }
        }
        chart.plot(bars);
        if (stacked) {
            layOnOneAnother(chart.getCTChart().getPlotArea().getBarChartArray(0));
        }
        return order;
    }

    /** Full overlap, so that stacked bars lie on one another; the small schema library has no type for it. */
    private static void layOnOneAnother(CTBarChart bars) {
        try (XmlCursor cursor = bars.getGapWidth().newCursor()) {
            cursor.toNextSibling();
            cursor.beginElement(new QName(bars.schemaType().getName().getNamespaceURI(), "overlap"));
            cursor.insertAttributeWithValue("val", "100");
        }
    }

    private int curves(XSSFChart chart, LineChart wanted) {
        XDDFValueAxis across = numberAxis(chart, AxisPosition.BOTTOM, List.of(wanted.across()));
        XDDFValueAxis up = numberAxis(chart, AxisPosition.LEFT, wanted.values());
        XDDFScatterChartData curves = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, across, up);
        curves.setStyle(ScatterStyle.LINE_MARKER);
        curves.setVaryColors(false);
        int order = 0;
        for (Line line : wanted.values()) {
            for (Position position : data.series(line, wanted.points())) {
                int points = wanted.points().size();
                XDDFScatterChartData.Series series = (XDDFScatterChartData.Series) curves.addSeries(
                        data.numbers(wanted.across(), position, wanted.points(), points),
                        data.numbers(line, position, wanted.points(), points));
                series.setTitle(
                        data.name(
                                line, position, wanted.points(), wanted.values().size() > 1),
                        null);
                series.setSmooth(false);
                series.setMarkerStyle(MarkerStyle.NONE);
                series.setLineProperties(new XDDFLineProperties(fill(COLOURS[order++ % COLOURS.length])));
            }
        }
        chart.plot(curves);
        return order;
    }

    private XDDFValueAxis numberAxis(XSSFChart chart, AxisPosition position, List<Line> lines) {
        XDDFValueAxis axis = chart.createValueAxis(position);
        axis.setNumberFormat(
                lines.stream().mapToDouble(this::largest).max().orElse(0) < WHOLE_LABELS ? "0.0#" : "#,##0");
        String unit = lines.get(0).unit().display(budget.currency());
        axis.setTitle(
                lines.size() == 1 && position == AxisPosition.BOTTOM
                        ? lines.get(0).label() + ", " + unit
                        : unit);
        axis.getOrAddMajorGridProperties().setLineProperties(new XDDFLineProperties(fill(0xD8DEDF)));
        return axis;
    }

    /** Sets size and language of a title, which would otherwise be the language of the machine. */
    private static void letters(CTTitle title, int size) {
        CTTextCharacterProperties letters =
                title.getTx().getRich().getPArray(0).getRArray(0).getRPr();
        letters.setLang("en");
        letters.setSz(size);
        letters.setB(true);
    }

    private double largest(Line line) {
        return IntStream.range(0, line.size())
                .mapToDouble(cell -> Math.abs(figures.number(line, cell)))
                .max()
                .orElse(0);
    }

    private XSSFChart frame(Chart wanted) {
        ChartPlace place = wanted.place();
        SheetPlan sheet = plan.sheet(place.sheet());
        XSSFSheet drawn = workbook.getSheet(place.sheet());
        int top;
        int end;
        if (place.under() == null) {
            top = nextRow.getOrDefault(place.sheet(), sheet.bottom() + 1);
            end = top + wanted.rows();
            nextRow.put(place.sheet(), end + 2);
            if (drawn.getRowBreaks().length == 0) {
                drawn.setRowBreak(top - 1);
            }
        } else {
            Box box = sheet.box(place.under());
            if (box.schedule().roomBelow() == 0) {
                throw new IllegalArgumentException("There is no room for chart '" + wanted.title() + "' under "
                        + box.schedule().title() + ".");
            }
            top = box.end() + 1;
            drawn.setRowBreak((box.end() - box.table() > LONG_TABLE ? top : box.top()) - 1);
            end = box.end() + box.schedule().roomBelow() - 1;
        }
        XSSFDrawing drawing = drawn.createDrawingPatriarch();
        return drawing.createChart(new XSSFClientAnchor(0, 0, 0, 0, 0, top, sheet.lastColumnWithin(WIDTH) + 1, end));
    }

    private static XDDFSolidFillProperties fill(int rgb) {
        return new XDDFSolidFillProperties(XDDFColor.from(Styles.bytes(rgb)));
    }
}
