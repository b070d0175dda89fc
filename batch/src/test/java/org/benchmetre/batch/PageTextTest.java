package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Across;
import org.benchmetre.page.Block;
import org.benchmetre.page.CaseTable;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.Criterion;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.Evidence;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;
import org.benchmetre.page.shown.ShownCells;
import org.junit.jupiter.api.Test;

/** One page of every kind of block. Prices are 1.50, 0.085 and 0 USD/m, the bench 1,200 m, so that parts cost 1,800, 102 and 0 USD. */
class PageTextTest {

    private final SmallFarm farm = new SmallFarm();

    private String drawn(Block block) {
        return block.show(new PageText(farm.figures(), false));
    }

    private Table parts(TableRow... rows) {
        Table table =
                Table.of("Parts", farm.parts, Column.of("Part", farm.partLabel), Column.of("Cost", farm.partCost));
        return rows.length == 0 ? table : table.rows(Arrays.asList(rows));
    }

    @Test
    void a_page_begins_with_its_question_and_the_plan_and_shows_first_panel_second_panel_and_foot() {
        Page page = Page.answer("Answer", "What does it cost?")
                .head(new Sentences(
                        List.of(new Sentence(farm.sentence, Tone.LEAD), new Sentence(farm.silence, Tone.PLAIN))))
                .foot(new FixedWords("", "At the end.", Tone.FAINT))
                .right(List.of(20), new FixedWords("Second", "To the right.", Tone.PLAIN))
                .left(List.of(20), new FixedWords("First", "To the left.", Tone.PLAIN));

        assertThat(new PageText(farm.figures(), false).of(page))
                .isEqualTo("Answer: What does it cost?\nA small farm; money in USD\n\nAll parts cost 1,902 USD.\n\n"
                        + "First\nTo the left.\n\nSecond\nTo the right.\n\nAt the end.\n");
    }

    @Test
    void levers_stand_in_two_columns_with_their_units_and_choices_by_their_labels() {
        Levers levers = new Levers(
                "Change here",
                List.of(
                        FigureRow.of(farm.length),
                        FigureRow.of(farm.spacing),
                        FigureRow.of(farm.part),
                        FigureRow.of(farm.title)));

        assertThat(drawn(levers).lines())
                .containsExactly(
                        "Change here",
                        "Length of a bench  1,200 m                         Main part  Clip",
                        "Spacing            6 in                            Title      Own house");
    }

    @Test
    void figures_stand_with_their_units_a_sum_under_a_rule_and_a_reason_without_unit() {
        FigureList list = new FigureList(
                "Cost",
                List.of(
                        FigureRow.of("Length", farm.length),
                        FigureRow.of("Lost", farm.lost),
                        FigureRow.total("Sum", farm.sum)));

        assertThat(drawn(list).lines())
                .containsExactly(
                        "Cost",
                        "Length         1,200  m",
                        "Lost    nothing lost",
                        "-------------------------",
                        "Sum            1,902  USD");
    }

    @Test
    void a_table_has_headings_sums_under_rules_and_a_note_and_leaves_out_rows_that_are_nothing() {
        Table table = parts(
                        TableRow.at(0).under("Bought"),
                        TableRow.at(1),
                        TableRow.at(2).under("Found").ifAny(),
                        TableRow.single("All", Arrays.asList(null, new CellRef(farm.sum, 0)))
                                .total())
                .note("Prices of May.");

        assertThat(drawn(table).lines())
                .containsExactly(
                        "Parts",
                        "Part  Cost, USD",
                        "---------------",
                        "Bought",
                        "Pump      1,800",
                        "Clip        102",
                        "---------------",
                        "All       1,902",
                        "Prices of May.");
    }

    @Test
    void a_heading_passes_to_the_next_row_where_its_own_is_left_out() {
        Table table = parts(TableRow.at(2).under("Bought").ifAny(), TableRow.at(1));

        assertThat(drawn(table)).contains("Bought\nClip ").doesNotContain("Film");
    }

