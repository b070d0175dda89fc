package org.benchmetre.farm.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.Months;
import org.benchmetre.review.Watch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A channel takes no more than its most in a month; the rest goes to the next one. 1,300 kg, of which 260 in March and in April. */
class OverflowTest {

    /** Sums of some dozen products, up to some ten thousands. */
    private static final Offset<Double> NEAR = within(1e-8);

    private static final List<String> CHANNELS = List.of("wholesale", "direct");

    /** The trough house without losses: 40 % wholesale, then 60 % direct, all of first grade. */
    private static final Budget FREE = Sample.with(
            Sample.troughHouse(),
            "killed_fruit_lost=0 1",
            "set_back_fruit_lost=0 1",
            "harvest_losses=0 1",
            "marketable_share=1 1",
            "first_grade_share=1 1",
            "yield_per_plant=1000 g/(plant crop)");

    private static final Budget ONE_FULL = Sample.with(FREE, "channel_most[wholesale]=90 kg/mo");

    private static final Budget BOTH_FULL = Sample.with(ONE_FULL, "channel_most[direct]=165 kg/mo");

    /** Wholesale is offered 0.4 x 260 = 104 kg in March and in April and takes 90; the other 14 kg are sold direct. */
    @Test
    void what_is_over_is_sold_by_the_next_channel() {
        Figures free = Figures.of(FREE);
        Figures f = Figures.of(ONE_FULL);
        assertThat(f.number("passed_on_1", "mar")).isCloseTo(14, NEAR);
        assertThat(f.number("passed_on_1", "apr")).isCloseTo(14, NEAR);
        assertThat(f.number("passed_on_1", "feb")).isZero();
        assertThat(f.number("channel_kg", "wholesale")).isCloseTo(0.4 * 1300 - 28, NEAR);
        assertThat(f.number("channel_passed_on", "wholesale")).isCloseTo(28, NEAR);
        assertThat(f.number("channel_kg", "direct")).isCloseTo(0.6 * 1300 + 28, NEAR);
        double direct = 13.5 * 0.95;
        double march = 8.2 * 0.98;
        double april = 6.6 * 0.98;
        double receipts = 14 * (direct - march) + 14 * (direct - april);
        assertThat(f.number("receipts_total") - free.number("receipts_total")).isCloseTo(receipts, NEAR);
        double commission = 28 * direct * 0.03 - 14 * (march + april) * 0.10;
        assertThat(f.number("commission_cost") - free.number("commission_cost")).isCloseTo(commission, NEAR);
        assertThat(f.number("packs_cost") - free.number("packs_cost")).isCloseTo(28 * (0.16 / 0.45 - 1.05 / 3), NEAR);
        assertThat(f.number("channel_freight_total") - free.number("channel_freight_total"))
                .isCloseTo(-28 * 0.22, NEAR);
        assertThat(f.number("fruit_unsold")).isCloseTo((520 - 28) * 0.02 + (780 + 28) * 0.05, NEAR);
    }

    /** Direct is offered 156 + 14 kg in March and in April and takes 165, so that 5 kg of each month are not sold. */
    @Test
    void past_the_last_channel_it_is_not_sold() {
        Figures one = Figures.of(ONE_FULL);
        Figures f = Figures.of(BOTH_FULL);
        assertThat(one.number("receipts_total") - f.number("receipts_total")).isCloseTo(10 * 13.5 * 0.95, NEAR);
        assertThat(f.number("fruit_unsold") - one.number("fruit_unsold")).isCloseTo(10 - 10 * 0.05, NEAR);
        assertThat(new Watch(f).remarks().toString())
                .contains("Channels are full in some months.", "(Wholesale, mar)")
                .contains("14.0 kg is more than it takes and goes on to Direct to eaters.")
                .contains("(Direct to eaters, apr)")
                .contains("5.0 kg is more than it takes and is not sold");
    }

    /** In March and April, 0.4 of the year's fruit, nobody has room: a further kg of these months costs no pack and brings nothing. */
    @Test
    void a_further_kg_goes_where_there_is_room() {
        Figures free = Figures.of(FREE);
        Figures f = Figures.of(BOTH_FULL);
        double lost = 0.2 * (0.4 * 8.2 * 0.98 + 0.6 * 13.5 * 0.95) + 0.2 * (0.4 * 6.6 * 0.98 + 0.6 * 13.5 * 0.95);
        assertThat(free.number("further_price") - f.number("further_price")).isCloseTo(lost, NEAR);
        Figures one = Figures.of(ONE_FULL);
        double gained = 0.2 * 0.4 * (13.5 * 0.95 - 8.2 * 0.98) + 0.2 * 0.4 * (13.5 * 0.95 - 6.6 * 0.98);
        assertThat(one.number("further_price") - free.number("further_price")).isCloseTo(gained, NEAR);
    }

