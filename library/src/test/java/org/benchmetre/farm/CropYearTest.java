package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The crop year is the calendar, turned round to begin with the month of planting. */
class CropYearTest {

    private static final int MONTHS = 12;
    private static final Budget SAMPLE = Sample.troughHouse();

    /** Each line of the crop year and the line of the calendar that it turns round. */
    private static final List<List<String>> TURNED = List.of(
            List.of("season_fruit", "month_yield"),
            List.of("season_hours", "hours_in_month"),
            List.of("season_people", "people_in_month"),
            List.of("season_water", "month_water_given"),
            List.of("season_heat", "heat_energy"),
            List.of("season_receipts", "budget_month_receipts"),
            List.of("season_cash_out", "budget_month_costs"));

    private static Figures planted(Month month, String... settings) {
        String[] all = Arrays.copyOf(settings, settings.length + 1);
        all[settings.length] = "planting_month=" + named(month).toLowerCase(Locale.ROOT);
        return Figures.of(Sample.with(SAMPLE, all));
    }

    private static String named(Month month) {
        return month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    private static List<Double> along(Figures f, String id) {
        Line line = f.budget().line(id);
        return IntStream.range(0, line.size()).mapToObj(i -> f.number(line, i)).toList();
    }

    @ParameterizedTest
    @EnumSource(Month.class)
    void monthsAndYearsFollowTheCalendar(Month planting) {
        Figures f = planted(planting);
        YearMonth month = YearMonth.of((int) f.number("plan_year"), planting);
        for (int i = 0; i < MONTHS; i++) {
            assertThat(f.text(f.budget().line("season_month_name"), i)).isEqualTo(named(month.getMonth()));
            assertThat(f.number("season_year", Integer.toString(i + 1))).isEqualTo(month.getYear());
            month = month.plusMonths(1);
        }
    }

    @ParameterizedTest
    @EnumSource(Month.class)
    void turningRoundMovesEachMonthAndChangesNone(Month planting) {
        Figures f = planted(planting);
        int first = planting.getValue() - 1;
        for (List<String> pair : TURNED) {
            List<Double> calendar = along(f, pair.get(1));
            List<Double> season = along(f, pair.get(0));
            for (int i = 0; i < MONTHS; i++) {
                assertThat(season.get(i)).as(pair.get(0)).isEqualTo(calendar.get((first + i) % MONTHS));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Month.class)
    void plantsArePaidInTheirMonthAndTheYearStaysTheSame(Month planting) {
        Figures f = planted(planting);
        List<Double> plants = along(f, "budget_month_plants");
        for (int i = 0; i < MONTHS; i++) {
            assertThat(plants.get(i)).isEqualTo(i == planting.getValue() - 1 ? f.number("plants_order_cost") : 0);
        }
        double year = Figures.of(SAMPLE).number("cash_out_year");
        Near.near(f.number("cash_out_year"), year, year, planting.toString());
    }

    /** Weeks of 7 days over months of 365.25 / 12 days, whole months up, before the month of planting. */
    @ParameterizedTest
    @CsvSource({"0, 9", "1, 1", "4, 1", "5, 3", "30, 9", "30, 2", "52, 9", "53, 9", "60, 1", "120, 3", "520, 12"})
    void plantsAreOrderedSoManyMonthsBefore(int weeks, int planting) {
        Figures f = planted(Month.of(planting), "stock_lead_weeks[tray_plant]=" + weeks + " wk");
        int ahead = (int) Math.ceil(weeks * 7 / (365.25 / 12));
        YearMonth planted = YearMonth.of(2026, planting);
        YearMonth order = planted.minusMonths(ahead);
        assertThat(f.text(f.budget().line("crop_order_month"), 0)).isEqualTo(named(order.getMonth()));
        assertThat(f.number("crop_years_before", "crop")).isEqualTo(planted.getYear() - order.getYear());
    }

    @Test
    void theYearOfAnOrderIsSaid() {
        assertThat(planted(Month.SEPTEMBER).text("order_plants_by"))
                .isEqualTo("Order plants in Feb for planting in Sep: their lead time is 30 weeks.");
        assertThat(planted(Month.MARCH).text("order_plants_by"))
                .isEqualTo("Order plants in Aug of the year before, for planting in Mar: their lead time is 30 weeks.");
        assertThat(planted(Month.MARCH, "stock_lead_weeks[tray_plant]=100 wk").text("order_plants_by"))
                .isEqualTo("Order plants in Apr, 2 years before, for planting in Mar: their lead time is 100 weeks.");
        assertThat(planted(Month.MAY, "stock_lead_weeks[tray_plant]=0 wk").text("order_plants_by"))
                .isEqualTo("No lead time of plants is entered; they are planted in May.");
    }
}
