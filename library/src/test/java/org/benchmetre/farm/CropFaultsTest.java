package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with the files of plant stock, months and channels is named; what is doubtful is a warning. */
class CropFaultsTest {

    private static final String CHANNELS = "channel,share,price,price_jan,price_year,pack_kg,pack_cost\n";

    @TempDir
    Path folder;

    private List<String> faults(String file, String text) throws IOException {
        Faults faults = new Faults();
        Sample.read(scenario(file, text), faults);
        return faults.faults().stream().map(Fault::message).toList();
    }

    private Path scenario(String file, String text) throws IOException {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path each : files.toList()) {
                Files.copy(each, folder.resolve(each.getFileName().toString()));
            }
        }
        Files.writeString(folder.resolve(file), text);
        return folder;
    }

    private static List<String> warnings(String id, String... settings) {
        Budget budget = Sample.with(Sample.troughHouse(), settings);
        Figures f = Figures.of(budget);
        Line line = budget.line(id);
        return IntStream.range(0, line.size())
                .mapToObj(i -> f.text(line, i))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    @Test
    void monthSharesThatDoNotAddUp() throws IOException {
        assertThat(faults("months.csv", "month,share,share_plug\njan,0.5,1\nfeb,0.4,0\n"))
                .containsExactly(
                        "months.csv, row 2, column share: found shares of the crop's fruit by month that add up to 0.9, expected"
                                + " shares of the crop's fruit by month that add up to 1 for Share of the crop's fruit"
                                + " (fruit_share[bare_root;jan]).");
    }

    @Test
    void aMonthThatIsNoNumberIsOneFault() throws IOException {
        assertThat(faults("months.csv", "month,share\njan,half\nfeb,0.5\n"))
                .singleElement()
                .asString()
                .contains("months.csv, row 2, column share");
    }

    @Test
    void aChannelWithoutAPrice() throws IOException {
        assertThat(faults("channels.csv", CHANNELS + "shop,0.5,7,,2026,,\nmarket,0.5,,,2026,,\n"))
                .singleElement()
                .asString()
                .contains(
                        "channels.csv, row 3", "found nothing", "channel_price[market;jan]", "price_jan to price_dec");
    }

    @Test
    void channelSharesThatDoNotAddUp() throws IOException {
        assertThat(faults("channels.csv", CHANNELS + "shop,0.5,7,,2026,,\nmarket,0.4,7,,2026,,\n"))
                .singleElement()
                .asString()
                .contains("channels.csv, row 2, column share", "found shares", "that add up to 0.9");
    }

    @Test
    void aPackThatCostsButHoldsNothing() throws IOException {
        assertThat(faults("channels.csv", CHANNELS + "shop,1,7,,2026,,0.2\n"))
                .singleElement()
                .asString()
                .contains("channels.csv, row 2", "channel_pack_size[shop]");
    }

    @Test
    void aPriceBreakOfAnUnknownKindAndOneGivenTwice() throws IOException {
        String rows = "stock,from_quantity,price\npulg,10,1\nplug,10,1\nplug,10,2\n";
        assertThat(faults("stock_prices.csv", rows))
                .hasSize(2)
                .anySatisfy(text -> assertThat(text).contains("stock_prices.csv, row 2", "\"pulg\"", "bare_root"))
                .anySatisfy(text -> assertThat(text)
                        .contains("stock_prices.csv, row 4, column from_quantity", "row 3 has already"));
    }

    @Test
    void aPriceYearFarFromThePlansIsDoubted() throws IOException, ScenarioException {
        Path scenario = scenario("channels.csv", CHANNELS + "shop,1,7,,2015,,\n");
        assertThat(Benchmetre.read(scenario).doubts().stream().map(Remark::message))
                .anySatisfy(text -> assertThat(text)
                        .contains("channel_price_year[shop]", "the price is of 2015 and the plan of 2026"));
    }

    @Test
    void aMonthWithFruitAndNoPriceIsAWarning() throws IOException, ScenarioException {
        Path scenario = scenario("channels.csv", CHANNELS + "shop,1,,7,2026,,\n");
        Figures f = Benchmetre.read(scenario).figures();
        assertThat(f.number("channel_unpriced", "shop")).isPositive();
        assertThat(f.text(f.budget().line("channel_price_warning"), 0)).contains("no price in a month with fruit");
    }

    @Test
    void aCropLongerThanItsSeasonIsAWarning() {
        assertThat(warnings("stock_season_warning")).isEmpty();
        assertThat(warnings("stock_season_warning", "season_weeks=37 wk/a"))
                .hasSize(3)
                .allSatisfy(text -> assertThat(text).contains("longer than the season"));
        assertThat(warnings("stock_season_warning", "crops_per_year=2 crop/a")).hasSize(4);
    }

    @Test
    void firstFruitAfterTheCropIsClearedIsAWarning() {
        assertThat(warnings("stock_first_fruit_warning")).isEmpty();
        assertThat(warnings("stock_first_fruit_warning", "first_fruit_temperature=4 degC"))
                .hasSize(2);
    }

    @Test
    void aYieldOutsideWhatIsPublishedNamesItsSource() throws ScenarioException {
        List<String> doubts = Benchmetre.read(
                        Sample.TROUGH_HOUSE, Optional.empty(), List.of("yield_per_plant=1400 g/(plant crop)"))
                .doubts()
                .stream()
                .map(Remark::message)
                .toList();
        assertThat(doubts)
                .singleElement()
                .asString()
                .contains("usually from 300 to 1350", "Horticulturae 8(3):249, 2022");
        assertThat(warnings("crop_grams_warning", "yield_per_plant=1400 g/(plant crop)"))
                .isEmpty();
    }

    @Test
    void aYieldThatDensityCarriesOutsideWhatIsPublishedNamesItsSource() {
        assertThat(warnings("crop_grams_warning")).isEmpty();
        assertThat(warnings(
                        "crop_grams_warning", "yield_per_plant=1300 g/(plant crop)", "reference_density=20 plant/m2"))
                .singleElement()
                .asString()
                .contains("Horticulturae 8(3):249, 2022");
        assertThat(warnings("crop_grams_warning", "yield_per_plant=320 g/(plant crop)", "reference_density=1 plant/m2"))
                .hasSize(1);
    }

    @Test
    void aMonthHasAllOfAClimateOrNone() throws IOException {
        String months = "month,day_temperature,night_temperature,day_hours\njan,5,-3,9\nfeb,,,\nmar,5,,9\napr,,,9\n";
        assertThat(faults("months.csv", months))
                .containsExactly(
                        "months.csv, row 4, column night_temperature: found nothing, expected a value, since Outside by day is"
                                + " given, for Outside by night (night_temperature[mar]).",
                        "months.csv, row 5, column day_temperature: found nothing, expected a value, since Hours of light is"
                                + " given, for Outside by day (day_temperature[apr]).",
                        "months.csv, row 5, column night_temperature: found nothing, expected a value, since Hours of light is"
                                + " given, for Outside by night (night_temperature[apr]).");
    }

    @Test
    void temperaturesWithoutHoursOfLightAreNoClimate() throws IOException {
        assertThat(faults("months.csv", "month,day_temperature,night_temperature\njan,5,-3\n"))
                .containsExactly(
                        "months.csv, row 2, column day_hours: found nothing, expected a value, since Outside by day is given, for"
                                + " Hours of light (day_hours[jan]).");
    }

    @Test
    void withoutAnyOptionalFileTheDefaultsStand() throws IOException {
        scenario("months.csv", "");
        for (String file : List.of("months.csv", "channels.csv", "stock_prices.csv")) {
            Files.delete(folder.resolve(file));
        }
        Faults faults = new Faults();
        Budget budget = Sample.read(folder, faults);
        Figures f = Figures.of(budget);
        assertThat(faults.faults()).isEmpty();
        assertThat(f.troubles()).isEmpty();
        assertThat(f.text("receipts_by")).isEqualTo("one_price");
        assertThat(f.number("heat_energy_total")).isZero();
        assertThat(f.number("heating_cost_total")).isZero();
        assertThat(f.number("boiler_size")).isZero();
        assertThat(f.text("heating_warning")).startsWith("No climate is given for months that are heated");
        assertThat(f.number("stock_price_paid", "tray_plant")).isEqualTo(0.62);
        assertThat(f.number("receipts_total")).isEqualTo(f.number("yield_total") * 7, Offset.offset(1e-9));
    }
}
