package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** The first page: what a metre costs and returns, what is left out, and the entries that decide, beside what they move. */
final class AnswerPage {

    private static final int CHART_ROWS = 14;
    private static final List<Integer> LEFT = List.of(22, 26, 13);
    private static final List<Integer> RIGHT = List.of(27, 8, 8, 8, 8, 8, 8, 8, 10);

    private AnswerPage() {}

    static Page of(Budget budget) {
        return Page.answer("Answer", "What does a metre of bench cost, and what does it return?")
                .head(sentences(budget))
                .left(LEFT, levers(budget), DoubtBlock.top(budget))
                .right(RIGHT, matrix(budget), chart(budget))
                .foot(
                        new CautionList("", budget.cautions(), false),
                        new FixedWords(
                                "", "Replace invented prices by quotations before you spend or lend.", Tone.FAINT));
    }

    /** What moves the fruit of all crops. */
    private static FigureRow fruit(Budget budget) {
        return FarmTable.CROPS.hasRows(budget.structure())
                ? lever(budget, "All fruit, times", "yield_level")
                : lever(budget, "Fruit per plant", "yield_per_plant");
    }

    private static Levers levers(Budget budget) {
        List<FigureRow> rows = new ArrayList<>();
        rows.add(lever(budget, "Irrigation system", "irrigation_choice"));
        if (!FarmTable.CROPS.hasRows(budget.structure())) {
            rows.add(lever(budget, "Plant stock", "stock_choice"));
        }
        rows.addAll(List.of(
                lever(budget, "Spacing", "plant_spacing"),
                fruit(budget),
                lever(budget, "Fruit price level", "price_level"),
                lever(budget, "Picking rate", "picking_rate"),
                lever(budget, "Level of wages", "wage_level"),
                lever(budget, "Heating", "heating_use"),
                lever(budget, "Price of fuel", "fuel_price"),
                lever(budget, "Real rate of interest", "recovery_rate")));
        return new Levers("Change here", rows);
    }

    private static FigureRow lever(Budget budget, String label, String entry) {
        return FigureRow.of(label, budget.line(entry));
    }

    private static Sentences sentences(Budget budget) {
        return new Sentences(List.of(
                new Sentence(budget.line("answer_cost_and_return"), Tone.LEAD),
                new Sentence(budget.line("left_out_sentence"), Tone.WARNING),
                new Sentence(budget.line("irrigation_verdict"), Tone.PLAIN),
                new Sentence(budget.line("answer_break_even"), Tone.PLAIN),
                new Sentence(budget.line("doubt_sentence"), Tone.PLAIN),
                new Sentence(budget.line("house_sentence"), Tone.PLAIN),
                new Sentence(budget.line("answer_funding"), Tone.PLAIN),
                new Sentence(budget.line("stress_first"), Tone.PLAIN),
                new Sentence(budget.line("answer_warmth"), Tone.WARNING),
                new Sentence(budget.line("calendar_no_heat"), Tone.WARNING)));
    }

    private static Table matrix(Budget budget) {
        Line label = budget.line("account_label");
        Axis accounts = label.axes().get(0);
        List<TableRow> rows = List.of(
                firstCost(budget).total(),
                account(accounts, "receipts"),
                account(accounts, "operating"),
                account(accounts, "ownership"),
                account(accounts, "overhead"),
                account(accounts, "costs").total(),
                account(accounts, "returns").total());
        List<Column> columns = new ArrayList<>(List.of(Column.of("Per", label)));
        measures(budget).forEach(per -> columns.add(Column.of(per.words, budget.line(per.account))));
        return Table.of("Cost and return, " + budget.currency(), accounts, columns.toArray(Column[]::new))
                .rows(rows);
    }

    /** A measure: what it is called, the accounts and first cost by it; no first cost where the text is empty. */
    private record Per(String words, String account, String firstCost) {}

    private static List<Per> measures(Budget budget) {
        List<Per> both = Lead.of(budget)
                .pairs(List.of(
                        new Per("metre", "account_per_metre", "first_cost_per_metre"),
                        new Per("foot", "account_per_foot", "first_cost_per_foot"),
                        new Per("m²", "account_per_area", "first_cost_per_area"),
                        new Per("ft²", "account_per_square_foot", "first_cost_per_square_foot"),
                        new Per("kg", "account_per_kg", ""),
                        new Per("lb", "account_per_pound", "")));
        both.add(2, new Per("plant", "account_per_plant", "first_cost_per_plant"));
        both.add(new Per("in total", "account_total", "first_cost_total"));
        return both;
    }

    private static TableRow account(Axis accounts, String key) {
        return TableRow.at(accounts.indexOf(key));
    }

    /** To build: no row of the accounts, which are of a year, and nothing for each kilogram. */
    private static TableRow firstCost(Budget budget) {
        List<CellRef> cells = new ArrayList<>();
        cells.add(null);
        measures(budget)
                .forEach(per -> cells.add(per.firstCost.isEmpty() ? null : new CellRef(budget.line(per.firstCost), 0)));
        return TableRow.single("First cost (to build)", cells);
    }

    private static Chart chart(Budget budget) {
        Line money = budget.line("money_of_metre");
        return new Chart(
                budget.line("money_sentence"),
                Chart.Shape.STACKED_BARS,
                List.of(money),
                money.axes().get(1),
                ChartLook.of(
                        CHART_ROWS,
                        "Two bars, in money per metre of bench and year: receipts by grade of fruit, and costs by who takes the money."));
    }
}
