package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FarmFileTest {

    private static final String HEADER = "line,value,unit,low,high,source";

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newInput() {
        input = new Input(folder);
    }

    @Test
    void a_row_is_taken_by_its_line_and_reads_typed_cells() {
        FarmFile farm = FarmFile.of(
                input.table(HEADER, " Bench_Length ,30,m,20,50,invented for the demo", "material_price[Tape],0.12,,,,"),
                input.faults());

        FarmRow length = farm.take("bench_length").orElseThrow();
        assertThat(length)
                .extracting(FarmRow::line, FarmRow::value, FarmRow::unit)
                .containsExactly("bench_length", "30", "m");
        assertThat(length)
                .extracting(FarmRow::low, FarmRow::high, FarmRow::source)
                .containsExactly("20", "50", "invented for the demo");
        assertThat(length.row().number("value", Bounds.above(0), "m", input.faults()))
                .isEqualTo(30);
        assertThat(farm.take("material_price[tape]")).isPresent();
        assertThat(farm.take("bench_count")).isEmpty();
        assertThat(input.messages()).isEmpty();
    }

    @Test
    void what_nobody_took_is_left_in_the_order_of_the_file() {
        FarmFile farm = FarmFile.of(input.table(HEADER, "b_b,1", "a_a,2", "c_c,3"), input.faults());
        farm.take("a_a");
        farm.take("a_a");

        assertThat(farm.untaken()).extracting(FarmRow::line).containsExactly("b_b", "c_c");
    }

    @Test
    void a_line_that_stands_twice_is_a_fault_naming_both_rows_and_the_first_counts() {
        FarmFile farm = FarmFile.of(
                input.table(HEADER, "bench_count,10", "# note", "BENCH_COUNT,12", "bench_count,13"), input.faults());

        assertThat(farm.take("bench_count").orElseThrow().value()).isEqualTo("10");
        assertThat(farm.untaken()).isEmpty();
        assertThat(input.messages())
                .containsExactly(
                        "parts.csv, row 4, column line: found \"bench_count\", which row 2 has already, expected each line"
                                + " once.",
                        "parts.csv, row 5, column line: found \"bench_count\", which row 2 has already, expected each line"
                                + " once.");
    }

    @Test
    void a_row_without_a_line_is_a_fault() {
        FarmFile.of(input.table(HEADER, ",10,m"), input.faults());

        assertThat(input.messages())
                .containsExactly("parts.csv, row 2, column line: found nothing, expected the name of a line.");
    }

    @Test
    void low_high_and_source_may_be_left_out_but_not_the_unit() {
        Table short1 = input.table("line,value,unit", "bench_count,10,1");
        assertThat(FarmFile.of(short1, input.faults()).take("bench_count")).isPresent();
        assertThat(input.messages()).isEmpty();

        Table short2 = input.table("line,value", "bench_count,10");
        assertThat(FarmFile.of(short2, input.faults()).take("bench_count")).isEmpty();
        assertThat(input.messages())
                .containsExactly(
                        "parts.csv, row 1: found no column \"unit\", expected a header with \"line\", \"value\" and"
                                + " \"unit\" (it has \"line\" and \"value\").");
    }
}
