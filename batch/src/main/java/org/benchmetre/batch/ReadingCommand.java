package org.benchmetre.batch;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.run.Explanation;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.scenario.Address;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Remark;
import org.benchmetre.scenario.ScenarioFolder;
import org.benchmetre.scenario.SettingSyntaxException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What all commands share that read scenarios: settings, a price list, and faults told on standard error. */
@Command(
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        usageHelpWidth = 100,
        sortOptions = false,
        descriptionHeading = "%n",
        parameterListHeading = "%n",
        optionListHeading = "%n",
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.ZERO, Exit.ONE, Exit.TWO, Exit.THREE, Exit.FOUR})
abstract class ReadingCommand implements Callable<Integer> {

    static final String OVERWRITE =
            "Replaces the file when it exists and is a plain file; a link stays, and what it leads to is replaced.";

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--set",
            paramLabel = "LINE=VALUE",
            description = {
                "Changes one entry for this run; may be given again. A unit may follow the value, without one it is the"
                        + " unit the entry was given in. Examples: plant_spacing=6in, material_price[tape]=80,"
                        + " irrigation_choice=tape."
            })
    private List<String> settings = new ArrayList<>();

    @Option(
            names = "--prices",
            paramLabel = "FILE",
            description =
                    "A price list: item,pack,unit,price,price_year,source. Its prices replace those of the scenario,"
                            + " item by item.")
    private Path prices;

    @Override
    public final Integer call() {
        try {
            return read(Optional.ofNullable(prices), settings);
        } catch (SettingSyntaxException e) {
            throw usage(e.getMessage());
        } catch (ScenarioException e) {
            return refused(e.faults());
        }
    }

    /** Reads what is named on the command line and does what the command is for. */
    abstract int read(Optional<Path> priceList, List<String> changes) throws ScenarioException;

    /** Wrong usage, to be thrown. */
    final ParameterException usage(String sentence) {
        return new ParameterException(spec.commandLine(), sentence);
    }

    /** Explains a cell of a computed budget so many formulas deep, and answers the exit code. */
    final int explain(Figures figures, String address, int levels) {
        Faults faults = new Faults();
        Optional<CellRef> cell = Address.parse(address).in(figures.budget(), Place.of("address", address), faults);
        if (cell.isEmpty()) {
            return refused(faults);
        }
        Explanation told = Explanation.of(figures, cell.get().line(), cell.get().cell(), levels);
        print(told.toString().lines().map(line -> Quoted.visible(line) + "\n").collect(Collectors.joining()));
        return Exit.DONE;
    }

    /** Writes a workbook, tells what became of it and answers the exit code. */
    final int write(WorkbookFile file, WorkbookFile.Drawn workbook) {
        file.wrongUse().ifPresent(sentence -> {
            throw usage(sentence);
        });
        Optional<String> failure = file.write(workbook);
        if (failure.isPresent()) {
            complain(failure.get());
            return Exit.NOT_WRITTEN;
        }
        print(Quoted.visible("Wrote " + file.target() + ".") + "\n");
        return Exit.DONE;
    }

    /** Tells everything found and answers the exit code for faults. */
    final int refused(Faults faults) {
        int told = faults.sentences().size();
        String count = told == 1 ? "1 fault" : told + " faults";
        err().print(faults.report() + count + "; nothing was written.\n");
        err().flush();
        return Exit.FAULTS;
    }

    final void tell(String kind, List<Remark> remarks) {
        remarks.forEach(remark -> err().print(kind + remark.message() + "\n"));
        err().flush();
    }

    /** Tells something on standard error. */
    final void complain(String sentence) {
        err().print(Quoted.visible(sentence) + "\n");
        err().flush();
    }

    /** The files that were read for some scenarios, the price list with them. */
    final List<Path> filesOf(List<Path> scenarios) {
        List<Path> files = new ArrayList<>();
        scenarios.forEach(scenario -> files.addAll(ScenarioFolder.files(scenario)));
        Optional.ofNullable(prices).ifPresent(files::add);
        return files;
    }

    final void print(String text) {
        out().print(text);
        out().flush();
    }

    final PrintWriter out() {
        return spec.commandLine().getOut();
    }

    final PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
