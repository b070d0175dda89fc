package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Farms that no one had in mind: every page, the workbook and the check of each, and what their sentences say. */
class OddFarmsTest {

    private static final int WIDTH = 100;
    private static final List<String> NO_NUMBERS = List.of("NaN", "Infinity", "null");

    private static final String HOUSE = """
            line,value,unit
            plan_title,TITLE,1
            plan_currency,CURRENCY,1
            bench_count,10,bench
            bench_length,20,m
            house_length,24,m
            house_width,10,m
            plant_spacing,15,cm
            irrigation_choice,emitter,1
            stock_choice,plug,1
            """;

    private static final String PARTS = """
            item,label,group,driver,rate,unit,pack,price,price_year,life,life_unit,option
            trough,Trough,Benches,bench_metres,1,m,3,2250,2026,15,a,
            emitter,Emitter,Watering,outlet_count,1,each,100,3000,2026,7,a,emitter
            lateral,Lateral,Watering,line_metres,1,m,100,3100,2026,10,a,emitter
            """;

    private static final String TAPE = "tape,Tape,Watering,line_metres,1,m,1000,8000,2026,2,crop,tape\n";

    private static final String SYSTEMS = """
            way,label,lines,outlets_per_plant,outlet_spacing,outlet_flow,outlet_pressure,flow_exponent,inner_diameter,outlet_item
            emitter,One emitter a plant,1,1,,2,100,0,13.6,emitter
            """;

    private static final String STOCK = """
            stock,label,price,price_year
            plug,Plugs,48,2026
            """;

    private static final String CHANNELS = """
            channel,label,share,price,price_year
            direct,Direct to eaters,1,1200,2026
            """;

    private static final String MONTHS = """
            month,day_temperature,night_temperature,radiation,day_hours,share,crop_share
            """
            + IntStream.range(0, 12)
                    .mapToObj(month -> List.of("jan feb mar apr may jun jul aug sep oct nov dec".split(" "))
                                    .get(month)
                            + ",10,4,3,12," + (month < 10 ? 0.1 : 0) + ",1\n")
                    .collect(Collectors.joining());

    /** What is odd about a farm. */
    private enum Odd {
        NO_MONTHS,
        NO_CHANNELS,
        NO_FRUIT_SOLD,
        ONE_SYSTEM,
        THIRTY_SYSTEMS,
        YEN,
        LONG_TITLE,
        TITLE_WITHOUT_SPACES,
        RIGHT_TO_LEFT,
        TWO_HUNDRED_PARTS
    }

    @TempDir
    Path folder;

    private Path farm(Odd odd) throws IOException {
        String title = switch (odd) {
            case LONG_TITLE -> "Berries ".repeat(25).strip();
            case TITLE_WITHOUT_SPACES -> "b".repeat(200);
            case RIGHT_TO_LEFT -> "בית תותים";
            default -> "Odd farm";
        };
        String currency = odd == Odd.YEN ? "JPY" : "USD";
        String house = HOUSE.replace("TITLE", title).replace("CURRENCY", currency);
        write("farm.csv", odd == Odd.NO_FRUIT_SOLD ? house + "yield_per_plant,0,g/(plant crop)\n" : house);
        write("materials.csv", parts(odd));
        write("irrigation.csv", systems(odd));
        write("plant_stock.csv", STOCK);
        if (odd != Odd.NO_CHANNELS) {
            write("channels.csv", CHANNELS);
        }
        if (odd != Odd.NO_MONTHS) {
            write("months.csv", MONTHS);
        }
        return folder;
    }

    private static String parts(Odd odd) {
        String all = odd == Odd.ONE_SYSTEM ? PARTS : PARTS + TAPE;
        return switch (odd) {
            case RIGHT_TO_LEFT ->
                all.replace(",Trough,", ",תעלה קשיחה,").replace(",Tape,Watering", ",شريط تنقيط,شبكة الري");
            case TWO_HUNDRED_PARTS ->
                all
                        + rows(
                                196,
                                i -> "part_" + i + ",Part number " + i + ",Group " + i % 50
                                        + ",bench_count,1,each,1,100,2026,10,a,");
            default -> all;
        };
    }

    private static String systems(Odd odd) {
        IntFunction<String> tape = i -> "tape" + (i == 0 ? "" : "_" + i) + ",Strips of drip tape"
                + (i == 0 ? "" : " of kind " + i) + "," + (1 + i % 3) + ",,0.15,0.8,70,0.5,15.9,tape";
        return switch (odd) {
            case ONE_SYSTEM -> SYSTEMS;
            case THIRTY_SYSTEMS -> SYSTEMS + rows(29, tape);
            case RIGHT_TO_LEFT ->
                (SYSTEMS + rows(1, tape))
                        .replace("One emitter a plant", "טפטפת אחת לכל צמח")
                        .replace("Strips of drip tape", "شريط للتنقيط");
            default -> SYSTEMS + rows(1, tape);
        };
    }

