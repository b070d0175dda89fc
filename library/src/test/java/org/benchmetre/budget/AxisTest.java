package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class AxisTest {

    @Test
    void aPeriodIsReadByItsLabelAndFoundByItsKey() {
        Axis months = Axis.periods("month", "Month", List.of("jan", "feb"), List.of("Jan", "Feb"));
        assertThat(months.label(1)).isEqualTo("Feb");
        assertThat(months.indexOf("feb")).isEqualTo(1);
    }

    @Test
    void withoutLabelsTheKeyIsRead() {
        assertThat(Axis.periods("year", "Year", List.of("0", "1")).label(1)).isEqualTo("1");
        assertThat(Axis.rows("part", "Part", List.of("pump"), 1).label(1)).isEqualTo("spare_1");
    }

    @Test
    void labelsAreAsManyAsKeys() {
        List<String> keys = List.of("jan", "feb");
        assertThatThrownBy(() -> Axis.periods("month", "Month", keys, List.of("Jan")))
                .isInstanceOf(FormulaException.class)
                .hasMessage("Axis month has 2 keys, but found 1 labels.");
    }
}
