package org.benchmetre.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.EntryBuilder;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.EvidenceKind;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** Three entries a, b and c move a figure 10 a + b and another 60 / c, which stands for nothing from 11 on. */
class RangeEndsTest {

    private static final Unit ONE = Unit.ONE;

    private final BudgetBuilder builder = new BudgetBuilder("Test", "EUR");
    private final ScheduleBuilder s = builder.schedule("Sheet", "Table");
    private final ScheduleBuilder rows = builder.schedule("Sheet", "Rows");
    /** 4, usually 3 to 6. */
    private final Line a = entry("a_a", 4, new Plausible(3, 4, 6), "a price list of 2024");
    /** 10, of a range that nobody knows: 7 to 15. */
    private final Line b = entry("b_b", 10, Plausible.UNKNOWN, "");
    /** 6, usually 1 to 8, but never below 5. */
    private final Line c = entry("c_c", 6, new Plausible(1, 6, 8), "common practice, no source");

    private final Line sum =
            s.line("the_sum", "Sum", ONE, a.times(Formulas.number(10, ONE)).plus(b));
    private final Line part =
            s.line("the_part", "Part", ONE, Formulas.number(60, ONE).over(c));

    private Line entry(String id, double value, Plausible usual, String source) {
        EntryBuilder entry =
                s.entry(id, id, ONE).from(id.equals("c_c") ? 5 : 0, 100).usually(usual, source);
        return entry.given(Given.number(value, ONE).from(source));
    }

    private final RangeEnds ends = new RangeEnds(List.of(a, b, c), List.of(sum, part), 0.7, 1.5);
    private final EndSearch.Figure ofSum = EndSearch.Figure.of(sum);
    private final EndSearch.Figure ofPart = new EndSearch.Figure(part, 11, "nothing");
    private final Axis axis = Axis.rows("row", "Row", List.of("a", "b", "c"), 0);

    private Figures figures() {
        return Figures.of(builder.build());
    }

    private static List<String> texts(Figures figures, Line line) {
        return List.of(figures.text(line, 0), figures.text(line, 1), figures.text(line, 2));
    }

    @Test
    void each_entry_alone_stands_at_both_ends() {
        Line low = rows.solved("low_sum", "Low", ONE, "", new EndSearch.Change(ends, ofSum, false), axis);
        Line high = rows.solved("high_sum", "High", ONE, "", new EndSearch.Change(ends, ofSum, true), axis);
        Figures figures = figures();
        assertThat(texts(figures, low)).containsExactly("-10", "-3", "0");
        assertThat(texts(figures, high)).containsExactly("20", "5", "0");
    }

    @Test
    void an_end_is_kept_within_bounds_and_a_figure_that_stands_for_nothing_gives_its_reason() {
        Line low = rows.solved("low_part", "Low", ONE, "", new EndSearch.Change(ends, ofPart, false), axis);
        Line high = rows.solved("high_part", "High", ONE, "", new EndSearch.Change(ends, ofPart, true), axis);
        Figures figures = figures();
        assertThat(texts(figures, low)).containsExactly("0", "0", "nothing");
        assertThat(texts(figures, high)).containsExactly("0", "0", "-2.5");
    }

    @Test
    void weight_is_the_larger_share_of_the_largest_change() {
        Line weight =
                rows.solvedNumber("the_weight", "W", ONE, "", new EndSearch.Weight(ends, List.of(ofSum, ofPart)), axis);
        Line most = s.solvedNumber("the_most", "M", ONE, "", new EndSearch.Largest(ends, ofSum));
        Line first = s.solvedText(
                "the_first", "F", "", new EndSearch.Foremost(ends, ofPart, List.of("first", "second", "third")));
        Figures figures = figures();
        assertThat(texts(figures, weight)).containsExactly("1", "0.25", "1");
        assertThat(figures.number(most, 0)).isEqualTo(20);
        assertThat(figures.text(first, 0)).isEqualTo("third");
    }

    @Test
    void words_tell_ranges_sources_and_how_far_to_trust_them() {
        EntryWords.Asked asked = new EntryWords.Asked(ends.entries(), Map.of("b_b", List.of("z_z", "a_a")));
        EntryWords.Told told = new EntryWords.Told(100, 1, "%");
        Line ranges =
                rows.solvedText("the_range", "R", "", new EntryWords.Ranges(ends, List.of(told, told, told)), axis);
        Line sources = rows.solvedText("the_source", "S", "", new EntryWords.Sources(ends.entries(), 15), axis);
        Line kinds = rows.solvedText("the_kind", "K", "", new EntryWords.Kinds(asked), axis);
        Line backed = s.solvedNumber(
                "the_backed", "B", ONE, "", new EntryWords.Counted(asked, Set.of(EvidenceKind.PUBLISHED)));
        Figures figures = figures();
        assertThat(texts(figures, ranges))
                .containsExactly("300.0 to 600.0 %", "700.0 to 1,500.0 %", "500.0 to 800.0 %");
        assertThat(texts(figures, sources)).containsExactly("a price ...", "none said", "common ...");
        assertThat(texts(figures, kinds)).containsExactly("Published", "Published", "Common practice, no source");
        assertThat(figures.number(backed, 0)).isEqualTo(2);
    }

    @Test
    void a_figure_that_does_not_move_has_no_weight() {
        Line still = s.line("the_still", "Still", ONE, when(a.isPositive(), Formulas.one(), Formulas.one()));
        RangeEnds one = new RangeEnds(List.of(a, b, c), List.of(still), 0.7, 1.5);
        Line weight = rows.solvedNumber(
                "the_weight", "W", ONE, "", new EndSearch.Weight(one, List.of(EndSearch.Figure.of(still))), axis);
        assertThat(texts(figures(), weight)).containsExactly("0", "0", "0");
    }
}
