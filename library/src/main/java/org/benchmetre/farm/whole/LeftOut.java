package org.benchmetre.farm.whole;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
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
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.ownership.Contingency;
import org.benchmetre.farm.ownership.HouseByArea;
import org.benchmetre.farm.ownership.Overhead;
import org.benchmetre.farm.takeoff.PartBlocks;

/**
 * What a whole budget holds, block by block, and which blocks nothing is counted for. The words <i>total cost</i> stand only where none
 * is missing. A block counts where a part that says so has a quantity and a price, or the entry that stands for it is above zero. Which
 * blocks there are is a choice of this project, no source.
 */
public final class LeftOut {

    /** One row for each block, in the order in which they are named. */
    public final Axis axis;
    /** Names of the blocks that nothing is counted for; empty when all are counted. */
    public final Line words;
    /** The costs of the plan in words: listed costs, or total cost. */
    public final Line costWords;

    private record Block(String key, String label, Formula isCounted) {}

    /**
     * What stands for the blocks.
     *
     * @param parts parts by their block
     * @param house the house by area
     * @param overhead management, office, land, and the house by bench and week
     * @param contingency contingency on parts
     */
    public record Counted(PartBlocks parts, HouseByArea house, Overhead overhead, Contingency contingency) {

        private List<Block> blocks() {
            Formula isHoused = or(parts.house.isPositive(), house.cost.isPositive(), overhead.houseCharge.isPositive());
            return List.of(
                    new Block(PartBlocks.HOUSE, "house", isHoused),
                    ofParts(PartBlocks.HEATING_PLANT, "heating plant"),
                    ofParts(PartBlocks.COOLING, "cooling"),
                    ofParts(PartBlocks.COLD_ROOM, "cold room"),
                    ofParts(PartBlocks.ELECTRICAL, "electrical"),
                    new Block("management", "management", overhead.management.isPositive()),
                    new Block("office", "office", overhead.office.isPositive()),
                    new Block("land", "land", overhead.land.isPositive()),
                    new Block("contingency", "contingency", contingency.cost.isPositive()));
        }

        private Block ofParts(String key, String label) {
            return new Block(key, label, parts.cost(key).isPositive());
        }
    }

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param counted what stands for the blocks
     */
    public LeftOut(BudgetBuilder b, Counted counted) {
        List<Block> blocks = counted.blocks();
        axis = Axis.periods("block", "Block", blocks.stream().map(Block::key).toList());
        ScheduleBuilder table = b.schedule(Sheets.SUMMARY, "What a whole budget holds");
        ScheduleBuilder s = b.schedule(Sheets.SUMMARY, "What is left out");
        Line label = table.textLine("block_label", "Block", rows(blocks, block -> text(block.label())));
        b.nameRows(axis, label);
        Line isCounted = table.line(
                "block_counted",
                "Is counted, 1 or 0",
                ONE,
                rows(blocks, block -> when(block.isCounted(), one(), none(ONE))));
        Line missing = table.declare(
                "block_left_out", "Left out so far", ONE, Kind.TEXT, List.of(axis), "named one after the other");
        Formula before = previous(missing, text(""));
        Formula named = when(before.isFilled(), joined(before, text(", "), label), label);
        b.define(missing, when(isCounted.isPositive(), before, named));
        words = s.textLine("left_out", "Left out", new Element(missing, axis, axis.size() - 1));
        costWords = s.textLine("cost_words", "Costs in words", either("listed costs", "total cost"));
        s.textLine(
                "left_out_sentence",
                "What is left out, in a sentence",
                when(
                        words.isFilled(),
                        joined(
                                text("Not counted: "),
                                words,
                                text(". Returns are above listed costs, not above total cost.")),
                        text("Everything a whole budget holds is counted.")));
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