    @Test
    void the_largest_stand_first_where_a_line_decides_and_sums_stay_below() {
        Table table = parts(
                TableRow.at(2),
                TableRow.at(1),
                TableRow.at(0),
                TableRow.single("All", Arrays.asList(null, new CellRef(farm.sum, 0))));

        assertThat(drawn(table.largestFirst(farm.partCost)))
                .containsSubsequence("Pump", "Clip", "Film          –", "All");
        assertThat(drawn(table)).containsSubsequence("Film", "Clip", "Pump");
        assertThat(drawn(table.largestFirst(farm.partCost).most(2)))
                .containsSubsequence("Pump", "Clip", "All")
                .doesNotContain("Film");
    }

    @Test
    void a_table_of_one_unit_names_it_in_its_title_and_has_one_number_of_decimals_in_a_column() {
        Table table = Table.of(
                "Prices",
                farm.parts,
                Column.of("Part", farm.partLabel),
                Column.of("Now", farm.partPrice),
                Column.of("Then", farm.partPrice));

        assertThat(drawn(table).lines())
                .startsWith("Prices, USD/m")
                .contains("Pump  1.50  1.50", "Clip  0.09  0.09", "Film     –     –");
    }

    @Test
    void criteria_stand_below_each_other_for_the_filled_rows_of_an_axis() {
        Across across = new Across(
                "Side by side",
                farm.parts,
                List.of(
                        Criterion.of("Price", farm.partPrice),
                        Criterion.of("Cost", farm.partCost).under("In all").total()));

        assertThat(drawn(across).lines())
                .containsExactly(
                        "Side by side",
                        "               Pump  Clip  Film",
                        "-------------------------------",
                        "Price, USD/m   1.50  0.09     –",
                        "In all",
                        "-------------------------------",
                        "Cost, USD     1,800   102     –");
    }

    @Test
    void a_case_table_shows_real_values_on_both_edges_and_the_plan_in_brackets() {
        CaseTable table = new CaseTable("Over", farm.cases, farm.down, farm.across, farm.length, farm.spacing);

        assertThat(drawn(table).lines())
                .containsExactly(
                        "Over, m",
                        "Down: Length of a bench, m. Across: Spacing, m.",
                        "       0.0762   0.1524",
                        "-----------------------",
                        "  600     143     -314",
                        "1,200     743     [286]",
                        "1,800   1,343      886",
                        "In brackets: the plan as entered. A minus is a loss.");
    }

    @Test
    void of_a_chart_its_sentence_is_printed() {
        Chart chart = new Chart(
                farm.sentence, Chart.Shape.BARS, List.of(farm.partCost), farm.parts, ChartLook.of(10, "Bars."));

        assertThat(drawn(chart)).isEqualTo("All parts cost 1,902 USD.\n");
    }

    @Test
    void entries_stand_as_typed_with_range_mark_and_source() {
        EntryList list = new EntryList("Entries", List.of(farm.length, farm.spacing, farm.part));

        assertThat(drawn(list).lines())
                .containsExactly(
                        "Entries",
                        "Entry              Value  Unit  Usual range        Source",
                        "-----------------------------------------------------------------------------",
                        "Length of a bench  1,200  m     5 to 20 (outside)  measured",
                        "Spacing                6  in    3.937 to 15.75     common practice, no source",
                        "Main part           Clip");
    }

    @Test
    void an_entry_table_shows_what_was_typed_with_all_digits_and_leaves_spare_rows_out() {
        EntryTable table = new EntryTable(
                "Parts", farm.parts, List.of(Column.of("Part", farm.partLabel), Column.of("Price", farm.partPrice)));

        assertThat(drawn(table).lines())
                .containsExactly(
                        "Parts",
                        "Part  Price, USD/m",
                        "------------------",
                        "Pump         1.500",
                        "Clip         0.085",
                        "Film         0.000");
    }

