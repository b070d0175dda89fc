package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.input.Months;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Water kept by month: from {@code months.csv} where it says so, else the documented default. */
class WaterByMonthTest {

    /** Sums of twelve months, up to some hundreds. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    @TempDir
    private Path folder;

    private Faults faultsOf(String months) throws IOException {
        for (String file : List.of("farm.csv", "irrigation.csv", "materials.csv", "plant_stock.csv")) {
            Files.copy(Sample.TROUGH_HOUSE.resolve(file), folder.resolve(file));
        }
        Files.writeString(folder.resolve(Months.FILE), months);
        return new Faults();
    }

    @Test
    void aMonthIsPlantsTimesNeedTimesDaysTimesItsShareInCrop() throws IOException {
        Faults faults = faultsOf("month,water_need,crop_share,source\njan,100,0.5,a log\njul,,0,a log\n");
        Figures f = Figures.of(Sample.read(folder, faults));
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        double plants = f.number("plant_count");
        assertThat(f.number("month_water_need", "jan"))
                .isCloseTo(plants * 100 * 31 * 0.5 / 1e6, within(1e-12 * plants));
        assertThat(f.number("month_water_need", "feb")).isCloseTo(plants * 48 * 28.25 / 1e6, within(1e-12 * plants));
        assertThat(f.number("month_water_need", "jul")).isZero();
        assertThat(f.number("way_month_events", "emitter", "jul")).isZero();
        assertThat(f.number("way_month_hours", "emitter", "jul")).isZero();
    }

    @Test
    void aShareOfAMonthAboveOneAndANegativeNeedAreFaults() throws IOException {
        Faults faults = faultsOf("month,water_need,crop_share\njan,-1,1.2\n");
        Sample.read(folder, faults);
        assertThat(faults.faults()).hasSize(2);
        assertThat(faults.faults().toString()).contains("water_need").contains("crop_share");
    }

    /** 120 mL given a plant and day on average, 40 in the darkest and 220 in the brightest month, of which a fifth drains. */
    @Test
    void theDefaultsAreWhatIsPublishedAsGivenLessAFifth() {
        Figures f = Figures.of(Sample.with(Sample.troughHouse(), "drain_fraction=0.2 1"));
        double sum = Months.KEYS.stream()
                .mapToDouble(month -> f.number("month_need_per_plant", month))
                .sum();
        assertThat(sum / 12 / 0.8).isCloseTo(120, ROUNDING);
        assertThat(f.number("month_need_per_plant", "jan") / 0.8).isCloseTo(40, ROUNDING);
        assertThat(f.number("month_need_per_plant", "jul") / 0.8).isCloseTo(220, ROUNDING);
    }
}
