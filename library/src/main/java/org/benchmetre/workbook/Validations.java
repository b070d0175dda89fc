package org.benchmetre.workbook;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Addresses;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.unit.Unit;

/** Puts on every entry what may be typed there, one validation for all cells of a line. */
final class Validations {

    private static final int LONGEST_TEXT = 250;

    private final WorkbookPlan plan;
    private final Budget budget;
    private final Addresses addresses;
    private final XSSFWorkbook workbook;

    Validations(WorkbookPlan plan, XSSFWorkbook workbook) {
        this.plan = plan;
        this.budget = plan.budget();
        this.addresses = new CellPlaces(plan, "");
        this.workbook = workbook;
    }

    void add(Line line) {
        Entry entry = budget.entry(line).orElse(null);
        boolean free = entry == null || line.kind() == Kind.TEXT && !isListed(entry.form());
        if (free) {
            return;
        }
        Spot first = plan.typedSpot(line, 0);
        XSSFSheet sheet = workbook.getSheet(first.sheet());
        DataValidationHelper helper = sheet.getDataValidationHelper();
        CellRangeAddressList cells = typedCells(line);
        DataValidation rule = helper.createValidation(constraint(helper, line, entry, first), cells);
        rule.setEmptyCellAllowed(!line.axes().isEmpty());
        rule.setSuppressDropDownArrow(true);
        rule.setErrorStyle(DataValidation.ErrorStyle.STOP);
        rule.setShowErrorBox(entry.form().kind() != TextForm.Kind.UNIT_OR_COUNT);
        rule.createErrorBox(shortened(line.label(), 31), shortened(expected(line, entry), LONGEST_TEXT));
        sheet.addValidationData(rule);
    }

    /** The cells that are typed in: a rectangle, or cells here and there. */
    private CellRangeAddressList typedCells(Line line) {
        Spot first = plan.typedSpot(line, 0);
        Spot last = plan.typedSpot(line, line.size() - 1);
        if (!plan.homes().isScattered(line)) {
            return new CellRangeAddressList(first.row(), last.row(), first.column(), last.column());
        }
        CellRangeAddressList cells = new CellRangeAddressList();
        for (int cell = 0; cell < line.size(); cell++) {
            Spot spot = plan.typedSpot(line, cell);
            cells.addCellRangeAddress(spot.row(), spot.column(), spot.row(), spot.column());
        }
        return cells;
    }

    private static boolean isListed(TextForm form) {
        return form.kind() == TextForm.Kind.WORD || form.isUnit();
    }

    private DataValidationConstraint constraint(DataValidationHelper helper, Line line, Entry entry, Spot first) {
        if (line.kind() != Kind.TEXT) {
            return number(helper, boundsAsTyped(line, entry.bounds()), first.relative());
        }
        boolean worded = plan.homes().isWorded(line);
        if (!entry.form().keysOf().isEmpty()) {
            Line listed =
                    worded ? plan.homes().labelsOf(entry.form()) : plan.homes().keysOf(entry.form());
            return helper.createFormulaListConstraint(
                    addresses.range(listed, listed.axes().get(0), Position.NONE));
        }
        return helper.createFormulaListConstraint(
                plan.lists().range(worded ? entry.form().labels() : entry.allowed()));
    }

    /** Bounds in the unit of the cell that is typed in. */
    private Bounds boundsAsTyped(Line line, Bounds bounds) {
        if (!plan.isConverted(line)) {
            return bounds;
        }
        Unit typedIn = budget.given(line).get(0).typedIn();
        return new Bounds(
                inUnit(bounds.least(), line.unit(), typedIn),
                bounds.leastIncluded(),
                inUnit(bounds.most(), line.unit(), typedIn),
                false);
    }

    private static double inUnit(double bound, Unit unit, Unit typedIn) {
        return Double.isInfinite(bound) ? bound : unit.convertLevel(bound, typedIn);
    }

    /** A formula where one is needed: of at least, above, at most, whole. Anything but a number is refused. */
    private static DataValidationConstraint number(DataValidationHelper helper, Bounds bounds, String cell) {
        StringBuilder rule = new StringBuilder("AND(ISNUMBER(" + cell + ")");
        if (!Double.isInfinite(bounds.least())) {
            rule.append(',')
                    .append(cell)
                    .append(bounds.leastIncluded() ? ">=" : ">")
                    .append(plain(bounds.least()));
        }
        if (!Double.isInfinite(bounds.most())) {
            rule.append(',').append(cell).append("<=").append(plain(bounds.most()));
        }
        if (bounds.whole()) {
            rule.append(",INT(").append(cell).append(")=").append(cell);
        }
        int kind = bounds.whole()
                ? DataValidationConstraint.ValidationType.INTEGER
                : DataValidationConstraint.ValidationType.DECIMAL;
        boolean closed =
                bounds.leastIncluded() && !Double.isInfinite(bounds.least()) && !Double.isInfinite(bounds.most());
        return closed
                ? helper.createNumericConstraint(
                        kind,
                        DataValidationConstraint.OperatorType.BETWEEN,
                        plain(bounds.least()),
                        plain(bounds.most()))
                : helper.createCustomConstraint(rule.append(')').toString());
    }

    private static String plain(double number) {
        return Numbers.plain(number);
    }

    private String expected(Line line, Entry entry) {
        if (line.kind() != Kind.TEXT) {
            Unit typedIn = plan.isConverted(line) ? budget.given(line).get(0).typedIn() : line.unit();
            Bounds bounds = entry.bounds().in(line.unit(), typedIn);
            return "Expected " + bounds.words(typedIn.display(budget.currency())) + ".";
        }
        boolean worded = plan.homes().isWorded(line);
        return !entry.form().keysOf().isEmpty()
                ? "Choose one of the list."
                : "Expected one of " + String.join(", ", worded ? entry.form().labels() : entry.allowed()) + ".";
    }

    private static String shortened(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 3) + "...";
    }
}
