package org.benchmetre.workbook;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.KnownAnswers;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.unit.Unit;

/** A small invented budget of shelves, with everything a workbook has to draw. Its figures mean nothing. */
public final class SampleBudget {

    private static final Unit MONEY = Unit.MONEY;
    private static final Unit PIECE = Unit.opaque("piece");
    private static final Unit PACK = Unit.parse("pack");
    private static final Unit PER_PACK = MONEY.over(PACK);
    private static final Unit HOUR = Unit.parse("h");
    private static final Unit CELSIUS = Unit.parse("degC");

    final Axis way = Axis.rows("way", "Way", List.of("screwed", "glued"), 0);
    final Axis part = Axis.rows("part", "Part", List.of("board", "bracket", "screw"), 3);
    final Axis group = Axis.rows("group", "Group", List.of("wood", "metal"), 0);
    final Axis year = Axis.periods("year", "Year", List.of("1", "2", "3", "4"));
    private final BudgetBuilder builder = new BudgetBuilder("Shelves, an invented example", "EUR");
    private final String injected;
    private Line shelf;
    private Line wages;
    private Line choice;
    private Line partName;
    private Line partCost;
    private Line partGroup;
    private Line partLife;
    private Line partsCost;
    private Line fixingCost;

    private SampleBudget(String injected) {
        this.injected = injected;
    }

    /** The budget with plain texts. */
    public static Budget make() {
        return new SampleBudget("Board of pine").build();
    }

    /** The budget with a part of the given name. */
    public static Budget withName(String name) {
        return new SampleBudget(name).build();
    }

    private Budget build() {
        entries();
        ways();
        parts();
        groups();
        years();
        summary();
        searched();
        builder.caution(
                "Loads",
                "A shelf that falls can hurt someone. This is an invented example and says nothing about loads; ask"
                        + " someone licensed to say so, and follow the code that holds where the shelf hangs.");
        builder.caution("Figures", "Invented for this example.");
        return builder.build();
    }

    private void entries() {
        ScheduleBuilder list = builder.schedule("Entries", "Shelf and labour")
                .note(
                        "Type in the tinted cells only. Everything else follows. The wage counts every hour that somebody is there,"
                                + " breaks included, and the length is measured along the wall from end to end.");
        shelf = list.entry("shelf_length", "Length of shelf", Unit.METRE)
                .above(0, 500)
                .usually(new Plausible(1, 6, 30), "invented for this example")
                .given(Given.typed(20, Unit.parse("ft"), Unit.METRE).from("Measured on the wall; invented."));
        wages = list.entry("hourly_wage", "Wage, all included", MONEY.over(HOUR))
                .from(0, 1000)
                .usually(new Plausible(12, 18.5, 40), "common practice, no source")
                .given(Given.number(18.5, MONEY.over(HOUR)));
        Line glue = list.entry("glue_temperature", "Temperature for glue", CELSIUS)
                .from(-10, 60)
                .given(Given.typed(68, Unit.parse("degF"), CELSIUS));
        list.line("glue_sets", "Whether the glue sets", Unit.ONE, glue.exceeds(Formulas.number(5, CELSIUS)));
        list.entry("price_year", "Year of the prices", Unit.ONE)
                .from(1990, 2100)
                .whole()
                .given(Given.number(2026, Unit.ONE));
        list.textEntry("finish_kind", "Finish of the surface")
                .oneOf(List.of("oil", "wax", "paint, two coats"))
                .usually("oil", "common practice, no source")
                .given(Given.text("paint, two coats"));
    }

