package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LinesAndExplainTest {

    @Test
    void lines_as_csv_have_one_row_each() {
        List<String> rows = Ran.with("lines", Ran.SAMPLE, "--csv").outLines();

        assertThat(rows)
                .startsWith("line,label,unit,kind,low,typical,high,source")
                .contains("bench_metres,Bench metres,m,formula,,,,")
                .contains("bench_count,Benches,bench,entry,2,10,60,invented for the demo");
        assertThat(rows.stream().filter(row -> row.startsWith("material_price,")))
                .hasSize(1);
        assertThat(rows.stream().map(row -> row.substring(0, row.indexOf(',')))).doesNotHaveDuplicates();
    }

    @Test
    void lines_as_tables_stand_by_schedule() {
        Ran ran = Ran.with("lines", Ran.SAMPLE);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains(
                        "House workings: House and benches",
                        "Parts workings: Parts: lives, hours and doubts (each part)");
        assertThat(ran.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void a_figure_is_explained_down_to_its_entries() {
        Ran ran = Ran.with("explain", Ran.SAMPLE, "bench_metres", "--set", "bench_length=30");

        assertThat(ran.exit()).isZero();
        assertThat(ran.outLines())
                .containsExactly(
                        "Bench metres (bench_metres) = 360 m",
                        "  = bench_count*bench_length",
                        "  Benches (bench_count) = 12 bench",
                        "    entry, farm.csv, row 9, column value; source: invented for the demo",
                        "  Length of one bench (bench_length) = 30 m",
                        "    entry, setting bench_length=30; source: changed for this run");
    }

    @Test
    void the_first_cost_is_explained_within_a_hundred_columns() {
        Ran ran = Ran.with("explain", Ran.SAMPLE, "first_cost_per_metre");

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("(see above)", "more rows add nothing)", "materials.csv, row 2");
        assertThat(ran.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void a_line_with_rows_needs_a_key() {
        Ran ran = Ran.with("explain", Ran.SAMPLE, "group_first_cost");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).contains("group_first_cost[group]", "substrate");
    }

    @Test
    void depth_cuts_an_explanation_short_and_says_so() {
        Ran whole = Ran.with("explain", Ran.SAMPLE, "first_cost_per_metre");
        Ran two = Ran.with("explain", Ran.SAMPLE, "first_cost_per_metre", "--depth", "2");

        assertThat(two.exit()).isZero();
        assertThat(two.outLines().size()).isLessThan(whole.outLines().size() / 10);
        assertThat(two.outLines().get(0)).isEqualTo(whole.outLines().get(0));
        assertThat(two.out()).contains(" ...");
        assertThat(whole.out()).doesNotContain(" ...");
        assertThat(Ran.with("explain", Ran.SAMPLE, "first_cost_per_metre", "--depth", "0")
                        .exit())
                .isEqualTo(2);
    }
}
