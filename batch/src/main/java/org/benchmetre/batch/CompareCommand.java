package org.benchmetre.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchmetre.Comparison;
import org.benchmetre.MarginByCause;
import org.benchmetre.Measure;
import org.benchmetre.ScenarioException;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Puts scenarios side by side. */
@Command(
        name = "compare",
        description = "Puts two or more scenarios side by side and tells by cause where the difference in margin comes"
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

    @Option(names = "--csv", description = "Prints scenario,measure,cause,value,difference,unit with all digits.")
    private boolean csv;

    @Override
    int read(Optional<Path> priceList, List<String> changes) throws ScenarioException {
        Comparison comparison = Comparison.read(scenarios, priceList, changes);
        MarginByCause margin = MarginByCause.of(comparison, per);
        tell("Warning: ", comparison.warnings());
        tell("Note: ", comparison.notes());
        List<String> disagreements = margin.disagreements();
        if (!disagreements.isEmpty()) {
            disagreements.forEach(sentence -> err().print("Check failed: " + sentence + "\n"));
            err().flush();
            return Exit.CHECK_FAILED;
        }
        print(csv ? CompareCsv.of(comparison, margin) : new CompareReport(comparison, margin).toString());
        return Exit.DONE;
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