    private void ways() {
        ScheduleBuilder table = builder.schedule("Entries", "Ways to fix it");
        Line key = table.textEntry("way_key", "Way", way).given(List.of(Given.text("screwed"), Given.text("glued")));
        Line label = table.textEntry("way_label", "What it is called", way)
                .given(List.of(Given.text("Screwed to brackets"), Given.text("Glued, no screws")));
        Line hours = table.entry("way_hours", "Hours a metre", HOUR.over(Unit.METRE), way)
                .from(0, 100)
                .given(List.of(number(0.75, HOUR.over(Unit.METRE)), number(0.4, HOUR.over(Unit.METRE))));
        ScheduleBuilder chosen = builder.schedule("Entries", "System chosen");
        choice = chosen.textEntry("way_choice", "System chosen")
                .keyOf(key)
                .usually("screwed", "")
                .given(Given.text("screwed"));
        chosen.line("way_in_words", "In words", Unit.ONE, lookup(label, key, choice));
        Line perMetre = chosen.line("fixing_hours", "Hours a metre", HOUR.over(Unit.METRE), lookup(hours, key, choice));
        fixingCost = chosen.line(
                "fixing_cost", "Labour", MONEY, perMetre.times(shelf).times(wages), "Hours a metre by length by wage.");
    }

    private static Given number(double value, Unit unit) {
        return Given.number(value, unit);
    }

    private void parts() {
        ScheduleBuilder table = builder.schedule("Parts", "Parts and what they cost")
                .note("Three rows are spare: fill them in and they count.");
        Line name = table.textEntry("part_name", "Part", part)
                .given(List.of(Given.text(injected), Given.text("Bracket"), Given.text("Screw, 5 by 40")));
        builder.nameRows(part, name);
        partName = name;
        partGroup = table.textEntry("part_group", "Group", part)
                .oneOf(group.keys())
                .given(List.of(Given.text("wood"), Given.text("metal"), Given.text("metal")));
        Unit rate = PIECE.over(Unit.METRE);
        Line perMetre = table.entry("part_rate", "Pieces a metre", rate, part)
                .from(0, 1000)
                .given(List.of(number(0.5, rate), number(1.25, rate), number(7, rate)));
        Unit content = PIECE.over(PACK);
        Line packSize = table.entry("part_pack", "Pieces a pack", content, part)
                .above(0, 10000)
                .given(List.of(number(1, content), number(4, content), number(50, content)));
        Line price = table.entry("part_price", "Price a pack", PER_PACK, part)
                .from(0, 1e6)
                .given(List.of(number(23.9, PER_PACK), number(11.45, PER_PACK), number(0.0875, PER_PACK)));
        partLife = table.entry("part_life", "Life in years", Unit.ONE, part)
                .from(0, 50)
                .whole()
                .given(List.of(number(2, Unit.ONE), number(3, Unit.ONE), number(1, Unit.ONE)));
        table.textEntry("part_source", "Source", part)
                .given(List.of(Given.text("Invented; no shop sells it at this price.")));
        Line packs = table.line(
                "part_packs",
                "Whole packs",
                PACK,
                when(packSize.isPositive(), perMetre.times(shelf).over(packSize).wholeUp(), none(PACK)));
        partCost = table.line("part_cost", "Cost", MONEY, packs.times(price));
        ScheduleBuilder second = builder.schedule("Parts", "Pieces left over");
        second.line("part_left", "Left over", PIECE, packs.times(packSize).minus(perMetre.times(shelf)));
        second.line("part_has_pack", "Bought", Unit.ONE, packs.isPositive());
        second.line(
                "part_price_each",
                "Price a piece",
                MONEY.over(PIECE),
                onlyWhen(packSize.isPositive(), price.over(packSize), "no pack size"));
        ScheduleBuilder totals = builder.schedule("Parts", "Parts together");
        partsCost = totals.line("parts_cost", "All parts", MONEY, sum(partCost, part));
        totals.line("parts_checked", "All parts, by packs and prices", MONEY, sumProduct(packs, price, part));
        totals.line("dearest_part", "Dearest part", MONEY, greatest(partCost, part));
    }

    private void groups() {
        ScheduleBuilder table = builder.schedule("Parts", "By group");
        Line key = table.textEntry("group_key", "Group", group).given(List.of(Given.text("wood"), Given.text("metal")));
        builder.nameRows(group, key);
        table.line("group_cost", "Cost", MONEY, sumWhere(partCost, partGroup, key, part));
        table.line("group_parts", "Number of parts", Unit.ONE, countWhere(partGroup, key, part));
    }

