package org.benchmetre.farm.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchmetre.budget.Formulas.number;

import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Levels;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.layout.Containers;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.farm.profile.CropProfile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fruit lost to dry plants comes off the marketable fruit, never below nothing. */
class PickingTest {

    /** Sums of a dozen months, up to some thousands of kilograms. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    @ParameterizedTest
    @CsvSource({"0, 0", "50, 50", "-5, 0", "1e9, 1e9"})
    void dryPlantsTakeTheirPart(double lostDry, double wanted) {
        Figures f = Figures.of(crop(lostDry));
        double all = f.number("fruit_marketable");
        double taken = Math.min(wanted, all);
        assertThat(all).isGreaterThan(50);
        assertThat(f.troubles()).isEmpty();
        assertThat(f.number("fruit_lost_dry")).isCloseTo(taken, ROUNDING);
        assertThat(f.number("yield_total")).isCloseTo(all - taken, ROUNDING);
        assertThat(f.number("fruit_kept_share")).isCloseTo((all - taken) / all, within(1e-12));
        assertThat(f.number("receipts_total")).isCloseTo(f.number("price_average") * (all - taken), ROUNDING);
    }

    private static Budget crop(double lostDry) {
        Budget whole = Sample.troughHouse();
        BudgetBuilder b = new BudgetBuilder(whole.structure());
        FarmEntries entries = new FarmEntries(CropProfile.of("strawberry"));
        Months months = new Months(b, entries.profile());
        House house = new House(b, entries);
        Planting planting = new Planting(b, entries, house, new Containers(b, entries, house));
        PlantStock stock = new PlantStock(b, entries, house, planting, new Levels(b, entries));
        Line choice = entries.add(b.schedule("Choice", "Choice")
                .textEntry("stock_choice", "Choice")
                .keyOf(stock.key)
                .usually("", "first"));
        Line planYear =
                b.schedule("Choice", "Choice").line("year_of_plan", "Year", Unit.ONE, number(2026, Unit.ONE), "");
        CropYear year = new CropYear(b, entries, months, planYear);
        CropPlants grown = CropPlants.of(b, entries, months, year, stock, choice);
        Yield yield = new Yield(b, entries, planting, grown);
        MonthPattern pattern = new MonthPattern(b, months, grown, yield, new CropStands(b, months, grown));
        Picking picking = new Picking(b, entries, yield, pattern, number(lostDry, Unit.parse("kg/a")));
        new Receipts(b, entries, months, pattern, picking);
        return Sample.filled(b.build(), whole);
    }
}
