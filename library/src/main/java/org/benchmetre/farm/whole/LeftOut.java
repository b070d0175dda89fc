package org.benchmetre.farm.whole;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.ownership.Contingency;
import org.benchmetre.farm.ownership.HouseByArea;
import org.benchmetre.farm.ownership.Overhead;
import org.benchmetre.farm.takeoff.PartBlocks;

/**
 * What a whole budget holds, block by block: each is counted, waived by an entry that says why, or missing. The words <i>total cost</i>
 * stand only where none is missing. A block counts where a part that says so has a quantity and a price, or the entry that stands for it
 * is above zero. Which blocks there are is a choice of this project, no source.
 */
public final class LeftOut {

    /** One row for each block, in the order in which they are named. */
    public final Axis axis;
    /** Names of the blocks that nothing is counted for and that are not waived; empty when there are none. */
    public final Line words;
    /** The costs of the plan in words: listed costs, or total cost. */
    public final Line costWords;

    private final Line label;
    private final ScheduleBuilder table;

    private record Block(String key, String label, Formula isCounted) {}

    /**
     * What stands for the blocks.
     *
     * @param parts parts by their block
     * @param house the house by area
     * @param overhead management, office, land, vehicles, licences, and the house by bench and week
     * @param contingency contingency on parts
     */
    public record Counted(PartBlocks parts, HouseByArea house, Overhead overhead, Contingency contingency) {

        private List<Block> blocks() {
            Formula isHoused = or(parts.house.isPositive(), house.cost.isPositive(), overhead.houseCharge.isPositive());
            Formula isDriven = or(isBuilt(PartBlocks.VEHICLES), overhead.vehicles.isPositive());
            return List.of(
                    new Block(PartBlocks.HOUSE, "house", isHoused),
                    ofParts(PartBlocks.HEATING_PLANT, "heating plant"),
                    ofParts(PartBlocks.COOLING, "ventilation or cooling"),
                    ofParts(PartBlocks.ELECTRICAL, "electrical"),
                    ofParts(PartBlocks.COLD_ROOM, "cold room"),
                    ofParts(PartBlocks.PACKING_PLACE, "packing place"),
                    new Block(PartBlocks.VEHICLES, "vehicles", isDriven),
                    new Block("management", "management", overhead.management.isPositive()),
                    new Block("office", "office", overhead.office.isPositive()),
                    new Block("land", "land", overhead.land.isPositive()),
                    new Block("licences", "licences", overhead.licences.isPositive()),
                    new Block("contingency", "contingency", contingency.cost.isPositive()));
        }

        private Block ofParts(String key, String label) {
            return new Block(key, label, isBuilt(key));
        }

        private Formula isBuilt(String key) {
            return parts.cost(key).isPositive();
        }
    }

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives the reasons their values
     * @param counted what stands for the blocks
     */
    public LeftOut(BudgetBuilder b, FarmEntries entries, Counted counted) {
        List<Block> blocks = counted.blocks();
        axis = Axis.periods("block", "Block", blocks.stream().map(Block::key).toList());
        ScheduleBuilder reasons = b.schedule(Sheets.ENTRIES, "Waived, with the reason; blank is not waived");
        table = b.schedule(Sheets.SUMMARY, "What a whole budget holds");
        ScheduleBuilder s = b.schedule(Sheets.SUMMARY, "What is left out");
        label = table.textLine("block_label", "Block", rows(blocks, block -> text(block.label())));
        b.nameRows(axis, label);
        Line isCounted = table.line(
                "block_counted",
                "Is counted, 1 or 0",
                ONE,
                rows(blocks, block -> when(block.isCounted(), one(), none(ONE))));
        Line reason = table.textLine(
                "block_reason",
                "Waived because",
                rows(
                        blocks,
                        block -> entries.add(reasons.textEntry("waived_" + block.key(), "Waived: " + block.label()))));
        Formula isMissing = and(not(isCounted.isPositive()), not(reason.isFilled()));
        Formula isWaived = and(not(isCounted.isPositive()), reason.isFilled());
        words = s.textLine(
                "left_out", "Left out", last(chain(b, "block_left_out", "Left out so far", isMissing, label)));
        Formula why = joined(label, text(" ("), reason, text(")"));
        Line waived =
                s.textLine("blocks_waived", "Waived", last(chain(b, "block_waived", "Waived so far", isWaived, why)));
        costWords = s.textLine("cost_words", "Costs in words", either("listed costs", "total cost"));
        sentence(s, waived);
        table.warning(
                "block_waived_warning",
                "Waived and counted",
                and(isCounted.isPositive(), reason.isFilled()),
                "This block of a whole budget is counted, so that its waiver says nothing: leave the reason blank, or count nothing.");
    }

    /** Names one after the other, of the blocks that are meant. */
    private Line chain(BudgetBuilder b, String id, String heading, Formula isMeant, Formula name) {
        Line soFar = table.declare(id, heading, ONE, Kind.TEXT, List.of(axis), "named one after the other");
        Formula before = previous(soFar, text(""));
        Formula named = when(before.isFilled(), joined(before, text(", "), name), name);
        b.define(soFar, when(isMeant, named, before));
        return soFar;
    }

    private Formula last(Line chain) {
        return new Element(chain, axis, axis.size() - 1);
    }

    private void sentence(ScheduleBuilder s, Line waived) {
        Line told = s.textLine(
                "blocks_waived_told",
                "What is waived, in a sentence",
                when(waived.isFilled(), joined(text(" Waived: "), waived, text(".")), text("")));
        Formula missing = joined(
                text("Not counted: "),
                words,
                text("."),
                told,
                text(" Returns are above listed costs, not total cost."));
        Formula whole = when(
                waived.isFilled(),
                joined(text("Everything else that a whole budget holds is counted."), told),
                text("Everything a whole budget holds is counted."));
        s.textLine("left_out_sentence", "What is left out, in a sentence", when(words.isFilled(), missing, whole));
    }

    /**
     * A text that depends on whether something is missing.
     *
     * @param missing where a block is left out
     * @param whole where none is
     * @return one of both
     */
    Formula either(String missing, String whole) {
        return when(words.isFilled(), text(missing), text(whole));
    }

    private Formula rows(List<Block> blocks, Function<Block, Formula> cell) {
        List<Formula> cells = new ArrayList<>();
        blocks.forEach(block -> cells.add(cell.apply(block)));
        return new Rows(axis, cells);
    }
}
