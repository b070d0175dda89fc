package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.pages.FarmPages;
import org.benchmetre.page.Page;
import org.junit.jupiter.api.Test;

/** What the calendar says is true of farms that lack something. */
class CalendarWordsTest {

    private static final Budget SAMPLE = Sample.troughHouse();

    /** No months, no tasks, no channels. */
    private static Plan bare(String currency) throws ScenarioException {
        return Sample.bare().entry("plan_currency", currency).build();
    }

    @Test
    void theSampleSaysWhenCashIsLowestAndLabourMost() {
        Figures f = Figures.of(SAMPLE);
        assertThat(f.text("calendar_year"))
                .isEqualTo(
                        "A full crop year from Sep on takes in 12,971 USD and pays 10,425 USD, which leaves 2,546 USD.");
        assertThat(f.text("calendar_lowest"))
                .isEqualTo(
                        "Cash so far is lowest at the end of Jan of the next year: -1,445 USD. Plants of 858 USD are "
                                + "paid in Sep.");
        assertThat(f.text("calendar_labour"))
                .isEqualTo("Most labour: Mar of the next year, 38 h, 0.2 people; 277 h in the year.");
        assertThat(f.text("calendar_no_heat") + f.text("calendar_no_fruit")).isEmpty();
    }

    @Test
    void aYearFromJanuaryOnLiesInOneYear() {
        Figures f = Figures.of(Sample.with(SAMPLE, "planting_month=jan"));
        assertThat(f.text("calendar_labour")).startsWith("Most labour: Jan, 41 h");
        assertThat(f.text("calendar_lowest")).doesNotContain("year").endsWith("are paid in Jan.");
    }

    @Test
    void withoutFruitNothingComesIn() {
        Figures f = Figures.of(Sample.with(SAMPLE, "yield_per_plant=0 g/(plant crop)"));
        assertThat(f.text("calendar_no_fruit")).startsWith("No fruit is counted");
        assertThat(f.text("calendar_year")).contains("takes in 0 USD", "more than comes in.");
        assertThat(f.text("calendar_lowest")).contains("at the end of Aug of the next year: -");
    }

    @Test
    void cashThatNeverFallsBelowZeroIsSaid() {
        Figures f = Figures.of(Sample.with(SAMPLE, "price_level=3 1", "planting_month=jan"));
        assertThat(f.text("calendar_lowest")).startsWith("Cash so far never falls below zero. Plants of 858 USD");
    }

    @Test
    void aClimateThatIsMissingIsNamed() throws ScenarioException {
        Plan plan = bare("USD");
        assertThat(plan.text("calendar_no_heat")).isEqualTo("No climate is entered: no heat is counted.");
        assertThat(plan.quantity("heat_energy_total").value()).isZero();
        Figures some = Figures.of(Sample.typedOver(SAMPLE, "day_hours[apr]=0 h/d", "day_hours[may]=0 h/d"));
        assertThat(some.text("calendar_no_heat"))
                .isEqualTo("No climate is entered for 2 heated months: no heat is counted there.");
        Figures one = Figures.of(Sample.typedOver(SAMPLE, "day_hours[apr]=0 h/d"));
        assertThat(one.text("calendar_no_heat"))
                .isEqualTo("No climate is entered for one heated month: no heat is counted there.");
    }

    @Test
    void aFarmWithoutMonthsHasBothPagesAndAllItsSumsAgree() throws ScenarioException {
        for (String currency : List.of("USD", "JPY")) {
            Plan plan = bare(currency);
            assertThat(plan.figures().troubles()).isEmpty();
            assertThat(plan.disagreements()).isEmpty();
            assertThat(plan.text("calendar_year")).contains(currency);
            assertThat(FarmPages.of(plan.budget()).stream().map(Page::name)).contains("To buy", "Calendar");
        }
    }

    @Test
    void familyWorkIsNoCash() {
        Figures f = Figures.of(SAMPLE);
        Figures dear = Figures.of(Sample.with(SAMPLE, "wage_family=40 money/h"));
        assertThat(dear.number("labour_cost_total")).isGreaterThan(f.number("labour_cost_total"));
        assertThat(dear.number("cash_out_year")).isEqualTo(f.number("cash_out_year"));
    }
}