    @Test
    void an_entry_table_whose_first_column_is_a_number_names_its_rows() {
        EntryTable table = new EntryTable("", farm.parts, List.of(Column.of("Price", farm.partPrice)));

        assertThat(drawn(table).lines())
                .containsExactly(
                        "Part  Price, USD/m",
                        "------------------",
                        "Pump         1.500",
                        "Clip         0.085",
                        "Film         0.000");
    }

    @Test
    void a_unit_that_the_words_say_is_not_said_again() {
        ShownCells cells = new ShownCells(farm.figures(), Page.Kind.ANSWER);

        assertThat(cells.withUnit("Packs", Unit.parse("pack"))).isEqualTo("Packs");
        assertThat(cells.withUnit("Length", SmallFarm.METRE)).isEqualTo("Length, m");
        assertThat(cells.withUnit("", SmallFarm.METRE)).isEqualTo("m");
        assertThat(cells.withUnit("Share", Unit.ONE)).isEqualTo("Share");
    }

    @Test
    void columns_that_do_not_fit_follow_in_bands_that_repeat_the_names_of_the_rows() {
        Column wide = Column.of("A heading that is long enough for a band", farm.partLabel);
        EntryTable table =
                new EntryTable("Parts", farm.parts, List.of(Column.of("Part", farm.partLabel), wide, wide, wide));
        List<String> lines = drawn(table).lines().toList();

        assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(TextTable.WIDTH));
        assertThat(lines).filteredOn(line -> line.startsWith("Pump")).hasSizeGreaterThanOrEqualTo(1);
    }

    @Test
    void cautions_are_topics_in_short_and_sentences_in_full() {
        CautionList inShort = new CautionList("Cautions", farm.budget.cautions(), false);

        assertThat(drawn(inShort)).isEqualTo("Cautions (in full: --cautions): Loads, Money.\n");
        assertThat(inShort.show(new PageText(farm.figures(), true)))
                .isEqualTo("Cautions\nLoads: Have benches confirmed.\nMoney: Replace what is invented.\n");
        assertThat(drawn(new CautionList("Cautions", farm.budget.cautions(), true)))
                .contains("Have benches confirmed.");
    }

    @Test
    void numbers_entered_are_counted_by_their_sources() {
        assertThat(drawn(new Evidence("Sources")).lines())
                .contains(
                        "Quoted                                   1",
                        "Invented for the demo                    1",
                        "Other words                              1")
                .endsWith("All                                      4");
    }

    @Test
    void a_shelf_finds_pages_by_name_with_spaces_or_dashes_and_names_near_ones() {
        Page toBuy = Page.answer("To buy", "What to order?");
        Page entries = Page.answer("Entries", "What was typed?");
        PageShelf shelf = new PageShelf(List.of(toBuy, entries));
        PageText drawer = new PageText(farm.figures(), false);

        assertThat(shelf.first()).isEqualTo("to-buy");
        for (String name : List.of("to-buy", "To buy", " TO_BUY ")) {
            assertThat(shelf.drawn(name, drawer))
                    .hasValueSatisfying(text -> assertThat(text)
                            .startsWith("To buy: What to order?")
                            .endsWith("Cautions (in full: --cautions): Loads, Money.\n")
                            .doesNotContain("typed"));
        }
        assertThat(shelf.drawn("all", drawer))
                .hasValueSatisfying(text ->
                        assertThat(text).containsSubsequence("What to order?", "=====", "What was typed?", "Cautions"));
        assertThat(shelf.drawn("tobuy", drawer)).isEqualTo(Optional.empty());
        assertThat(shelf.missing("tobuy"))
                .isEqualTo("There is no page \"tobuy\", did you mean to-buy? Pages: to-buy, entries, all.");
        assertThat(shelf.others("to buy")).isEqualTo("Other pages (--page NAME): entries, all; or --csv.\n");
    }
}
