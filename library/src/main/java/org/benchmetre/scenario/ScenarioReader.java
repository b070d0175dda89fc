package org.benchmetre.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Layer;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.entry.Home;

/**
 * Reads a scenario: first its structure, from which the budget is built, then its values in layers, each over the one before: files, a
 * price list, settings.
 *
 * @param forms how its tables are kept
 * @param build makes the budget of a structure
 * @param priced the table that a price list prices
 * @param usualCrop the crop of a scenario that names none
 * @param isCrop whether a crop is documented
 * @param deciding single values that decide which lines there are
 */
public record ScenarioReader(
        List<TableForm> forms,
        Function<Structure, Budget> build,
        String priced,
        String usualCrop,
        Predicate<String> isCrop,
        Deciding deciding) {

    /** Keeps its own copy. */
    public ScenarioReader {
        forms = List.copyOf(forms);
    }

    /**
     * What lies over a scenario for one run.
     *
     * @param prices a price list
     * @param settings changes
     */
    public record Over(Optional<Path> prices, Settings settings) {

        /** Nothing. */
        public static final Over NOTHING = new Over(Optional.empty(), new Settings(List.of()));
    }

    /**
     * Reads a scenario.
     *
     * @param tables its tables
     * @param over what lies over it
     * @param faults where everything wrong is reported
     * @return the budget with all values in it; empty after a fault
     */
    public Optional<Budget> read(ScenarioTables tables, Over over, Faults faults) {
        Heading heading = HeadingReader.read(tables, usualCrop, isCrop, deciding.words(), faults);
        Structure structure = StructureReader.read(
                tables, heading, forms, new StructureReader.Runs(deciding.runs(), over.settings()), faults);
        Budget budget = build.apply(structure);
        FileLayer.Result read = FileLayer.read(budget, tables, forms, faults);
        Layer layer = read.layer();
        over.prices().ifPresent(path -> layer.under(PriceLayer.read(path, budget, layer, priced, faults)));
        layer.under(over.settings().over(budget, layer, faults));
        Optional<Budget> result = budget.gate()
                .lay(
                        layer,
                        line -> read.refused().contains(line) || isUnsure(budget, line, tables),
                        no -> faults.addOnce(
                                Place.of(no, budget),
                                no.refusal().found(),
                                no.refusal().expected()));
        return faults.isEmpty() ? result : Optional.empty();
    }

    /** Whether the table of an entry has rows that could not be read, so that nothing can be said of how its cells fit together. */
    private static boolean isUnsure(Budget budget, Line line, ScenarioTables tables) {
        Home home = budget.entry(line).orElseThrow().home();
        return home.isKept() && !tables.table(home.table()).isComplete();
    }
}
