package org.benchmetre.workbook;

import java.util.List;
import java.util.stream.IntStream;
import javax.xml.namespace.QName;
import org.apache.poi.util.Units;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.Grouping;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFGraphicFrame;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlCursor;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Chart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTStrData;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTStrVal;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;

/** Draws the charts of pages, with the engine's values cached in them. A title is the cell of its sentence and changes with it. */
final class ChartDrawer {

    private static final int TITLE_SIZE = 1000;
    private static final int AXIS_SIZE = 1000;
    /** From here on the labels of the axis need no decimals. */
    private static final double WHOLE_LABELS = 10;

    private static final int[] COLOURS = {
        0x33515C, 0xC08A3E, 0x6E9075, 0x8A5A6B, 0x7C93A8, 0xA9A06A, 0x4F6D4A, 0xB4684D, 0x5B5F86, 0x9C8472, 0x86B0B5,
        0xD2A3A8
    };

    private final WorkbookPlan plan;
    private final Figures figures;
    private final XSSFWorkbook workbook;

    ChartDrawer(WorkbookPlan plan, Figures figures, XSSFWorkbook workbook) {
        this.plan = plan;
        this.figures = figures;
        this.workbook = workbook;
    }

    void draw(PagePlan page) {
        page.charts().stream().filter(placed -> showsSomething(placed.chart())).forEach(placed -> draw(page, placed));
    }

    /** Many series stand below one another beside the bars; few fit below them. */
    private static LegendPosition legend(Chart wanted) {
        return wanted.shape() == Chart.Shape.STACKED_BARS ? LegendPosition.RIGHT : LegendPosition.BOTTOM;
    }

    private boolean showsSomething(Chart chart) {
        return chart.values().stream()
                .anyMatch(line -> IntStream.range(0, line.size()).anyMatch(cell -> figures.number(line, cell) != 0));
    }

    /** A chart ends a pixel within its last column: one that ends at the next takes that along to another printed sheet. */
    private void draw(PagePlan page, PlacedChart placed) {
        Chart wanted = placed.chart();
        XSSFSheet sheet = workbook.getSheet(page.name());
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        int width = Math.round(sheet.getColumnWidthInPixels(placed.last()) - 1) * Units.EMU_PER_PIXEL;
        XSSFChart chart = drawing.createChart(
                new XSSFClientAnchor(0, 0, width, 0, placed.column(), placed.row(), placed.last(), placed.end()));
        Spot sentence = plan.spot(wanted.sentence(), 0);
        chart.setTitleFormula(sentence.quoted());
        chart.setTitleOverlay(false);
        title(chart.getCTChart().getTitle(), figures.text(wanted.sentence(), 0));
        ChartData data = new ChartData(plan, page, figures);
        int series = wanted.shape() == Chart.Shape.CURVES ? curves(chart, wanted, data) : bars(chart, wanted, data);
        if (series > 1) {
            chart.getOrAddLegend().setPosition(legend(wanted));
        }
        chart.getCTChart().getPlotArea().getValAxList().forEach(axis -> letters(axis.getTitle()));
        describe(drawing, wanted.look().alternative());
    }

    /** The words of a title as cached, and its letters. */
    private static void title(CTTitle title, String words) {
        CTStrData cache = title.getTx().getStrRef().addNewStrCache();
        cache.addNewPtCount().setVal(1);
        CTStrVal value = cache.addNewPt();
        value.setIdx(0);
        value.setV(words);
        CTTextBody body = title.addNewTxPr();
        body.addNewBodyPr();
        CTTextCharacterProperties letters = body.addNewP().addNewPPr().addNewDefRPr();
        letters.setSz(TITLE_SIZE);
        letters.setB(true);
    }

    /** Sets size and language of a title, which would otherwise be the language of the machine. */
    private static void letters(CTTitle title) {
        CTTextCharacterProperties letters =
                title.getTx().getRich().getPArray(0).getRArray(0).getRPr();
        letters.setLang("en");
        letters.setSz(AXIS_SIZE);
        letters.setB(false);
    }

    private static void describe(XSSFDrawing drawing, String words) {
        XSSFGraphicFrame last = null;
        for (var shape : drawing.getShapes()) {
            if (shape instanceof XSSFGraphicFrame frame) {
                last = frame;
            }
        }
        if (last != null) {
            last.getCTGraphicalObjectFrame().getNvGraphicFramePr().getCNvPr().setDescr(words);
        }
    }

