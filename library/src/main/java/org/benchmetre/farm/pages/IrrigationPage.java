package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Across;
import org.benchmetre.page.Block;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.Criterion;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/**
 * Emitters or drip tape: the decision and how sure it is, the systems side by side, what makes the difference, and at which values of
 * entries the answer changes. A few systems stand beside the partial budget; more of them take the whole width, eight to a table.
 */
final class IrrigationPage {

    /** Cautions that concern water in lines. */
    static final Set<String> TOPICS =
            Set.of("Water pressure and backflow", "Acid against clogging", "Acid dosing", "Electricity near water");

    private static final String FAILING = "way_failed_per_year_";
    private static final int BESIDE = 5;
    private static final int A_TABLE = 8;
    private static final int PAIR = 2;
    private static final List<Integer> WITH_BOXES = List.of(35, 13, 13, 13, 10, 12, 22);

    /** Two systems leave room for their names, and the page stays one sheet of paper. */
    private static final List<Integer> PAIR_WITH_BOXES = List.of(36, 13, 13, 12, 8, 12, 24);

    private static final List<Integer> BOXES = List.of(23, 8, 12);
    private static final int CRITERION = 33;
    private static final int UNIT = 12;
    private static final int SYSTEM = 13;

    private final Budget budget;
    private final Axis ways;

    private IrrigationPage(Budget budget) {
        this.budget = budget;
        this.ways = budget.line("way_key").axes().get(0);
    }

    static Page of(Budget budget) {
        return new IrrigationPage(budget).page();
    }

    private Page page() {
        Page page = Page.answer("Irrigation", "Emitters or drip tape?").head(answer());
        int systems = ways.filled();
        return systems > BESIDE
                ? page.left(widths(systems), blocks(List.of(sideBySide(), flips(), difference())))
                        .foot(cautions().toArray(Block[]::new))
                : page.left(systems > PAIR ? WITH_BOXES : PAIR_WITH_BOXES, blocks(List.of(sideBySide(), flips())))
                        .right(BOXES, blocks(List.of(difference())))
                        .foot(cautions().toArray(Block[]::new));
    }

    private static List<Integer> widths(int systems) {
        List<Integer> widths = new ArrayList<>(List.of(CRITERION, UNIT));
        widths.addAll(Collections.nCopies(Math.min(systems, A_TABLE), SYSTEM));
        return widths;
    }

    private static Block[] blocks(List<List<? extends Block>> parts) {
        return parts.stream().flatMap(List::stream).toArray(Block[]::new);
    }

    private Sentences answer() {
        return new Sentences(List.of(
                new Sentence(line("irrigation_verdict"), Tone.LEAD),
                new Sentence(line("irrigation_reason_evenness"), Tone.PLAIN),
                new Sentence(line("irrigation_reason_pulses"), Tone.PLAIN),
                new Sentence(line("irrigation_flips"), Tone.PLAIN),
                new Sentence(line("irrigation_uniformity_missed"), Tone.WARNING)));
    }

    private List<Across> sideBySide() {
        List<Criterion> rows = new ArrayList<>(
                both("First cost of the line", "side_line_first_cost", "side_line_first_cost_per_foot"));
        rows.addAll(
                both("Yearly cost of what differs", "way_differing_cost_per_metre", "side_differing_cost_per_foot"));
        rows.add(row("Of which fruit lost to dry plants", "side_lost_fruit"));
        rows.add(row("Yearly cost, all counted", "way_yearly_cost_per_metre").total());
        rows.add(row("Emission uniformity, new", "way_emission_uniformity"));
        rows.addAll(both("Longest line that meets the target", "way_longest_run", "side_longest_run_in_feet"));
        rows.addAll(both("Pressure at the inlet", "way_inlet_pressure", "side_inlet_pressure_in_psi"));
        rows.addAll(both("Flow of a bench", "way_flow_per_bench", "side_flow_in_gallons"));
        rows.add(row("Length of a pulse", "way_pulse_length"));
        rows.add(row("Uniformity over whole pulses, at most", "way_pulsed_uniformity"));
        rows.add(row("Water given", "side_water_given"));
        rows.add(row("Water given with check valves", "side_water_with_valves"));
        rows.add(row("Saved by them, their price aside", "valve_cost_saved"));
        rows.add(row("Plants falling dry in a year", "way_dry_plants"));
        return IntStream.iterate(0, from -> from < ways.filled(), from -> from + A_TABLE)
                .mapToObj(from -> new Across(
                        from == 0 ? "Side by side" : "Side by side, continued",
                        ways,
                        rows,
                        from,
                        Math.min(ways.filled(), from + A_TABLE)))
                .toList();
    }