    @Test
    void a_limit_that_is_never_reached_changes_no_digit() {
        Figures free = Figures.of(Sample.troughHouse());
        Figures f = Figures.of(Sample.with(
                Sample.troughHouse(), "channel_most[wholesale]=9000 kg/mo", "channel_most[direct]=9000 kg/mo"));
        for (String id : List.of("returns_above_total", "break_even_yield", "break_even_price", "left_per_kg")) {
            assertThat(f.number(id)).isEqualTo(free.number(id));
        }
        assertThat(f.number("above_margin")).isZero();
    }

    static Stream<Budget> plans() {
        return Stream.of(
                ONE_FULL,
                BOTH_FULL,
                Sample.with(BOTH_FULL, "first_grade_share=0.8 1", "price_level=1.3 1"),
                Sample.with(FREE, "channel_most[direct]=100 kg/mo"),
                Sample.with(FREE, "channel_most[wholesale]=1 kg/mo", "channel_most[direct]=30 kg/mo"));
    }

    /** Month by month and channel by channel, in another way than the lines do. */
    @ParameterizedTest
    @MethodSource("plans")
    void months_and_channels_add_to_the_year(Budget plan) {
        Figures f = Figures.of(plan);
        double receipts = 0;
        double unsold = 0;
        for (String month : Months.KEYS) {
            double over = 0;
            double inMonth = 0;
            for (String channel : CHANNELS) {
                double offered = f.number("channel_share", channel) * f.number("month_yield", month) + over;
                double most = f.number("channel_most", channel);
                double sent = most > 0 ? Math.min(offered, most) : offered;
                over = offered - sent;
                double first = f.number("first_grade_share");
                double second = (1 - first) * f.number("channel_second_price", channel);
                inMonth += sent
                        * (1 - f.number("channel_shrink", channel))
                        * (first + second)
                        * f.number("channel_price", channel, month)
                        * f.number("price_level");
                unsold += sent * f.number("channel_shrink", channel);
            }
            unsold += over;
            assertThat(f.number("month_receipts", month)).isCloseTo(inMonth, NEAR);
            receipts += inMonth;
        }
        assertThat(f.number("receipts_total")).isCloseTo(receipts, NEAR);
        assertThat(f.number("fruit_unsold")).isCloseTo(unsold, NEAR);
        double byChannel = CHANNELS.stream()
                .mapToDouble(channel -> f.number("channel_receipts", channel))
                .sum();
        assertThat(byChannel).isCloseTo(receipts, NEAR);
        double left = Months.KEYS.stream()
                .mapToDouble(month -> f.number("month_left", month))
                .sum();
        assertThat(left).isCloseTo(receipts - f.number("yield_costs_total"), NEAR);
    }

    /** A little more fruit leaves what a further kg is said to leave, and the kind of stock chosen compares as the plan does. */
    @ParameterizedTest
    @MethodSource("plans")
    void the_margin_is_that_of_a_little_more_fruit(Budget plan) {
        Figures f = Figures.of(plan);
        Figures more = Figures.of(Sample.with(plan, "yield_per_plant=1000.001 g/(plant crop)"));
        double kg = more.number("yield_total") - f.number("yield_total");
        double left = left(more) - left(f);
        assertThat(left / kg).isCloseTo(f.number("left_per_kg"), within(1e-6));
        assertThat(f.number("above_margin") + f.number("left_per_kg") * f.number("yield_total"))
                .isCloseTo(left(f), NEAR);
        String chosen = f.text("stock_choice");
        assertThat(f.number("compared_net", chosen)).isCloseTo(left(f), NEAR);
    }

    private static double left(Figures f) {
        return f.number("receipts_total") - f.number("moves_with_yield_total");
    }

    /** At the price of the break-even nothing is left, channels full or not. */
    @ParameterizedTest
    @MethodSource("plans")
    void the_price_that_breaks_even_does(Budget plan) {
        Figures f = Figures.of(plan);
        double level = f.number("price_level") * f.number("break_even_price") / f.number("price_average");
        Figures even = Figures.of(Sample.with(plan, "price_level=" + level + " 1"));
        assertThat(even.number("returns_above_total")).isCloseTo(0, NEAR);
    }
}
