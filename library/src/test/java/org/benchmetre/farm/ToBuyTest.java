package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is ordered adds up: by part, by group, and to start-up cash. */
class ToBuyTest {

    private static final Budget SAMPLE = Sample.troughHouse();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    private static double[] along(Figures f, String id) {
        Line line = f.budget().line(id);
        return IntStream.range(0, line.size())
                .mapToDouble(i -> f.number(line, i))
                .toArray();
    }

    private static BigDecimal cents(double money) {
        return BigDecimal.valueOf(money).setScale(2, RoundingMode.HALF_UP);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void packsTimesPriceAndFreightAreMoney(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        double[] packs = along(f, "material_packs");
        double[] price = along(f, "material_price");
        double[] freight = along(f, "material_freight_tax");
        double[] money = along(f, "material_purchase_cost");
        double level = f.number("parts_price_level");
        for (int part = 0; part < money.length; part++) {
            assertThat(packs[part]).isEqualTo(Math.rint(packs[part]));
            Near.near(packs[part] * price[part] * level + freight[part], money[part], money[part], "part " + part);
        }
        Near.adds(f.number("purchase_cost"), "parts", money);
        Near.adds(f.number("freight_tax_total"), "freight", freight);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void groupsAddToAllPartsAndLeftoversReconcile(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        Near.adds(f.number("purchase_cost"), "groups", along(f, "buy_group_cost"));
        Near.adds(f.number("leftover_value"), "left over", along(f, "buy_group_left_value"));
        Near.adds(f.number("purchase_cost"), "exact", f.number("exact_cost"), f.number("leftover_value"));
        Near.adds(
                f.number("plants_order_cost"),
                "plants by price",
                f.number("plants_ordered") * f.number("plants_order_price"),
                f.number("plants_order_freight"),
                f.number("plants_growing_on"));
        Near.adds(
                f.number("startup_cash"),
                "start-up",
                f.number("purchase_cost"),
                f.number("plants_order_cost"),
                f.number("startup_labour"),
                f.number("startup_lumps"));
    }

    /** What is printed is rounded to cents; each sum of printed amounts is the printed sum. */
    @ParameterizedTest
    @MethodSource("seeds")
    void printedAmountsReconcileToTheCent(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        assertThat(printed(along(f, "material_purchase_cost"))).isEqualTo(printed(f.number("purchase_cost")));
        assertThat(printed(along(f, "buy_group_cost"))).isEqualTo(printed(f.number("purchase_cost")));
        assertThat(printed(
                        f.number("purchase_cost"),
                        f.number("plants_order_cost"),
                        f.number("startup_labour"),
                        f.number("startup_lumps")))
                .isEqualTo(printed(f.number("startup_cash")));
        assertThat(printed(f.number("exact_cost"), f.number("leftover_value")))
                .isEqualTo(printed(f.number("purchase_cost")));
        assertThat(printed(f.number("first_cost_total"), f.number("startup_left")))
                .isEqualTo(printed(f.number("startup_cash")));
    }

    private static BigDecimal printed(double... amounts) {
        return DoubleStream.of(amounts).mapToObj(ToBuyTest::cents).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void aCurrencyWithoutCentsIsPaidInWholeUnits() throws ScenarioException {
        Plan yen = Benchmetre.plan("strawberry")
                .entry("plan_currency", "JPY")
                .row(
                        "materials",
                        "trough",
                        Map.of(
                                "driver",
                                "bench_metres",
                                "rate",
                                "1",
                                "price",
                                "812.5",
                                "price_year",
                                "2026",
                                "freight",
                                "0.07"))
                .row("irrigation", "tape", Map.of("lines", "2", "outlet_spacing", "0.2"))
                .row("plant_stock", "plug", Map.of("price", "61.3", "price_year", "2026"))
                .build();
        for (String id : List.of("purchase_cost", "plants_order_cost", "startup_labour", "startup_cash")) {
            double paid = yen.quantity(id).value();
            assertThat(paid).as(id).isEqualTo(Math.rint(paid)).isNotNegative();
        }
        assertThat(yen.quantity("purchase_cost").value()).isEqualTo(200 * 812.5 * 1.07);
        assertThat(yen.text("order_now")).startsWith("Order 200 packs of parts for 173,875 JPY and ");
    }

    /** 1,300 plants, one in a hundred again, 1.5 % lost and 1 % culled: 1,346.46 to buy; from 1,000 on at 0.59, with 8 % of freight. */
    @Test
    void plantsAreOrderedWhole() {
        Figures f = Figures.of(SAMPLE);
        double needed = 1300 * 1.01 / (1 - 0.015) / (1 - 0.01);
        assertThat(f.number("plants_ordered")).isEqualTo(Math.ceil(needed)).isEqualTo(1347);
        assertThat(f.number("plants_order_cost")).isEqualTo(858.31).isGreaterThan(1347 * 0.59 * 1.08);
        assertThat(f.text("order_now"))
                .isEqualTo(
                        "Order 539 packs of parts for 8,190.19 USD and 1,347 plants for 858.31 USD; with 1,231.05 USD of "
                                + "installing labour start-up takes 10,279.55 USD.");
    }

    @Test
    void aBreakCountsFromTheWholePlantsOrdered() {
        Line from = SAMPLE.line("break_from");
        assertThat(f(from, 1347).number("plants_order_price")).isEqualTo(0.59);
        assertThat(f(from, 1348).number("plants_order_price")).isEqualTo(0.62);
    }

    /** The first break, that of 1,000 tray plants, from another quantity on. */
    private static Figures f(Line from, double quantity) {
        return Figures.of(SAMPLE.with(Map.of(from, Map.of(0, Given.number(quantity, from.unit())))));
    }

    @Test
    void houseAndContingencyAreSaidWhereTheyAreEntered() {
        Figures f = Figures.of(Sample.with(SAMPLE, "house_cost_per_area=10 money/m2", "parts_price_level=1.1 1"));
        assertThat(f.text("order_now"))
                .contains(" of installing labour and 2,304.00 USD for house and contingency start-up");
        assertThat(f.text("order_price_level"))
                .isEqualTo("Prices of parts are counted 1.10 times those listed; freight and tax too.");
        assertThat(Figures.of(SAMPLE).text("order_price_level")).isEmpty();
    }

    /** 24 m by 9.6 m of shade cloth, packs of 50 m² at 20 with a tenth of freight: 5 packs, 19.6 m² left. */
    @Test
    void aPartInASpareRowIsToldBelowTheList() {
        Map<Line, Map<Integer, Given>> typed = new HashMap<>();
        Map<String, Object> cells = Map.of(
                "material_label", "Shade cloth",
                "material_group", "mulch",
                "material_driver", "house_area",
                "material_rate", 1.0,
                "material_pack", 50.0,
                "material_price", 20.0,
                "material_freight", 0.1);
        cells.forEach((id, value) -> {
            Line line = SAMPLE.line(id);
            Given given = value instanceof Double number ? Given.number(number, line.unit()) : Given.text("" + value);
            typed.put(line, Map.of(line.axes().get(0).indexOf("spare_1"), given));
        });
        Figures before = Figures.of(SAMPLE);
        Figures f = Figures.of(Sample.typedOver(SAMPLE, typed));
        assertThat(before.number("added_purchase_cost")).isZero();
        Near.near(f.number("added_purchase_cost"), 5 * 22, 110, "money");
        Near.near(f.number("added_freight_tax"), 5 * 2, 10, "freight");
        Near.near(f.number("added_left_value"), (250 - 24 * 9.6) * 22 / 50, 110, "left");
        double more = f.number("buy_group_cost", "mulch") - before.number("buy_group_cost", "mulch");
        Near.near(more, 110, 200, "group");
    }

    @Test
    void onlyPartsOfTheChosenSystemHavePacks() {
        Figures f = Figures.of(Sample.with(SAMPLE, "irrigation_choice=tape"));
        assertThat(f.number("material_packs", "emitter")).isZero();
        assertThat(f.number("material_packs", "tape")).isPositive();
    }
}
