package org.benchmetre.farm.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.profile.ProfileRow;
import org.junit.jupiter.api.Test;

/** Salts by what their bags declare and by their purity, with arithmetic of a few lines: grams times content is what is asked for. */
class SaltsAsSoldTest {

    /** Molar masses of three decimals, as the tool has them. */
    private static final Offset<Double> NEAR = within(1e-9);

    /** Rain water: all that the recipe asks for comes from salts. */
    private static final Budget RAIN = Sample.onRainWater();

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(RAIN, settings));
    }

    private static String warning(Figures f, String salt) {
        Line line = f.budget().line("salt_charge_warning");
        return f.text(line, line.axes().get(0).indexOf(salt));
    }

    /** 11.4 mmol/L of nitrogen, a tenth as ammonium: 1.14 mmol/L of NH4H2PO4, 115.025 g/mol, which brings as much phosphorus. */
    @Test
    void monoammonium_phosphate_brings_ammonium_and_phosphorus_alike() {
        Figures f = with(
                "recipe_nitrogen=11.4 mmol/L",
                "recipe_ammonium_share=0.1 1",
                "recipe_phosphorus=1.8 mmol/L",
                "ammonium_nitrate_choice=phosphate");
        assertThat(f.number("salt_rate", "monoammonium_phosphate")).isCloseTo(1.14 * 115.025, NEAR);
        assertThat(f.number("salt_rate", "ammonium_nitrate")).isZero();
        assertThat(f.number("salt_rate", "monopotassium_phosphate")).isCloseTo((1.8 - 1.14) * 136.084, NEAR);
        assertThat(f.number("ion_supplied", "ammonium")).isCloseTo(1.14, NEAR);
        assertThat(f.number("ion_supplied", "phosphorus")).isCloseTo(1.8, NEAR);
    }

    @Test
    void more_ammonium_than_phosphorus_asked_for_is_told() {
        Figures f = with(
                "recipe_nitrogen=12 mmol/L",
                "recipe_ammonium_share=0.3 1",
                "recipe_phosphorus=1.8 mmol/L",
                "ammonium_nitrate_choice=phosphate");
        assertThat(f.number("ion_difference", "phosphorus")).isCloseTo(1.8, NEAR);
        assertThat(f.text("phosphorus_surplus")).contains("monoammonium phosphate");
    }

    /** A bag of 19 % calcium and 15.5 % nitrogen, 14.4 of it nitrate: 100 mg/L of calcium take 526.3 mg/L, which bring 75.8 of N. */
    @Test
    void a_bag_of_calcium_nitrate_brings_what_it_declares() {
        Figures f = with(
                "calcium_nitrate_choice=double_salt",
                "calcium_ammonium_nitrate_declared_calcium=19 %",
                "calcium_ammonium_nitrate_declared_nitrate=14.4 %",
                "calcium_ammonium_nitrate_declared_ammonium=1.1 %",
                "recipe_calcium=" + 100 / 40.078 + " mmol/L");
        double rate = f.number("salt_rate", "calcium_ammonium_nitrate");
        assertThat(rate).isCloseTo(100 / 0.19, NEAR);
        assertThat(f.number("ion_from_salts", "ammonium")).isCloseTo(rate * 0.011 / 14.007, NEAR);
        assertThat(f.number("calcium_ammonium_nitrate_amount") * f.number("calcium_ammonium_nitrate_nitrate_content"))
                .isCloseTo(rate * 0.144 / 14.007, NEAR);
        assertThat(warning(f, "calcium_ammonium_nitrate")).isEmpty();
    }

    /** 5Ca(NO3)2.NH4NO3.10H2O splits nitrogen in total as 11 to 1. */
    @Test
    void nitrogen_in_total_splits_as_in_the_formula() {
        Figures f = with("calcium_ammonium_nitrate_declared_nitrogen=15.5 %");
        double whole = 0.155 * 1080.623 / 14.007;
        assertThat(f.number("calcium_ammonium_nitrate_nitrate_content")).isCloseTo(whole * 11 / 12, NEAR);
        assertThat(f.number("calcium_ammonium_nitrate_ammonium_content")).isCloseTo(whole / 12, NEAR);
    }

    /** 52 % P2O5 is 52 x 61.948/141.943 = 22.69 % P; 34 % K2O is 34 x 78.196/94.195 = 28.23 % K. */
    @Test
    void oxides_and_elements_come_to_the_same() {
        Figures oxides = with(
                "monopotassium_phosphate_declared_phosphorus=52 %", "monopotassium_phosphate_declared_potassium=34 %");
        Figures elements = with(
                "phosphorus_declared_as=p",
                "potassium_declared_as=k",
                "monopotassium_phosphate_declared_phosphorus=" + 52 * 61.948 / 141.943 + " %",
                "monopotassium_phosphate_declared_potassium=" + 34 * 78.196 / 94.195 + " %");
        double rate = oxides.number("salt_rate", "monopotassium_phosphate");
        assertThat(elements.number("salt_rate", "monopotassium_phosphate")).isCloseTo(rate, NEAR);
        double phosphorus = oxides.number("recipe_phosphorus") * 30.974;
        assertThat(rate * 0.52 * 61.948 / 141.943).isCloseTo(phosphorus, NEAR);
        assertThat(elements.number("ion_from_salts", "potassium"))
                .isCloseTo(oxides.number("ion_from_salts", "potassium"), NEAR);
    }

    /** Phosphorus told as element where P2O5 is meant leaves the salt without half of its anions. */
    @Test
    void contents_that_do_not_go_together_are_told() {
        Figures f = with("phosphorus_declared_as=p", "monopotassium_phosphate_declared_phosphorus=52 %");
        assertThat(warning(f, "monopotassium_phosphate")).contains("P2O5");
        assertThat(warning(f, "potassium_nitrate")).isEmpty();
    }

    /** A salt of which a tenth is something else takes a ninth more, and costs a ninth more. */
    @Test
    void a_salt_that_is_not_pure_takes_more_of_it() {
        Figures pure = Figures.of(RAIN);
        Figures dull = with("calcium_nitrate_purity=0.9 1");
        double rate = pure.number("salt_rate", "calcium_nitrate");
        assertThat(dull.number("salt_rate", "calcium_nitrate")).isCloseTo(rate / 0.9, NEAR);
        assertThat(dull.number("salt_cost", "calcium_nitrate"))
                .isCloseTo(pure.number("salt_cost", "calcium_nitrate") / 0.9, NEAR);
        for (String ion : new String[] {"calcium", "nitrate", "potassium", "sulphur"}) {
            assertThat(dull.number("ion_supplied", ion)).as(ion).isCloseTo(pure.number("ion_supplied", ion), NEAR);
        }
    }

    private static ProfileRow row(String... cells) {
        Map<String, String> row = new HashMap<>(
                Map.of("salt", "blend", "label", "Blend", "formula", "", "ions", "", "tank", "B", "solubility", "100"));
        row.putAll(Map.of("grade", "", "choice", "", "source", "a bag"));
        Arrays.stream(cells).map(cell -> cell.split("=", -1)).forEach(cell -> row.put(cell[0], cell[1]));
        return new ProfileRow("salts.csv, row 2", row);
    }

    /** 100 g of a salt with 12 % nitrogen as ammonium and 61 % P2O5 bring 0.857 mol and 0.860 mol. */
    @Test
    void a_row_of_the_profile_may_have_no_formula() {
        Salt salt = Salt.of(row("nh4_n=12", "p2o5=61", "set_by=ammonium"));
        assertThat(salt.substance().molarMass()).isEqualTo(100);
        assertThat(salt.substance().ions().get(Ion.AMMONIUM)).isCloseTo(12 / 14.007, NEAR);
        assertThat(salt.substance().ions().get(Ion.PHOSPHORUS)).isCloseTo(61 * 2 / 141.943, NEAR);
    }

    @Test
    void a_row_of_the_profile_may_declare_what_its_formula_has() {
        Salt salt = Salt.of(row(
                "formula=5Ca(NO3)2.NH4NO3.10H2O",
                "ions=calcium 5 nitrate 11 ammonium 1",
                "n=15.5",
                "ca=19",
                "set_by=calcium"));
        double nitrogen = 15.5 / 100 * 1080.623 / 14.007;
        assertThat(salt.substance().ions().get(Ion.NITRATE)).isCloseTo(nitrogen * 11 / 12, NEAR);
        assertThat(salt.substance().ions().get(Ion.CALCIUM)).isCloseTo(0.19 * 1080.623 / 40.078, NEAR);
    }

    @Test
    void nitrogen_in_total_without_a_form_is_refused() {
        ProfileRow row = row("n=20", "k2o=10", "set_by=potassium");
        assertThatThrownBy(() -> Salt.of(row))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("nitrogen in total");
    }
}