    private void years() {
        ScheduleBuilder head = builder.schedule("Years", "Years");
        Line number = head.entry("year_number", "Year", Unit.ONE, year)
                .given(List.of(number(1, Unit.ONE), number(2, Unit.ONE), number(3, Unit.ONE), number(4, Unit.ONE)));
        ScheduleBuilder blocks =
                builder.schedule("Years", "Replacements").note("A part is bought again when its life is over.");
        Line again = blocks.line(
                "part_renewal",
                "Bought again",
                MONEY,
                when(
                        and(partLife.isPositive(), number.exceeds(partLife)),
                        partCost.over(greater(partLife, one())),
                        none(MONEY)));
        blocks.line("part_renewal_twice", "Bought again, twice", MONEY, again.plus(again));
        ScheduleBuilder sums = builder.schedule("Years", "Balance");
        Line spent = sums.line("year_spent", "Spent", MONEY, sum(again, part));
        Line balance = sums.declare("year_balance", "Spent so far", MONEY, Kind.NUMBER, List.of(year), "");
        builder.define(balance, previous(balance, none(MONEY)).plus(spent));
    }

    private Formula injectedName() {
        return new Element(partName, part, 0);
    }

    private void searched() {
        Unit perHour = MONEY.over(HOUR);
        ScheduleBuilder list = builder.schedule("Summary", "What a search found");
        Line wage = list.solved(
                "worth_wage",
                "Worth it up to a wage of",
                perHour,
                "Invented; nothing was searched.",
                KnownAnswers.of(Solved.number(31.25)));
        Line length = list.solved(
                "worth_length",
                "Worth it from a length of",
                Unit.METRE,
                "",
                KnownAnswers.of(Solved.none("none in range")));
        Line cost = list.solvedNumber(
                "cost_as_filled", "First cost when it was searched", MONEY, "", KnownAnswers.of(Solved.number(220)));
        list.line(
                "wage_is_worth_it",
                "Whether it is worth it",
                Unit.ONE,
                not(wages.exceeds(wage.numberOr(none(perHour)))));
        list.line("length_found", "Whether a length was found", Unit.ONE, length.hasNumber());
        list.line(
                "length_to_go",
                "Length still missing",
                Unit.METRE,
                length.numberOr(shelf).minus(shelf));
        list.line(
                "cost_has_risen",
                "Whether the first cost has risen",
                Unit.ONE,
                partsCost.plus(fixingCost).exceeds(cost));
        ScheduleBuilder table = builder.schedule("Summary", "What a search found by part");
        Solved not = Solved.none("not searched");
        KnownAnswers found = KnownAnswers.of(Solved.number(30), Solved.number(12.5), not, not, not, not);
        Line worth = table.solved("part_worth", "Worth its price up to", PER_PACK, "", found, part);
        table.textLine("part_worth_state", "Found", when(worth.hasNumber(), text("found"), text("not found")));
        table.line("part_worth_more", "More than its cost", PER_PACK, worth.numberOr(none(PER_PACK)));
    }

    private void summary() {
        ScheduleBuilder list = builder.schedule("Summary", "The answer");
        Line total = list.line("total_cost", "First cost", MONEY, partsCost.plus(fixingCost));
        list.line("cost_per_metre", "First cost per metre", MONEY.over(Unit.METRE), total.over(shelf));
        list.line(
                "cost_per_foot",
                "First cost per foot",
                MONEY.over(Unit.parse("ft")),
                total.over(shelf).in(MONEY.over(Unit.parse("ft"))));
        Line sentence = list.textLine(
                "way_sentence",
                "In a sentence",
                joined(text("\"Fixed\": "), choice, text(" & "), injectedName(), text(".")));
        list.line(
                "sentence_fits",
                "The sentence is of glue and nothing else",
                Unit.ONE,
                joined(sentence, text("!")).is(joined(text("\"fixed\": glued & "), injectedName(), text(".!"))));
        list.line(
                "way_note",
                "Remark",
                Unit.ONE,
                when(choice.is("glued"), text("Mind the temperature while the glue sets"), text("Drill first")));
        list.textLine(
                "long_note",
                "A long remark",
                when(choice.isFilled(), text("Mind your \"step\". ".repeat(20)), text("")));
    }
}
