package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;

/**
 * Compares recalculated cells with the engine's figures: every formula cell of a written workbook, found in the workbook itself and
 * matched with the plan. A formula cell that shows no cell of a line is a difference, and so is a line whose formula was not
 * written. Numbers agree to a billionth of the largest operand of the cell's formula, or to a billionth for figures near zero, as
 * spreadsheet programs round to 15 digits; texts are equal.
 */
final class Agreement {

    private static final double TOLERANCE = 1e-9;

    /** A cell that repeats another one, blank while that is empty, or as a text, or as it is. */
    private static final Pattern REPEATS = Pattern.compile("IF\\((.+)=\"\",\"\",\\1\\)|(.+)&\"\"|(.+)");

    private final WorkbookPlan plan;
    private final List<Shown> shown = new ArrayList<>();
    private final List<String> strays = new ArrayList<>();

    /** A formula cell and the cell of a line whose value, or what is typed for it, it must show. */
    private record Shown(Spot spot, CellRef ref, String formula, boolean asTyped) {}

    private Agreement(Workbook written, WorkbookPlan plan) {
        this.plan = plan;
        Budget budget = plan.budget();
        CellPlaces places = new CellPlaces(plan, "");
        Map<Spot, CellRef> own = new LinkedHashMap<>();
        Map<String, CellRef> byAddress = new HashMap<>();
        Map<String, CellRef> typed = new HashMap<>();
        for (Line line : budget.lines()) {
            boolean apart = plan.homes().isApart(line);
            boolean calculated = budget.formula(line).isPresent() || apart;
            for (int cell = 0; cell < line.size(); cell++) {
                CellRef ref = new CellRef(line, cell);
                byAddress.put(places.cell(line, cell), ref);
                if (apart) {
                    typed.put(typedAddress(line, cell), ref);
                }
                if (calculated) {
                    own.put(plan.spot(line, cell), ref);
                }
            }
        }
        for (Sheet sheet : written) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        add(cell, own, byAddress, typed);
                    }
                }
            }
        }
        own.values().forEach(ref -> strays.add(ref + " has a formula, but none was written."));
    }

    /**
     * Finds the formula cells of a workbook.
     *
     * @param written the workbook, as written
     * @param plan where everything stands
     * @return what every formula cell must show
     */
    static Agreement of(Workbook written, WorkbookPlan plan) {
        return new Agreement(written, plan);
    }

    private void add(Cell cell, Map<Spot, CellRef> own, Map<String, CellRef> byAddress, Map<String, CellRef> typed) {
        Spot spot = spot(cell);
        String formula = cell.getCellFormula();
        String repeated = withSheet(repeated(formula), spot);
        CellRef ref = own.remove(spot);
        if (ref == null) {
            ref = byAddress.get(repeated);
        }
        if (ref == null && typed.containsKey(repeated)) {
            shown.add(new Shown(spot, typed.get(repeated), formula, true));
            return;
        }
        if (ref == null) {
            strays.add(spot.reference() + " shows no cell of a line: " + formula + ".");
        } else {
            shown.add(new Shown(spot, ref, formula, false));
        }
    }

    /** A reference to a cell of the formula's own sheet, as another sheet would write it. */
    private static String withSheet(String reference, Spot spot) {
        return reference.startsWith("$")
                ? spot.reference().substring(0, spot.reference().indexOf('!') + 1) + reference
                : reference;
    }

    private static String repeated(String formula) {
        Matcher matcher = REPEATS.matcher(formula);
        return !matcher.matches()
                ? ""
                : matcher.group(1) != null
                        ? matcher.group(1)
                        : matcher.group(2) != null ? matcher.group(2) : matcher.group(3);
    }

    /** The place of a cell. */
    static Spot spot(Cell cell) {
        return new Spot(cell.getSheet().getSheetName(), cell.getRowIndex(), cell.getColumnIndex());
    }

    /**
     * The differences between recalculated formula cells and the engine.
     *
     * @param recalculated reads a formula cell: a Double or a String
     * @param figures the engine's figures for the same entries
     * @return one sentence each; empty when all agree
     */
    List<String> differences(Function<Spot, Object> recalculated, Figures figures) {
        List<String> found = new ArrayList<>(figures.troubles());
        found.addAll(strays);
        if (shown.isEmpty()) {
            found.add("There was no formula cell to compare.");
        }
        for (Shown cell : shown) {
            Object wanted = cell.asTyped() ? typed(figures, cell.ref()) : engine(figures, cell.ref());
            Object other = recalculated.apply(cell.spot());
            boolean same = wanted instanceof Double number && other instanceof Double again
                    ? isClose(figures, cell.ref(), number, again)
                    : wanted.equals(other);
            if (!same) {
                found.add(cell.ref() + " should be " + wanted + ", but found " + other + " in " + cell.formula()
                        + " at " + cell.spot().reference() + ".");
            }
        }
        return found;
    }

    /** The operands are looked at only where the figure itself does not settle it. */
    private static boolean isClose(Figures figures, CellRef ref, double wanted, double found) {
        double difference = Math.abs(wanted - found);
        return difference <= TOLERANCE * Math.max(1, Math.abs(wanted))
                || difference <= TOLERANCE * largestOperand(figures, ref, wanted);
    }

    /** What stands in the cell that is typed in. */
    private Object typed(Figures figures, CellRef ref) {
        Given now = figures.budget().given(ref.line()).get(ref.cell());
        Given before = plan.budget().given(ref.line()).get(ref.cell());
        return Typing.value(plan, ref.line(), now, before);
    }

    private String typedAddress(Line line, int cell) {
        return line.axes().isEmpty()
                ? TypedCells.name(line)
                : plan.typedSpot(line, cell).reference();
    }

    private static Object engine(Figures figures, CellRef ref) {
        boolean text = ref.line().kind() == Kind.TEXT || figures.hasReason(ref.line(), ref.cell());
        return text ? (Object) figures.text(ref.line(), ref.cell()) : (Object) figures.number(ref.line(), ref.cell());
    }

    private static double largestOperand(Figures figures, CellRef ref, double value) {
        double largest = Math.abs(value);
        Formula formula = figures.budget().formula(ref.line()).orElse(null);
        if (formula == null) {
            return largest;
        }
        for (CellRef read : Dependencies.of(ref.line(), formula, ref.cell())) {
            if (engine(figures, read) instanceof Double number) {
                largest = Math.max(largest, Math.abs(number));
            }
        }
        return largest;
    }

    /** Reads what an open workbook has cached, errors as their text. */
    static Function<Spot, Object> cached(Workbook workbook) {
        return spot -> {
            Cell cell = workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column());
            return switch (cell.getCachedFormulaResultType()) {
                case NUMERIC -> cell.getNumericCellValue();
                case STRING -> cell.getStringCellValue();
                default -> cell.toString();
            };
        };
    }
}
