package org.benchmetre.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Runs every row of {@code published.csv}. What a source prints is apart from what we worked out ourselves, be it from printed
 * inputs: the first is held to the last printed digit.
 */
class PublishedChecksTest {

    /** Longest plan that a row asks for, a. */
    private static final int LONGEST = 12;

    private static Budget sample;

    @BeforeAll
    static void read() {
        sample = Sample.troughHouseWithRoom(LONGEST);
    }

    static List<PublishedRow> rows() throws IOException {
        return PublishedFiles.rows("published.csv").stream()
                .map(PublishedRow::of)
                .toList();
    }

    static Stream<PublishedRow> printed() throws IOException {
        return rows().stream().filter(row -> row.kind().equals(PublishedRow.PRINTED));
    }

    static Stream<PublishedRow> workedOut() throws IOException {
        return rows().stream().filter(row -> PublishedRow.WORKED_OUT.contains(row.kind()));
    }

    @ParameterizedTest
    @MethodSource("printed")
    void gives_what_the_source_prints(PublishedRow row) {
        agrees(row);
    }

    @ParameterizedTest
    @MethodSource("workedOut")
    void gives_what_we_worked_out_apart_from_the_code(PublishedRow row) {
        agrees(row);
    }

    private static void agrees(PublishedRow row) {
        assertThat(Readings.of(row, sample)).as("%s", row).isCloseTo(row.number(), within(row.allowed()));
    }

    @Test
    void every_row_has_a_kind_and_a_source_and_a_reason_where_the_printed_digits_do_not_say_how_near()
            throws IOException {
        assertThat(rows()).hasSizeGreaterThan(100).allSatisfy(row -> {
            assertThat(Stream.concat(Stream.of(PublishedRow.PRINTED), PublishedRow.WORKED_OUT.stream()))
                    .contains(row.kind());
            assertThat(row.source()).isNotBlank();
            assertThat(row.within().isEmpty()).isEqualTo(row.reason().isEmpty());
            assertThat(row.within().isEmpty())
                    .as("worked out, and no digits to go by")
                    .matches(none -> !none || row.kind().equals(PublishedRow.PRINTED));
        });
        assertThat(rows()).extracting(PublishedRow::id).doesNotHaveDuplicates();
    }

    @Test
    void half_a_unit_of_the_last_digit_is_allowed() {
        assertThat(PublishedRow.halfOfLastDigit("2605.76")).isEqualTo(0.005);
        assertThat(PublishedRow.halfOfLastDigit("12371")).isEqualTo(0.5);
        assertThat(PublishedRow.halfOfLastDigit("3.0")).isEqualTo(0.05);
    }
}