    private static String rows(int count, IntFunction<String> row) {
        return IntStream.range(0, count).mapToObj(row).collect(Collectors.joining("\n", "", "\n"));
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
    }

    private static String fits(Ran ran) {
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.err()).doesNotContain("Exception", "Fault");
        assertThat(ran.outLines())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(WIDTH))
                .allSatisfy(line -> assertThat(NO_NUMBERS).noneMatch(line::contains));
        return ran.out();
    }

    @ParameterizedTest
    @EnumSource
    void every_page_fits_and_the_check_finds_that_all_sums_agree(Odd odd) throws IOException {
        Path farm = farm(odd);

        fits(Ran.with("price", farm));
        String all = fits(Ran.with("price", farm, "--page", "all"));
        assertThat(fits(Ran.with("irrigation", farm))).startsWith("Irrigation: ");
        fits(Ran.with("check", farm));

        assertThat(all)
                .contains("Budget: ", "Calendar: ", "Sources and safety: ")
                .doesNotContain("spare", "Spare");
        assertThat(all.lines())
                .filteredOn(line -> line.startsWith("Prices ") || line.endsWith(" ."))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void the_workbook_is_written_without_an_error_in_any_cell(Odd odd) throws IOException {
        Path target = folder.resolve("odd.xlsx");

        fits(Ran.with("workbook", farm(odd), "-o", target));

        List<String> wrong = new ArrayList<>();
        int cells = 0;
        try (Workbook workbook = WorkbookFactory.create(target.toFile(), null, true)) {
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        cells++;
                        if (isWrong(cell)) {
                            wrong.add(sheet.getSheetName() + "!" + cell.getAddress());
                        }
                    }
                }
            }
        }
        assertThat(cells).isGreaterThan(1000);
        assertThat(wrong).isEmpty();
    }

    private static boolean isWrong(Cell cell) {
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return switch (type) {
            case ERROR -> true;
            case STRING -> NO_NUMBERS.stream().anyMatch(cell.getStringCellValue()::contains);
            case NUMERIC -> !Double.isFinite(cell.getNumericCellValue());
            default -> false;
        };
    }

    @Test
    void without_a_climate_the_answer_says_that_no_heat_is_counted() throws IOException {
        assertThat(Ran.with("price", farm(Odd.NO_MONTHS)).out()).contains("No climate is entered: no heat is counted.");
        assertThat(Ran.with("price", farm(Odd.NO_CHANNELS)).out()).contains("A metre of bench costs ");
    }

    @Test
    void with_a_climate_it_does_not() throws IOException {
        assertThat(Ran.with("price", farm(Odd.YEN)).out()).doesNotContain("No climate");
    }

    @Test
    void one_system_is_not_compared_with_another() throws IOException {
        Path farm = farm(Odd.ONE_SYSTEM);

        assertThat(Ran.with("price", farm).out()).contains("One emitter a plant, the only system entered.");
        assertThat(Ran.with("irrigation", farm).out())
                .contains("One emitter a plant, the only system entered.")
                .doesNotContain("differ most", "Partial budget", "It would be ");
    }

    @Test
    void every_one_of_thirty_systems_stands_beside_the_others() throws IOException {
        String page = Ran.with("irrigation", farm(Odd.THIRTY_SYSTEMS)).out().replaceAll("\\s+", " ");

        assertThat(page).contains("Emission uniformity, new, %");
        assertThat(Ran.with("price", folder, "--page", "irrigation-systems").out())
                .contains("One emitter a plant", "Strips of drip tape of kind 28");
    }

    @Test
    void money_in_yen_has_no_decimals_in_sentences() throws IOException {
        String answer = Ran.with("price", farm(Odd.YEN)).out();

        assertThat(answer).contains("prices of 2026 in JPY").doesNotContain("USD");
        assertThat(answer.lines().filter(line -> line.startsWith("A metre of bench costs ")))
                .singleElement()
                .asString()
                .matches("A metre of bench costs [0-9,]+ JPY to build and [0-9,]+ a year .*");
    }

    @Test
    void labels_from_right_to_left_stand_as_they_were_typed() throws IOException {
        assertThat(Ran.with("price", farm(Odd.RIGHT_TO_LEFT), "--page", "to-buy")
                        .out())
                .contains("בית תותים", "תעלה קשיחה");
        assertThat(Ran.with("irrigation", folder).out())
                .contains("شريط للتنقيط")
                .doesNotContain("\\u");
    }

    @Test
    void all_of_two_hundred_parts_are_bought_and_a_title_is_never_cut() throws IOException {
        String page = Ran.with("price", farm(Odd.TWO_HUNDRED_PARTS), "--page", "to-buy")
                .out();
        assertThat(page.lines().filter(line -> line.startsWith("Part number "))).hasSize(196);

        String joined = Ran.with("price", farm(Odd.TITLE_WITHOUT_SPACES)).out().replace("\n", "");
        assertThat(joined).contains("b".repeat(200));
    }
}
