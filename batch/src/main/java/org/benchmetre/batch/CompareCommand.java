package org.benchmetre.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.comparison.Comparison;
import org.benchmetre.comparison.Measure;
import org.benchmetre.workbook.Paper;
import org.benchmetre.workbook.Setup;
import org.benchmetre.workbook.WorkbookWriter;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Puts scenarios side by side. */
@Command(
        name = "compare",
        description = "Puts two or more scenarios side by side and tells by cause where the difference in returns comes"
                + " from. Settings and price list apply to all of them.")
final class CompareCommand extends ReadingCommand {

    @Parameters(
            arity = "2..*",
            paramLabel = "SCENARIO",
            description = "The scenarios, each a folder of CSV files; the others are held against the first.")
    private List<Path> scenarios = new ArrayList<>();

    @Option(
            names = "--per",
            paramLabel = "MEASURE",
            defaultValue = "area",
            converter = MeasureName.class,
            description = "What causes are divided by: ${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} when left out.")
    private Measure per;

    @Mixin
    private CautionOption cautions;

    @ArgGroup(exclusive = true)
    private Output output = new Output();

    /** What is made of the comparison in place of the page. */
    static final class Output {

        @Option(names = "--csv", description = "Prints scenario,measure,cause,value,difference,unit with all digits.")
        private boolean csv;

        @Option(
                names = "--explain",
                paramLabel = "ADDRESS",
                description = "Tells where a figure of the comparison comes from, down to the figures of the scenarios:"
                        + " left_difference[container_house], cause_difference[own_mulch;container_house].")
        private String address;

        @ArgGroup(exclusive = false)
        private Target workbook;
    }

    /** Where a workbook goes. */
    static final class Target {

        @Option(
                names = {"-o", "--output"},
                paramLabel = "FILE",
                required = true,
                description = "Writes the comparison as a live workbook, an .xlsx file.")
        private Path file;

        @Option(names = "--overwrite", description = OVERWRITE)
        private boolean overwrite;
    }

    @Override
    int read(Optional<Path> priceList, List<String> changes) throws ScenarioException {
        Comparison comparison = Benchmetre.compare(scenarios, priceList, changes, per);
        tell("Warning: ", comparison.warnings());
        tell("Note: ", comparison.notes());
        List<String> disagreements = comparison.disagreements();
        if (!disagreements.isEmpty()) {
            disagreements.forEach(sentence -> complain("Check failed: " + sentence));
            return Exit.CHECK_FAILED;
        }
        if (output.address != null) {
            return explain(comparison.figures(), output.address, Integer.MAX_VALUE);
        }
        if (output.workbook != null) {
            return write(
                    new WorkbookFile(output.workbook.file, output.workbook.overwrite, filesOf(scenarios)),
                    (file, replaced) -> workbook(comparison).write(comparison.figures(), file, replaced));
        }
        print(output.csv ? CompareCsv.of(comparison) : pages(comparison));
        return Exit.DONE;
    }

    private static WorkbookWriter workbook(Comparison comparison) {
        return new WorkbookWriter(new Setup(comparison.pages(), null, Paper.A4));
    }

    private String pages(Comparison comparison) {
        PageText drawer = new PageText(comparison.figures(), cautions.inFull());
        return new PageShelf(comparison.pages()).drawn(PageShelf.ALL, drawer).orElseThrow();
    }

    /** Reads a measure as it is typed. */
    static final class MeasureName implements ITypeConverter<Measure> {

        @Override
        public Measure convert(String text) {
            return Arrays.stream(Measure.values())
                    .filter(measure -> measure.toString().equals(text.toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(
                            "expected one of " + Arrays.toString(Measure.values()) + " but was '" + text + "'"));
        }
    }
}
