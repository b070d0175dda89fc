package org.benchmetre.farm.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What goes wrong with a feed, and which warnings name it: those listed and no others of the feed. Since salts are neutral, a
 * surplus of one charge comes with a surplus of the other or a shortfall of its own.
 */
class FeedWarningsTest {

    private static final Budget SAMPLE = Sample.troughHouse();

    private static final List<String> OF_THE_FEED = Stream.concat(
                    Stream.of("nitrate", "ammonium", "phosphorus", "potassium", "calcium", "magnesium", "sulphur")
                            .map(ion -> ion + "_surplus"),
                    Stream.of(
                            "sulphur_shortfall",
                            "sodium_beyond_limit",
                            "chloride_beyond_limit",
                            "recipe_balance_warning",
                            "feed_balance_warning",
                            "feed_ec_warning",
                            "feed_ph_warning",
                            "root_ph_warning",
                            "salt_undissolved"))
            .toList();

    @Test
    void theSampleHasNone() {
        assertThat(warnings(SAMPLE)).isEmpty();
        assertThat(SAMPLE.warnings())
                .containsAll(OF_THE_FEED.stream().map(SAMPLE::line).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    less sulphur than magnesium sulphate brings | recipe_sulphur=0.5 mmol/L | sulphur_surplus recipe_balance_warning
                    less nitrogen than calcium nitrate brings | recipe_nitrogen=5 mmol/L; recipe_sulphur=5 mmol/L | nitrate_surplus sulphur_shortfall
                    more sulphur than potassium leaves room for | recipe_sulphur=2.1 mmol/L | sulphur_shortfall
                    less potassium than nitrate and phosphate bring | recipe_potassium=6.2 mmol/L | potassium_surplus
                    ammonium of the greenhouse grade | calcium_nitrate_choice=double_salt | ammonium_surplus sulphur_surplus
                    more acid than the phosphorus asked for | acid_choice=phosphoric; recipe_phosphorus=1 mmol/L; recipe_nitrogen=12.2 mmol/L | phosphorus_surplus potassium_surplus
                    harder water than the recipe | raw_water_calcium=4 mmol/L; raw_water_alkalinity=8 mmol/L | calcium_surplus sulphur_surplus
                    more magnesium than the recipe | recipe_magnesium=0.1 mmol/L; recipe_calcium=4.9 mmol/L | magnesium_surplus sulphur_surplus
                    salty water | raw_water_sodium=3.9 mmol/L; raw_water_chloride=3.4 mmol/L | sodium_beyond_limit chloride_beyond_limit feed_ec_warning
                    a wrong analysis | raw_water_alkalinity=0.5 mmol/L | potassium_surplus feed_balance_warning
                    a recipe out of balance | recipe_sulphur=2.5 mmol/L | sulphur_shortfall recipe_balance_warning
                    a weak meter | feed_ec_most=1.5 dS/m | feed_ec_warning
                    sour feed | feed_ph=5 1 | feed_ph_warning
                    an alkaline root zone | root_ph=7 1 | root_ph_warning
                    a stock solution too strong | stock_dilution=500 1 | salt_undissolved
                    """)
    void eachTroubleIsNamed(String trouble, String settings, String expected) {
        Budget budget = Sample.with(SAMPLE, settings.split("; "));
        assertThat(warnings(budget)).as(trouble).containsExactlyInAnyOrder(expected.split(" "));
    }

    /** A spreadsheet formula holds texts of at most 255 letters. */
    @Test
    void everySentenceFitsIntoAFormulaAndSaysWhatToDo() {
        for (long seed = 1; seed <= 40; seed++) {
            Figures f = FeedCases.figures(seed);
            for (String id : OF_THE_FEED.subList(0, OF_THE_FEED.size() - 1)) {
                String text = f.text(id);
                assertThat(text.isEmpty() || text.endsWith(".")).as(id).isTrue();
                assertThat(text.length()).as(id).isLessThanOrEqualTo(255);
            }
        }
    }

    private static List<String> warnings(Budget budget) {
        Figures f = Figures.of(budget);
        return OF_THE_FEED.stream().filter(id -> stands(f, budget.line(id))).toList();
    }

    private static boolean stands(Figures f, Line line) {
        for (int cell = 0; cell < line.size(); cell++) {
            if (!f.text(line, cell).isEmpty()) {
                return true;
            }
        }
        return false;
    }
}
