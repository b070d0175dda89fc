package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Care of the lines by hand, and what the file may not say. */
class LineCareTest {

    /** Products of a dozen doubles, up to some thousands. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final Budget SAMPLE = Sample.troughHouse();

    @TempDir
    Path folder;

    @Test
    void emittersAreLookedAtFlushedAndReplacedAtTheCheck() {
        Figures f = Figures.of(SAMPLE);
        double replaced = 1300 * (1 - Math.pow(0.98, 1.0 / 12)) * 12;
        double hours = 1300.0 / 1200 * 12 + 10 * 0.05 * 6 + replaced * 0.03;
        assertThat(f.number("way_check_hours", "emitter")).isCloseTo(13, ROUNDING);
        assertThat(f.number("way_outlets_replaced", "emitter")).isCloseTo(replaced, ROUNDING);
        assertThat(f.number("way_care_hours", "emitter")).isCloseTo(hours, ROUNDING);
        assertThat(f.number("way_care_cost", "emitter"))
                .isCloseTo(hours * 18 + replaced * 0.30 * 1.09 + 2 * 30, ROUNDING);
    }

    @Test
    void tapeIsWalkedByThePlantAndMendedWhereAPlantFellDry() {
        Figures f = Figures.of(SAMPLE);
        double dry = f.number("way_dry_plants", "tape");
        double hours = 1300.0 / 3000 * 12 + 2 * 10 * 0.05 * 6 + dry * 0.03;
        assertThat(f.number("way_outlets_replaced", "tape")).isEqualTo(dry);
        assertThat(f.number("way_care_hours", "tape")).isCloseTo(hours, ROUNDING);
        assertThat(f.number("way_care_cost", "tape")).isCloseTo(hours * 18 + dry * 0.08 * 1.11 + 60, ROUNDING);
    }

    @Test
    void aPriceOfItsOwnTakesThePlaceOfThatOfThePart() {
        Figures f = new Cells(SAMPLE)
                .number("way_outlet_replace_cost", "dripline", 0.25)
                .figures();
        assertThat(f.number("way_new_outlet_price", "dripline")).isEqualTo(0.25);
        assertThat(f.number("way_new_outlets_cost", "dripline"))
                .isCloseTo(0.25 * f.number("way_outlets_replaced", "dripline"), ROUNDING);
    }

    @Test
    void moreChecksCostMoreCareAndDoNotChangeWhatFails() {
        Figures often = new Cells(SAMPLE).number("check_interval", "", 0.5).figures();
        Figures seldom = new Cells(SAMPLE).number("check_interval", "", 2).figures();
        assertThat(often.number("way_check_hours", "emitter"))
                .isCloseTo(4 * seldom.number("way_check_hours", "emitter"), ROUNDING);
        // Of 26 a year: between checks the failed ones fall short of a straight line by less than one in 250.
        assertThat(often.number("way_outlets_replaced", "emitter"))
                .isCloseTo(seldom.number("way_outlets_replaced", "emitter"), within(0.1));
    }

    @Test
    void emptyRowsCostNothing() {
        Figures f = Figures.of(SAMPLE);
        for (String id : List.of("way_care_hours", "way_care_cost", "way_dry_loss")) {
            assertThat(f.number(id, "spare_1")).as(id).isEqualTo(0);
        }
    }

    @Test
    void acidIsCautionedAgainst() {
        assertThat(SAMPLE.cautions().stream().map(caution -> caution.toString()))
                .anyMatch(text -> text.contains("acid") && text.contains("backflow") && text.contains("chlorine"));
    }

    @Test
    void aPartThatIsNotListedAndARangeTheWrongWayRoundAreFaults() throws IOException {
        assertThat(faults("emitter,0.02,0.005,0.05,0.2,check", "emiter,0.02,0.03,0.01,1.2,mend"))
                .hasSize(4)
                .anyMatch(fault -> fault.contains("column outlet_item") && fault.contains("\"emiter\""))
                .anyMatch(fault -> fault.contains("column failed_low") && fault.contains("at most"))
                .anyMatch(fault -> fault.contains("column common_cause"))
                .anyMatch(fault -> fault.contains("column repair"));
    }

    private List<String> faults(String old, String fresh) throws IOException {
        for (String name : List.of("farm.csv", "irrigation.csv", "materials.csv", "plant_stock.csv")) {
            String text = Files.readString(Sample.TROUGH_HOUSE.resolve(name));
            Files.writeString(folder.resolve(name), text.replace(old, fresh));
        }
        Faults faults = new Faults();
        Sample.read(folder, faults);
        return faults.faults().stream().map(Fault::message).toList();
    }
}