    private static boolean isUpright(Chart.Shape shape) {
        return shape == Chart.Shape.COLUMNS || shape == Chart.Shape.STACKED_COLUMNS;
    }

    private static boolean isStacked(Chart.Shape shape) {
        return shape == Chart.Shape.STACKED_BARS || shape == Chart.Shape.STACKED_COLUMNS;
    }

    private int bars(XSSFChart chart, Chart wanted, ChartData data) {
        boolean upright = isUpright(wanted.shape());
        XDDFCategoryAxis names = chart.createCategoryAxis(upright ? AxisPosition.BOTTOM : AxisPosition.LEFT);
        names.setOrientation(upright ? AxisOrientation.MIN_MAX : AxisOrientation.MAX_MIN);
        XDDFValueAxis numbers = numberAxis(chart, upright ? AxisPosition.LEFT : AxisPosition.BOTTOM, wanted);
        numbers.setCrosses(upright ? AxisCrosses.AUTO_ZERO : AxisCrosses.MAX);
        XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, names, numbers);
        bars.setBarDirection(upright ? BarDirection.COL : BarDirection.BAR);
        bars.setBarGrouping(isStacked(wanted.shape()) ? BarGrouping.STACKED : BarGrouping.CLUSTERED);
        bars.setVaryColors(false);
        bars.setGapWidth(60);
        int order = 0;
        for (Line line : wanted.values()) {
            for (Position position : data.series(line, wanted.categories())) {
                XDDFChartData.Series series =
                        bars.addSeries(data.categories(wanted), data.numbers(wanted, line, position));
                series.setTitle(data.name(wanted, line, position), null);
                series.setFillProperties(fill(COLOURS[order++ % COLOURS.length]));
            }
        }
        chart.plot(bars);
        boolean swings = wanted.shape() == Chart.Shape.SWINGS;
        if (isStacked(wanted.shape()) || swings) {
            layOnOneAnother(chart.getCTChart().getPlotArea().getBarChartArray(0));
        }
        names.setTickLabelPosition(AxisTickLabelPosition.LOW);
        return order;
    }

    /** Full overlap, so that bars of one group lie on one line; the small schema library has no type for it. */
    private static void layOnOneAnother(CTBarChart bars) {
        try (XmlCursor cursor = bars.getGapWidth().newCursor()) {
            cursor.toNextSibling();
            cursor.beginElement(new QName(bars.schemaType().getName().getNamespaceURI(), "overlap"));
            cursor.insertAttributeWithValue("val", "100");
        }
    }

    private int curves(XSSFChart chart, Chart wanted, ChartData data) {
        XDDFCategoryAxis names = chart.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFValueAxis numbers = numberAxis(chart, AxisPosition.LEFT, wanted);
        XDDFLineChartData curves = (XDDFLineChartData) chart.createData(ChartTypes.LINE, names, numbers);
        curves.setGrouping(Grouping.STANDARD);
        curves.setVaryColors(false);
        int order = 0;
        for (Line line : wanted.values()) {
            for (Position position : data.series(line, wanted.categories())) {
                XDDFLineChartData.Series series = (XDDFLineChartData.Series)
                        curves.addSeries(data.categories(wanted), data.numbers(wanted, line, position));
                series.setTitle(data.name(wanted, line, position), null);
                series.setSmooth(false);
                series.setMarkerStyle(MarkerStyle.NONE);
                series.setLineProperties(new XDDFLineProperties(fill(COLOURS[order++ % COLOURS.length])));
            }
        }
        chart.plot(curves);
        return order;
    }

    private XDDFValueAxis numberAxis(XSSFChart chart, AxisPosition position, Chart wanted) {
        XDDFValueAxis axis = chart.createValueAxis(position);
        List<Line> lines = wanted.values();
        double largest = lines.stream().mapToDouble(this::largest).max().orElse(0);
        axis.setNumberFormat(largest < WHOLE_LABELS ? "0.0#" : "#,##0");
        Unit unit = lines.get(0).unit();
        axis.setTitle(unit.equals(Unit.ONE) ? "" : unit.display(figures.budget().currency()));
        axis.getOrAddMajorGridProperties().setLineProperties(new XDDFLineProperties(fill(0xD8DEDF)));
        return axis;
    }

    private double largest(Line line) {
        return IntStream.range(0, line.size())
                .mapToDouble(cell -> Math.abs(figures.number(line, cell)))
                .max()
                .orElse(0);
    }

    private static XDDFSolidFillProperties fill(int rgb) {
        return new XDDFSolidFillProperties(XDDFColor.from(Styles.bytes(rgb)));
    }
}