    private Criterion row(String label, String id) {
        return Criterion.of(label, line(id));
    }

    /** The same figure in both units, the leading one first. */
    private List<Criterion> both(String label, String metric, String us) {
        List<String> ids = Lead.of(budget).pairs(List.of(metric, us));
        return List.of(row(label, ids.get(0)), row("", ids.get(1)));
    }

    /** Shares of failing outlets are small numbers and have a table of their own, so that each column keeps its digits. */
    private List<Block> flips() {
        return List.of(
                flips(
                        "Where the answer changes (entries that never do are folded away)",
                        key -> !key.startsWith(FAILING)),
                flips("", key -> key.startsWith(FAILING)));
    }

    private Table flips(String title, Predicate<String> isShown) {
        Axis entries = line("flip_label").axes().get(0);
        return Table.of(
                        title,
                        entries,
                        Column.of(title.isEmpty() ? "Outlets that fail in a year" : "Entry", line("flip_label")),
                        Column.of("Unit", line("flip_unit")),
                        Column.of("Now", line("flip_current")),
                        Column.of("From", line("flip_low")),
                        Column.of("To", line("flip_high")),
                        Column.of("Changes at", line("flip_value")),
                        Column.of("Then", line("flip_to")))
                .rows(IntStream.range(0, entries.filled())
                        .filter(row -> isShown.test(entries.keys().get(row)))
                        .mapToObj(row -> TableRow.at(row).ifAny())
                        .toList())
                .nothingWithout(line("flip_value"));
    }

    /** With one system there is nothing to compare. */
    private List<Block> difference() {
        if (ways.filled() < 2) {
            return List.of();
        }
        Line cost = line("cause_way_cost_per_metre");
        return List.of(
                new Sentences(List.of(new Sentence(line("partial_title"), Tone.FAINT))),
                new FigureList(
                        "Partial budget: what is better",
                        List.of(
                                FigureRow.of("Added returns", line("partial_added_returns")),
                                FigureRow.of("Reduced costs", line("partial_reduced_costs")),
                                FigureRow.total("Total", line("partial_better")))),
                new FigureList(
                        "What is worse",
                        List.of(
                                FigureRow.of("Added costs", line("partial_added_costs")),
                                FigureRow.of("Reduced returns", line("partial_reduced_returns")),
                                FigureRow.total("Total", line("partial_worse")),
                                FigureRow.total("Gain of changing", line("partial_net")))),
                new Chart(
                        line("cause_title"),
                        Chart.Shape.STACKED_BARS,
                        List.of(cost),
                        ways,
                        ChartLook.of(
                                19 + ways.filled(),
                                "Bars of the yearly cost per metre that differs between irrigation systems, one bar for each, by cause.")));
    }

    private List<Block> cautions() {
        return List.of(
                new Sentences(List.of(new Sentence(line("flip_note"), Tone.FAINT))),
                new CautionList(
                        "",
                        budget.cautions().stream()
                                .filter(caution -> TOPICS.contains(caution.topic()))
                                .toList(),
                        false));
    }

    private Line line(String id) {
        return budget.line(id);
    }
}
