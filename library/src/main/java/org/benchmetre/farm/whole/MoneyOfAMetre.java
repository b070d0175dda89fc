package org.benchmetre.farm.whole;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/** Where the money of a metre comes from and where it goes: parts that add up to receipts and to all costs. Plain shares. */
public final class MoneyOfAMetre {

    /** Key of harvest and packing labour. */
    public static final String HARVEST_LABOUR = "harvest_labour";
    /** Key of all other labour. */
    public static final String OTHER_LABOUR = "other_labour";
    /** Key of heat and power. */
    public static final String HEAT_AND_POWER = "heat_and_power";

    private static final Unit PER_METRE = Unit.parse("money/(m a)");
    private static final List<String> SIDES = List.of("receipts", "costs");

    /** One row for each part. */
    public final Axis parts;
    /** Receipts and costs. */
    public final Axis sides = Axis.rows("money_side", "Side", SIDES, 0);
    /** Each part on its side, money/(m a); 0 on the other. */
    public final Line money;

    private final Line perMetre;

    /**
     * A part of the money.
     *
     * @param key of its row
     * @param label what a reader sees
     * @param isReceipt whether it comes in
     * @param amount money/a
     */
    public record Part(String key, String label, boolean isReceipt, Formula amount) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param all the parts in order
     * @param benchMetres metres of bench
     */
    public MoneyOfAMetre(BudgetBuilder b, List<Part> all, Line benchMetres) {
        parts = Axis.rows("money_part", "Part", all.stream().map(Part::key).toList(), 0);
        ScheduleBuilder s = b.schedule(Sheets.SUMMARY, "Money of a metre and year, by part");
        b.nameRows(parts, s.textLine("money_part_label", "Part", rows(all, part -> text(part.label()))));
        perMetre = s.line(
                "money_part_per_metre",
                "Per metre of bench",
                PER_METRE,
                rows(all, part -> part.amount().over(benchMetres)));
        b.nameRows(
                sides,
                b.schedule(Sheets.SUMMARY, "Sides of the money")
                        .textLine(
                                "money_side_label", "Side", new Rows(sides, List.of(text("Receipts"), text("Costs")))));
        money = b.schedule(Sheets.SUMMARY, "Where the money of a metre goes")
                .line("money_of_metre", "Per metre of bench", PER_METRE, rows(all, this::onItsSide));
    }

    private Formula rows(List<Part> all, Function<Part, Formula> cell) {
        List<Formula> cells = new ArrayList<>();
        all.forEach(part -> cells.add(cell.apply(part)));
        return new Rows(parts, cells);
    }

    private Formula onItsSide(Part part) {
        Formula here = ofMetre(part.key());
        Formula nothing = none(PER_METRE);
        return new Rows(sides, part.isReceipt() ? List.of(here, nothing) : List.of(nothing, here));
    }

    /**
     * A part.
     *
     * @param key of its row
     * @return money/(m a)
     */
    Formula ofMetre(String key) {
        return new Element(perMetre, parts, parts.indexOf(key));
    }
}
